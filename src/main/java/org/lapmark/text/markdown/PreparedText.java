package org.lapmark.text.markdown;

import java.util.Arrays;
import java.util.List;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.lapmark.finding.Findings;
import org.lapmark.finding.InvisibleCharacters;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.text.Letters;
import org.lapmark.text.Manuscript;
import org.lapmark.text.TextCode;

/**
 * A text made ready for the Markdown parser. Characters that can't be printed are gone, tabs are
 * spaces, so that the parser's columns are characters; and bars that are escaped or stand in a
 * placeholder are hidden, for the parser ends a table's cell at a bar before it looks for anything
 * else. Both texts are of one length.
 *
 * @param text the text with its places
 * @param masked the same as the parser gets it
 * @param findings where problems go
 */
record PreparedText(SourceText text, String masked, Findings findings) {
  private static final int TAB = 4;

  static PreparedText of(SourceText source, Findings findings) {
    SourceText text = printable(source, findings);
    return new PreparedText(text, mask(text.text()), findings);
  }

  /** Where a node begins in the text. */
  int start(Node node) {
    List<SourceSpan> spans = node.getSourceSpans();
    return spans.isEmpty() ? 0 : spans.get(0).getInputIndex();
  }

  /** Where a node ends in the text. */
  int end(Node node) {
    List<SourceSpan> spans = node.getSourceSpans();
    if (spans.isEmpty()) {
      return 0;
    }
    SourceSpan last = spans.get(spans.size() - 1);
    return last.getInputIndex() + last.getLength();
  }

  Position position(Node node) {
    return text.position(start(node), end(node));
  }

  /** A node as it was written, for what can't be understood any further. */
  String written(Node node) {
    return text.text().substring(start(node), Math.max(start(node), end(node)));
  }

  /** Reports signs that other kinds of Markdown read. */
  void reportUnread(String kind, int from, int to) {
    findings.add(
        TextCode.MARKUP_UNREAD,
        text.position(from, to),
        "kind",
        kind,
        "written",
        Letters.brief(text.text().substring(from, to).replace('\n', ' ')));
  }

  void reportDepth(Position position) {
    findings.add(TextCode.TEXT_TOO_DEEP, position, "limit", Manuscript.MAX_DEPTH);
  }

  private static SourceText printable(SourceText source, Findings findings) {
    String written = source.text();
    StringBuilder text = new StringBuilder(written.length());
    int[] offsets = new int[written.length() + 1];
    boolean leading = true;
    int lineStart = 0;
    int strange = 0;
    Position firstStrange = null;
    String firstCode = "";
    for (int at = 0; at < written.length(); ) {
      int point = written.codePointAt(at);
      int units = Character.charCount(point);
      if (!Letters.isPlain(point)) {
        if (firstStrange == null) {
          firstStrange = source.position(at, at + units);
          firstCode = InvisibleCharacters.named(point);
        }
        strange++;
      } else {
        int before = text.length();
        if (point == '\t') {
          text.append(" ".repeat(leading ? TAB - (before - lineStart) % TAB : 1));
        } else {
          text.appendCodePoint(point);
          leading = point == '\n' || leading && point == ' ';
        }
        if (text.length() >= offsets.length) {
          offsets = Arrays.copyOf(offsets, 2 * text.length() + 1);
        }
        for (int unit = before; unit < text.length(); unit++) {
          offsets[unit] = source.offset(units == 2 ? at + unit - before : at);
        }
        lineStart = point == '\n' ? text.length() : lineStart;
      }
      at += units;
    }
    if (strange > 0) {
      findings.add(
          TextCode.TEXT_STRANGE_CHARACTER, firstStrange, "count", strange, "code", firstCode);
    }
    offsets[text.length()] = source.offset(written.length());
    return SourceText.mapped(
        source.file(), text.toString(), Arrays.copyOf(offsets, text.length() + 1));
  }

  private static String mask(String text) {
    char[] masked = text.toCharArray();
    for (int at = 0; at < masked.length; at++) {
      if (masked[at] == '\\' && at + 1 < masked.length) {
        if (masked[at + 1] == '|') {
          masked[at] = Letters.HIDDEN_BACKSLASH;
          masked[at + 1] = Letters.HIDDEN_BAR;
        }
        at++;
      } else if (masked[at] == '{') {
        int end = TemplateText.closing(text, at);
        for (int inside = at; inside < end; inside++) {
          masked[inside] = masked[inside] == '|' ? Letters.HIDDEN_BAR : masked[inside];
        }
        at = Math.max(at, end);
      }
    }
    return new String(masked);
  }
}
