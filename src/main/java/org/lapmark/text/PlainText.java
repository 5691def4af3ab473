package org.lapmark.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;

/** Writes a text without any form: for search, for alternatives of pictures, for comparison. */
public final class PlainText {
  private final Function<Inline.Value, String> values;
  private final Function<Inline.Reference, String> references;

  /**
   * A writer.
   *
   * @param values what a placeholder is written as
   * @param references what a reference without words is written as
   */
  public PlainText(
      Function<Inline.Value, String> values, Function<Inline.Reference, String> references) {
    this.values = values;
    this.references = references;
  }

  /**
   * The author's words alone: placeholders and references without words leave a gap.
   *
   * @return the writer
   */
  public static PlainText wordsOnly() {
    return new PlainText(value -> " ", reference -> " ");
  }

  /**
   * What Markdown makes of a character that is written by its name or number.
   *
   * @param entity such as {@code &check;} or {@code &#10003;}
   * @return the character; the same text if it stands for none
   */
  public static String ofEntity(String entity) {
    return TextContentRenderer.builder()
        .build()
        .render(Parser.builder().build().parse(entity))
        .strip();
  }

  /** Whether inlines show nothing. */
  static boolean isBlank(List<Inline> inlines) {
    return new PlainText(value -> "x", reference -> "x").inlines(inlines).isBlank();
  }

  /**
   * A text, its footnotes last.
   *
   * @param manuscript the text
   * @return lines, one a paragraph, heading, list item or row
   */
  public String text(Manuscript manuscript) {
    List<String> lines = new ArrayList<>();
    add(manuscript.blocks(), lines);
    manuscript.footnotes().forEach(note -> add(note.content(), lines));
    return String.join("\n", lines);
  }

  private void add(List<Block> blocks, List<String> lines) {
    for (Block block : blocks) {
      if (block instanceof Block.Paragraph paragraph) {
        lines.add(inlines(paragraph.content()));
      } else if (block instanceof Block.Heading heading) {
        lines.add(inlines(heading.content()));
      } else if (block instanceof Block.ItemList list) {
        list.items().forEach(item -> add(item, lines));
      } else if (block instanceof Block.Quote quote) {
        add(quote.content(), lines);
      } else if (block instanceof Block.Box box) {
        add(box.content(), lines);
      } else if (block instanceof Block.Art art) {
        lines.add(inlines(art.alternative()));
      } else if (block instanceof Block.Table table) {
        lines.add(row(table.head()));
        table.rows().forEach(row -> lines.add(row(row)));
      } else if (block instanceof Block.Verbatim verbatim) {
        lines.add(verbatim.text());
      }
    }
  }

  private String row(List<List<Inline>> cells) {
    return cells.stream().map(this::inlines).collect(Collectors.joining("\t"));
  }

  /**
   * Inlines.
   *
   * @param inlines the inlines
   * @return their text; nothing for a footnote's mark
   */
  public String inlines(List<Inline> inlines) {
    StringBuilder text = new StringBuilder();
    inlines.forEach(inline -> add(inline, text));
    return text.toString();
  }

  private void add(Inline inline, StringBuilder text) {
    if (inline instanceof Inline.Words words) {
      text.append(words.text());
    } else if (inline instanceof Inline.Value value) {
      text.append(values.apply(value));
    } else if (inline instanceof Inline.Code code) {
      text.append(code.text());
    } else if (inline instanceof Inline.Emphasis emphasis) {
      text.append(inlines(emphasis.content()));
    } else if (inline instanceof Inline.Strong strong) {
      text.append(inlines(strong.content()));
    } else if (inline instanceof Inline.Break) {
      text.append(' ');
    } else if (inline instanceof Inline.Reference reference) {
      text.append(
          reference.words().isEmpty() ? references.apply(reference) : inlines(reference.words()));
    } else if (inline instanceof Inline.WebLink link) {
      text.append(inlines(link.words()));
    }
  }
}
