package org.lapmark.text;

import java.util.List;
import org.lapmark.measure.print.PrintedValue;

/**
 * Writes a text as a fragment of XHTML. Classes: {@code tip}, {@code warning} and their {@code
 * label}; {@code value}; {@code reference}; {@code note} and {@code notes}; {@code left}, {@code
 * center}, {@code right} of cells; {@code verbatim}.
 */
public final class HtmlText {
  private final Printing printing;
  private final Frame frame;
  private final Hooks hooks;
  private final PlainText alternatives;

  /**
   * A writer for one manuscript.
   *
   * @param printing what its placeholders come to
   * @param frame where in the document it stands
   * @param hooks the parts that the document decides
   */
  public HtmlText(Printing printing, Frame frame, Hooks hooks) {
    this.printing = printing;
    this.frame = frame;
    this.hooks = hooks;
    this.alternatives = hooks.plain(printing);
  }

  /**
   * Where in a document a text stands.
   *
   * @param headingLevel the level of the title above the text; its own headings are below that, 6
   *     at most
   * @param prefix what the ids of its notes begin with, unique in the document and fit for an id
   * @param notesBefore how many notes come before its own where notes are numbered on; else 0
   */
  public record Frame(int headingLevel, String prefix, int notesBefore) {}

  /**
   * Where a reference leads and how it is called.
   *
   * @param label what is shown where the author gave no words
   * @param href where it leads, or null for words alone
   */
  public record Link(String label, String href) {}

  /** What a document decides for itself. */
  public interface Hooks {
    /**
     * A value's text.
     *
     * @param value the placeholder
     * @param values what it comes to in each variant of the document; empty when it couldn't be
     *     computed in any
     * @return plain text
     */
    String value(Inline.Value value, List<PrintedValue> values);

    /**
     * Writes a value; by itself, its text in a {@code span} of the class {@code value}.
     *
     * @param value the placeholder
     * @param values what it comes to in each variant of the document; empty when it couldn't be
     *     computed in any
     * @param out where to
     */
    default void value(Inline.Value value, List<PrintedValue> values, Markup out) {
      out.open("span", "class", "value").text(value(value, values)).close();
    }

    /**
     * Where a reference leads.
     *
     * @param reference the reference
     * @return its label and address
     */
    Link reference(Inline.Reference reference);

    /**
     * Writes a figure.
     *
     * @param figure the figure
     * @param out where to, between blocks
     */
    void figure(Block.Figure figure, Markup out);

    /**
     * Writes a picture.
     *
     * @param art the picture
     * @param alternative its words as plain text
     * @param caption what stands under it, as a fragment; empty for nothing
     * @param out where to, between blocks
     */
    void art(Block.Art art, String alternative, String caption, Markup out);

    /**
     * What a box is headed with.
     *
     * @param kind the kind of box
     * @return the label in the document's language
     */
    String boxLabel(Block.Box.Kind kind);

    /**
     * What a reader who can't see the page is told of a footnote's mark.
     *
     * @param number the number shown
     * @return the label in the document's language
     */
    String noteLabel(int number);

    /**
     * A writer of plain text that shows values and references as these hooks do.
     *
     * @param printing what placeholders come to
     * @return the writer
     */
    default PlainText plain(Printing printing) {
      return new PlainText(
          value -> value(value, printing.of(value)), reference -> reference(reference).label());
    }
  }

  /**
   * A whole text with its footnotes at its end.
   *
   * @param manuscript the text
   * @return the fragment
   */
  public String text(Manuscript manuscript) {
    Markup out = new Markup();
    blocks(manuscript.blocks(), out);
    notes(manuscript, out);
    return out.toString();
  }

  /**
   * Words on one line, such as a title.
   *
   * @param line the words
   * @return the fragment
   */
  public String line(List<Inline> line) {
    Markup out = new Markup();
    inlines(line, out);
    return out.toString();
  }

  /**
   * Writes footnotes as a list; nothing where there are none.
   *
   * @param manuscript the text
   * @param out where to
   */
  public void notes(Manuscript manuscript, Markup out) {
    if (manuscript.footnotes().isEmpty()) {
      return;
    }
    out.open(
        "ol",
        "class",
        "notes",
        "start",
        frame.notesBefore() == 0 ? null : String.valueOf(frame.notesBefore() + 1));
    for (Footnote note : manuscript.footnotes()) {
      out.open("li", "id", noteId(note.number()));
      items(note.content(), true, out);
      out.close();
    }
    out.close().line();
  }

  /**
   * Writes blocks.
   *
   * @param blocks the blocks
   * @param out where to
   */
  public void blocks(List<Block> blocks, Markup out) {
    Writer writer = new Writer(out, true);
    blocks.forEach(block -> block.accept(writer));
  }

  /** What stands in an item; the paragraphs of a tight list are lines. */
  private void items(List<Block> item, boolean tight, Markup out) {
    boolean first = true;
    for (Block block : item) {
      if (tight && first && block instanceof Block.Paragraph paragraph) {
        inlines(paragraph.content(), out);
      } else {
        block.accept(new Writer(out, true));
      }
      first = false;
    }
  }

