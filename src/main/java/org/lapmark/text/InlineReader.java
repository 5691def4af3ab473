package org.lapmark.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.footnotes.FootnoteReference;
import org.commonmark.ext.footnotes.InlineFootnote;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** Turns what stands in a line of Markdown into inlines. */
final class InlineReader {
  /** Two tildes, neither more nor after a backslash. */
  private static final Pattern TILDES = Pattern.compile("(?<![\\\\~])~~(?!~)");

  private final BlockReader reader;

  InlineReader(BlockReader reader) {
    this.reader = reader;
  }

  List<Inline> inlines(Node parent, int depth) {
    if (depth > Manuscript.MAX_DEPTH) {
      reader.manuscript().reportDepth(reader.position(parent));
      return List.of(new Inline.Words(reader.written(parent).replace('\n', ' ')));
    }
    struckThrough(parent);
    List<Inline> all = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      String text = words(node);
      if (text != null) {
        reader.checkReferences(node, text);
        words.append(text);
        continue;
      }
      flush(words, all);
      add(node, depth, all);
    }
    flush(words, all);
    return all;
  }

  /** Reports words between pairs of tildes, whatever stands between these. */
  private void struckThrough(Node parent) {
    int from = -1;
    for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
      if (!(node instanceof Text)) {
        continue;
      }
      Matcher signs = TILDES.matcher(reader.written(node));
      while (signs.find()) {
        int at = reader.start(node) + signs.start();
        if (from < 0) {
          from = at;
        } else {
          reader.unread("struck", from, at + 2);
          from = -1;
        }
      }
    }
  }

  private static void flush(StringBuilder words, List<Inline> all) {
    String text = Letters.shown(words.toString());
    if (!text.isEmpty()) {
      all.add(new Inline.Words(text));
    }
    words.setLength(0);
  }

  /** The words that a node stands for, or null when it is more than words. */
  private String words(Node node) {
    if (node instanceof Text text) {
      return text.getLiteral().replace('\n', ' ');
    } else if (node instanceof SoftLineBreak) {
      return " ";
    }
    return null;
  }

  private void add(Node node, int depth, List<Inline> all) {
    if (node instanceof ValueNode value) {
      all.add(new Inline.Value(value.placeholder()));
    } else if (node instanceof HardLineBreak) {
      all.add(new Inline.Break());
    } else if (node instanceof Code code) {
      all.add(new Inline.Code(Letters.shown(code.getLiteral())));
    } else if (node instanceof Emphasis) {
      all.add(new Inline.Emphasis(inlines(node, depth + 1)));
    } else if (node instanceof StrongEmphasis) {
      all.add(new Inline.Strong(inlines(node, depth + 1)));
    } else if (node instanceof Link link) {
      link(link, depth, all);
    } else if (node instanceof Image) {
      reader.manuscript().findings().add(TextCode.ART_IN_LINE, reader.position(node));
      all.addAll(inlines(node, depth + 1));
    } else if (node instanceof FootnoteReference reference) {
      addNote(reader.note(reference.getLabel(), node, depth), all);
    } else if (node instanceof InlineFootnote) {
      addNote(reader.noteHere(node, depth), all);
    } else {
      all.addAll(inlines(node, depth + 1));
    }
  }

  private static void addNote(int number, List<Inline> all) {
    if (number > 0) {
      all.add(new Inline.Note(number));
    }
  }

  private void link(Link link, int depth, List<Inline> all) {
    List<Inline> words = inlines(link, depth + 1);
    Addresses.link(link.getDestination(), words, reader, link)
        .ifPresentOrElse(all::add, () -> all.addAll(words));
  }

  static String brief(String text) {
    int points = text.codePointCount(0, text.length());
    return points <= 60 ? text : text.substring(0, text.offsetByCodePoints(0, 40)) + "…";
  }
}
