package org.lapmark.text.markdown;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.footnotes.FootnoteReference;
import org.commonmark.ext.footnotes.InlineFootnote;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.lapmark.finding.InvisibleCharacters;
import org.lapmark.source.folder.UnseenCharacters;
import org.lapmark.text.Inline;
import org.lapmark.text.Letters;
import org.lapmark.text.Manuscript;
import org.lapmark.text.TextCode;

/** Turns what stands in a line of Markdown into inlines. */
final class InlineReader {
  /** Two tildes, neither more nor after a backslash. */
  private static final Pattern TILDES = Pattern.compile("(?<![\\\\~])~~(?!~)");

  /** What begins as a link or stands in brackets as a reference, not after a backslash. */
  private static final Pattern BROKEN_LINK =
      Pattern.compile(
          "(?<!\\\\)(\\[[^\\[\\]\n]*\\]\\((?:[^()\n]*\\))?"
              + "|\\[(?:step|piece|page): ?[^\\[\\]\n]*\\])");

  private final BlockReader reader;
  private final PreparedText text;
  private final Addresses addresses;

  InlineReader(BlockReader reader, PreparedText text, Addresses addresses) {
    this.reader = reader;
    this.text = text;
    this.addresses = addresses;
  }

  List<Inline> inlines(Node parent, int depth) {
    if (depth > Manuscript.MAX_DEPTH) {
      text.reportDepth(text.position(parent));
      return List.of(new Inline.Words(text.written(parent).replace('\n', ' ')));
    }
    struckThrough(parent);
    brokenLinks(parent);
    Line line = new Line(depth);
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      node.accept(line);
    }
    line.flush();
    return line.all;
  }

  /** Reports words between pairs of tildes, whatever stands between these. */
  private void struckThrough(Node parent) {
    int from = -1;
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      if (!(node instanceof Text)) {
        continue;
      }
      Matcher signs = TILDES.matcher(text.written(node));
      while (signs.find()) {
        int at = text.start(node) + signs.start();
        if (from < 0) {
          from = at;
        } else {
          text.reportUnread("struck", from, at + 2);
          from = -1;
        }
      }
    }
  }

  /** Reports what was meant as a link or a reference and stands there as it is written. */
  private void brokenLinks(Node parent) {
    int start = text.start(parent);
    StringBuilder plain = new StringBuilder();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Text) {
        int at = text.start(node) - start;
        while (plain.length() < at) {
          plain.append('\n'); // What else stands here was understood.
        }
        plain.append(text.written(node));
      }
    }
    Matcher link = BROKEN_LINK.matcher(plain);
    while (link.find()) {
      text.reportUnread("link", start + link.start(), start + link.end());
    }
  }

  /**
   * Reports a character that nobody sees and that stands here as a reference, such as &amp;#8203;.
   */
  private void checkReferences(Node node, String meant) {
    String written = text.written(node);
    meant
        .codePoints()
        .filter(point -> InvisibleCharacters.of(point).isPresent() && written.indexOf(point) < 0)
        .findFirst()
        .ifPresent(
            point -> text.findings().add(UnseenCharacters.finding(point, text.position(node), 0)));
  }

  /** Reads the parts of a line one after the other, each as what it is. */
  private final class Line extends AbstractVisitor {
    private final int depth;
    private final List<Inline> all = new ArrayList<>();
    private final StringBuilder words = new StringBuilder();

    Line(int depth) {
      this.depth = depth;
    }

    private void flush() {
      String shown = Letters.shown(words.toString());
      if (!shown.isEmpty()) {
        all.add(new Inline.Words(shown));
      }
      words.setLength(0);
    }

    private void add(Inline inline) {
      flush();
      all.add(inline);
    }

    private void addNote(int number) {
      if (number > 0) {
        all.add(new Inline.Note(number));
      }
    }

    @Override
    public void visit(Text node) {
      String literal = node.getLiteral().replace('\n', ' ');
      checkReferences(node, literal);
      words.append(literal);
    }

    @Override
    public void visit(SoftLineBreak node) {
      words.append(' ');
    }

    @Override
    public void visit(HardLineBreak node) {
      add(new Inline.Break());
    }

    @Override
    public void visit(Code code) {
      add(new Inline.Code(Letters.shown(code.getLiteral())));
    }

    @Override
    public void visit(Emphasis emphasis) {
      add(new Inline.Emphasis(inlines(emphasis, depth + 1)));
    }

    @Override
    public void visit(StrongEmphasis emphasis) {
      add(new Inline.Strong(inlines(emphasis, depth + 1)));
    }

    @Override
    public void visit(Link link) {
      flush();
      List<Inline> content = inlines(link, depth + 1);
      addresses.title(link);
      addresses.link(link, content).ifPresentOrElse(all::add, () -> all.addAll(content));
    }

    @Override
    public void visit(Image image) {
      flush();
      text.findings().add(TextCode.ART_IN_LINE, text.position(image));
      all.addAll(inlines(image, depth + 1));
    }

    @Override
    public void visit(CustomNode node) {
      flush();
      if (node instanceof ValueNode value) {
        all.add(new Inline.Value(value.placeholder()));
      } else if (node instanceof FootnoteReference reference) {
        addNote(reader.note(reference.getLabel(), node, depth));
      } else if (node instanceof InlineFootnote) {
        addNote(reader.noteHere(node, depth));
      }
    }
  }
}
