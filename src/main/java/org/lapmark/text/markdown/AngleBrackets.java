package org.lapmark.text.markdown;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.commonmark.node.Link;
import org.commonmark.node.Text;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.text.Letters;
import org.lapmark.text.TextCode;

/**
 * Takes {@code <} before the parser does: addresses between angle brackets are links, and what
 * looks like HTML is reported and stays text. Looking no further than a few hundred characters, it
 * needs no more time for a thousand open brackets than for one a thousand times.
 *
 * @param text the parsed text with its places
 * @param findings where problems go
 */
record AngleBrackets(SourceText text, Findings findings) implements InlineContentParserFactory {
  private static final int LONGEST = 500;
  private static final Pattern ADDRESS =
      Pattern.compile("<[A-Za-z][A-Za-z0-9+.-]{1,31}:[^\\s<>]*>");
  private static final Pattern MAIL = Pattern.compile("<[^\\s<>@:/]+@[^\\s<>@:/]+>");
  private static final Pattern TAG =
      Pattern.compile("</?[A-Za-z][A-Za-z0-9-]*(?:\\s[^<>]*|/)?>|<[!?][^<>]*>");

  @Override
  public Set<Character> getTriggerCharacters() {
    return new LinkedHashSet<>(List.of('<'));
  }

  @Override
  public InlineContentParser create() {
    return this::parse;
  }

  private ParsedInline parse(InlineParserState state) {
    Scanner scanner = state.scanner();
    Position opening = scanner.position();
    String written = written(scanner);
    if (ADDRESS.matcher(written).matches() || MAIL.matcher(written).matches()) {
      String shown = written.substring(1, written.length() - 1);
      Link link = new Link(shown.indexOf(':') < 0 ? "mailto:" + shown : shown, null);
      link.appendChild(new Text(shown));
      return ParsedInline.of(link, scanner.position());
    }
    if (TAG.matcher(written).matches() || isComment(written)) {
      int start =
          scanner
              .getSource(opening, scanner.position())
              .getLines()
              .get(0)
              .getSourceSpan()
              .getInputIndex();
      findings.add(
          TextCode.TEXT_HTML,
          text.position(start, start + written.length()),
          "written",
          Letters.brief(Letters.shown(written)));
      return ParsedInline.of(new Text(written), scanner.position());
    }
    scanner.setPosition(opening);
    scanner.next();
    return ParsedInline.of(new Text("<"), scanner.position());
  }

  private static boolean isComment(String written) {
    return written.startsWith("<!--") && written.endsWith("-->");
  }

  /** From the bracket to the one that closes it, or as far as it is looked for. */
  private static String written(Scanner scanner) {
    StringBuilder written = new StringBuilder();
    boolean comment = false;
    while (written.length() < LONGEST && scanner.peek() != Scanner.END) {
      char c = scanner.peek();
      if (c == '<' && !written.isEmpty() && !comment) {
        return "";
      }
      written.append(c);
      scanner.next();
      comment |= written.length() == 4 && written.indexOf("<!--") == 0;
      if (c == '>' && (!comment || isComment(written.toString()))) {
        return written.toString();
      }
    }
    return "";
  }
}
