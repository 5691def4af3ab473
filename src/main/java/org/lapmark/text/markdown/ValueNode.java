package org.lapmark.text.markdown;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Text;
import org.commonmark.parser.SourceLine;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.MeasureCode;
import org.lapmark.measure.TemplateText;

/** A placeholder between the words of a text. */
final class ValueNode extends CustomNode {
  private final TemplateText.Placeholder placeholder;

  private ValueNode(TemplateText.Placeholder placeholder) {
    this.placeholder = placeholder;
  }

  TemplateText.Placeholder placeholder() {
    return placeholder;
  }

  /**
   * Takes braces before the parser looks for emphasis. A placeholder with a fault is reported and
   * stays as written.
   *
   * @param text the parsed text with its places
   * @param findings where problems go
   */
  record Factory(SourceText text, Findings findings) implements InlineContentParserFactory {
    @Override
    public Set<Character> getTriggerCharacters() {
      return new LinkedHashSet<>(List.of('{', '}'));
    }

    @Override
    public InlineContentParser create() {
      return this::parse;
    }

    private ParsedInline parse(InlineParserState state) {
      Scanner scanner = state.scanner();
      Position opening = scanner.position();
      boolean closes = scanner.peek() == '}';
      scanner.next();
      int at = offset(scanner, opening);
      if (closes) {
        findings.add(MeasureCode.PLACEHOLDER_UNOPENED, text.position(at, at + 1));
        return ParsedInline.none();
      }
      Position inside = scanner.position();
      while (scanner.peek() != '}') {
        if (scanner.peek() == Scanner.END || scanner.peek() == '{') {
          findings.add(MeasureCode.PLACEHOLDER_UNCLOSED, text.position(at, at + 1));
          return ParsedInline.none();
        }
        scanner.next();
      }
      SourceText written = written(scanner, inside, scanner.position());
      scanner.next();
      if (written.text().isBlank()) {
        int end = written.text().indexOf('\n') < 0 ? at + written.text().length() + 2 : at + 1;
        findings.add(MeasureCode.PLACEHOLDER_EMPTY, text.position(at, end));
      } else {
        try {
          ValueNode node = new ValueNode(TemplateText.Placeholder.parse(written));
          return ParsedInline.of(node, scanner.position());
        } catch (FindingException e) {
          findings.add(e.finding());
        }
      }
      return ParsedInline.of(new Text('{' + written.text() + '}'), scanner.position());
    }

    private static int offset(Scanner scanner, Position from) {
      SourceLine line = scanner.getSource(from, scanner.position()).getLines().get(0);
      return line.getSourceSpan().getInputIndex();
    }

    /** What stands between two places, letter by letter, whatever prefixes lines have. */
    private SourceText written(Scanner scanner, Position from, Position to) {
      Pieces pieces = new Pieces(text);
      boolean first = true;
      for (SourceLine line : scanner.getSource(from, to).getLines()) {
        if (!first) {
          pieces.lineEnd();
        }
        first = false;
        if (line.getSourceSpan() != null) {
          int start = line.getSourceSpan().getInputIndex();
          pieces.add(start, start + line.getContent().length());
        }
      }
      return pieces.joined();
    }
  }
}
