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

  /**
   * Whether inlines show nothing.
   *
   * @param inlines the inlines
   * @return whether there is nothing but spaces in them
   */
  public static boolean isBlank(List<Inline> inlines) {
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
    Block.Visitor writer = new BlockLines(lines);
    blocks.forEach(block -> block.accept(writer));
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
    Inline.Visitor writer = new InlineWords(text);
    inlines.forEach(inline -> inline.accept(writer));
    return text.toString();
  }

  /** Writes each block as lines. */
  private final class BlockLines implements Block.Visitor {
    private final List<String> lines;

    BlockLines(List<String> lines) {
      this.lines = lines;
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) {
      lines.add(inlines(paragraph.content()));
    }

    @Override
    public void heading(Block.Heading heading) {
      lines.add(inlines(heading.content()));
    }

    @Override
    public void itemList(Block.ItemList list) {
      list.items().forEach(item -> add(item, lines));
    }

    @Override
    public void quote(Block.Quote quote) {
      add(quote.content(), lines);
    }

    @Override
    public void rule(Block.Rule rule) {
      // It has no words.
    }

    @Override
    public void box(Block.Box box) {
      add(box.content(), lines);
    }

    @Override
    public void figure(Block.Figure figure) {
      // Its words are those of the figure's language.
    }

    @Override
    public void art(Block.Art art) {
      lines.add(inlines(art.alternative()));
      if (!art.caption().isEmpty()) {
        lines.add(inlines(art.caption()));
      }
    }

    @Override
    public void table(Block.Table table) {
      lines.add(row(table.head()));
      table.rows().forEach(row -> lines.add(row(row)));
    }

    @Override
    public void verbatim(Block.Verbatim verbatim) {
      lines.add(verbatim.text());
    }
  }

  /** Writes each inline behind the others. */
  private final class InlineWords implements Inline.Visitor {
    private final StringBuilder text;

    InlineWords(StringBuilder text) {
      this.text = text;
    }

    @Override
    public void words(Inline.Words words) {
      text.append(words.text());
    }

    @Override
    public void value(Inline.Value value) {
      text.append(values.apply(value));
    }

    @Override
    public void code(Inline.Code code) {
      text.append(code.text());
    }

    @Override
    public void emphasis(Inline.Emphasis emphasis) {
      text.append(inlines(emphasis.content()));
    }

    @Override
    public void strong(Inline.Strong strong) {
      text.append(inlines(strong.content()));
    }

    @Override
    public void lineBreak(Inline.Break lineBreak) {
      text.append(' ');
    }

    @Override
    public void reference(Inline.Reference reference) {
      text.append(
          reference.words().isEmpty() ? references.apply(reference) : inlines(reference.words()));
    }

    @Override
    public void webLink(Inline.WebLink link) {
      text.append(inlines(link.words()));
    }

    @Override
    public void note(Inline.Note note) {
      // The note itself stands at the end.
    }
  }
}