  private void row(Block.Table table, List<List<Inline>> cells, String element, Markup out) {
    out.open("tr");
    for (int i = 0; i < cells.size(); i++) {
      String alignment =
          switch (table.columns().get(i)) {
            case NONE -> null;
            case LEFT -> "left";
            case CENTER -> "center";
            case RIGHT -> "right";
          };
      out.open(element, "scope", element.equals("th") ? "col" : null, "class", alignment);
      inlines(cells.get(i), out);
      out.close();
    }
    out.close();
  }

  /**
   * Writes what stands in a line.
   *
   * @param inlines the inlines
   * @param out where to
   */
  public void inlines(List<Inline> inlines, Markup out) {
    inlines(inlines, true, out);
  }

  private void inlines(List<Inline> inlines, boolean linking, Markup out) {
    Writer writer = new Writer(out, linking);
    inlines.forEach(inline -> inline.accept(writer));
  }

  private String noteId(int number) {
    return frame.prefix() + "-note-" + number;
  }

  /** Writes each part in its elements. */
  private final class Writer implements Block.Visitor, Inline.Visitor {
    private final Markup out;

    /** A link can't stand in a link; where this is false marks and references are words. */
    private final boolean linking;

    Writer(Markup out, boolean linking) {
      this.out = out;
      this.linking = linking;
    }

    private void within(List<Inline> content) {
      inlines(content, linking, out);
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) {
      out.open("p");
      within(paragraph.content());
      out.close().line();
    }

    @Override
    public void heading(Block.Heading heading) {
      out.open("h" + Math.min(6, Math.max(0, frame.headingLevel()) + heading.level()));
      within(heading.content());
      out.close().line();
    }

    @Override
    public void itemList(Block.ItemList list) {
      String start = list.ordered() && list.start() != 1 ? String.valueOf(list.start()) : null;
      out.open(list.ordered() ? "ol" : "ul", "start", start);
      for (List<Block> item : list.items()) {
        out.open("li");
        items(item, list.tight(), out);
        out.close();
      }
      out.close().line();
    }

    @Override
    public void quote(Block.Quote quote) {
      out.open("blockquote");
      blocks(quote.content(), out);
      out.close().line();
    }

    @Override
    public void rule(Block.Rule rule) {
      out.empty("hr").line();
    }

    @Override
    public void box(Block.Box box) {
      out.open("div", "class", box.kind().word());
      out.open("p", "class", "label").text(hooks.boxLabel(box.kind())).close();
      blocks(box.content(), out);
      out.close().line();
    }

    @Override
    public void figure(Block.Figure figure) {
      hooks.figure(figure, out);
    }

    @Override
    public void art(Block.Art art) {
      hooks.art(art, alternatives.inlines(art.alternative()), line(art.caption()), out);
    }

    @Override
    public void table(Block.Table table) {
      out.open("table").open("thead");
      row(table, table.head(), "th", out);
      out.close();
      if (!table.rows().isEmpty()) {
        out.open("tbody");
        table.rows().forEach(row -> row(table, row, "td", out));
        out.close();
      }
      out.close().line();
    }

    @Override
    public void verbatim(Block.Verbatim verbatim) {
      out.open("pre", "class", "verbatim").text(verbatim.text()).close().line();
    }

    @Override
    public void words(Inline.Words words) {
      out.text(words.text());
    }

    @Override
    public void value(Inline.Value value) {
      hooks.value(value, printing.of(value), out);
    }

    @Override
    public void code(Inline.Code code) {
      out.open("code").text(code.text()).close();
    }

    @Override
    public void emphasis(Inline.Emphasis emphasis) {
      out.open("em");
      within(emphasis.content());
      out.close();
    }

    @Override
    public void strong(Inline.Strong strong) {
      out.open("strong");
      within(strong.content());
      out.close();
    }

    @Override
    public void lineBreak(Inline.Break lineBreak) {
      out.empty("br");
    }

    @Override
    public void reference(Inline.Reference reference) {
      Link link = hooks.reference(reference);
      boolean leads = linking && link.href() != null;
      out.open(leads ? "a" : "span", "class", "reference", "href", leads ? link.href() : null);
      if (reference.words().isEmpty()) {
        out.text(link.label());
      } else {
        inlines(reference.words(), false, out);
      }
      out.close();
    }

    @Override
    public void webLink(Inline.WebLink link) {
      out.open(linking ? "a" : "span", "href", linking ? link.address() : null);
      inlines(link.words(), false, out);
      out.close();
    }

    @Override
    public void note(Inline.Note note) {
      int shown = frame.notesBefore() + note.number();
      out.open("sup", "class", "note");
      if (linking) {
        out.open("a", "href", '#' + noteId(note.number()), "title", hooks.noteLabel(shown));
      }
      out.text(String.valueOf(shown));
      if (linking) {
        out.close();
      }
      out.close();
    }
  }
}
