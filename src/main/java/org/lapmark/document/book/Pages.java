package org.lapmark.document.book;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.pdf.Imprint;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.document.pdf.Program;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.source.Masthead;
import org.lapmark.wording.Wording;

/** The pages of one file while they are made: of text, of tiles, and their numbers. */
public final class Pages implements AutoCloseable {
  /** Left and right of the text in millimetres, as the style sheet has it. */
  public static final double TEXT_MARGIN = 20;

  private static final double PAGE_NUMBER_BELOW = 4;

  /** How far all ink keeps from the edge of the paper, in millimetres. */
  private static final double INK_INSIDE = 6;

  private final DocumentWriter writer;
  private final Paper paper;
  private final Wording wording;
  private final StyleSheet styles;
  private final PdfBook book;

  /** Whether pages are only laid out, as nobody will see them: then the book stays empty. */
  private final boolean isTriedOut;

  /**
   * What a file says of itself.
   *
   * @param masthead the pattern's
   * @param size the size, or all of them, in words
   * @param title the key of the file's title
   * @param subject the key of what it is about
   */
  public record Title(Masthead masthead, String size, String title, String subject) {}

  /**
   * Begins a file.
   *
   * @param writer has templates and fonts
   * @param title what it says of itself
   * @param paper the paper of all pages
   * @param wording its words
   * @param styles the look of drawings
   */
  public Pages(DocumentWriter writer, Title title, Paper paper, Wording wording, StyleSheet styles)
      throws IOException {
    this.writer = writer;
    this.paper = paper;
    this.wording = wording;
    this.styles = styles;
    this.isTriedOut = !writer.isKept() && writer.setting().canBeTriedOut();
    Masthead masthead = title.masthead();
    Map<String, String> names = Map.of("title", masthead.title().text(), "size", title.size());
    Imprint imprint =
        new Imprint(
            writer.glyphs().printable(wording.text(title.title(), names)),
            writer.glyphs().printable(masthead.studio().text()),
            writer.glyphs().printable(wording.text(title.subject(), names)),
            masthead.language().toLanguageTag(),
            masthead.date(),
            Program.name());
    this.book = new PdfBook(imprint, styles, writer.fonts(), writer.glyphs());
  }

  /** Whether pages are only laid out. */
  boolean isTriedOut() {
    return isTriedOut;
  }

  /** How many pages there are so far; none where they are only laid out. */
  public int count() {
    return book.pageCount();
  }

  /**
   * Sets pages of text.
   *
   * @param template the template
   * @param model its values
   * @param drawings the drawings that it may ask for, by name
   * @param inserted how many pages are going to be put behind the first
   */
  public void set(
      String template, Map<String, Object> model, Map<String, Drawing> drawings, int inserted)
      throws IOException {
    if (isTriedOut) {
      writer.setting().tryOut(book, template, model, wording, drawings, inserted);
    } else {
      writer.setting().set(book, template, model, wording, drawings, inserted);
    }
  }

  /** Puts the page that proves the scale behind the cover. */
  void insert(Drawing printingPage) throws IOException {
    if (isTriedOut) {
      return;
    }
    book.insertBehindCover(printingPage, wording.text("printing.alternative"));
    book.outline()
        .getFirstChild()
        .insertSiblingAfter(book.outlineItem(wording.text("printing.title"), 1));
  }

  /** States the layers of the tiles that follow. */
  void layers(NestedPlan plan) {
    book.layers(plan.layers(), plan.hidden());
  }

  /**
   * Appends tiles, each with its bookmark.
   *
   * @param plan the tiles; there may be none
   */
  public void append(SheetPlan plan) throws IOException {
    if (isTriedOut) {
      return;
    }
    List<PDOutlineItem> items = new ArrayList<>();
    for (Tile tile : plan.tiles()) {
      book.append(tile.page(), tile.alternative());
      items.add(
          book.outlineItem(
              wording.text("map.tile-bookmark", Map.of("code", tile.code())),
              book.pageCount() - 1));
    }
    if (!items.isEmpty()) {
      PDOutlineItem tiles =
          book.outlineItem(wording.text("map.tiles-bookmark"), book.pageCount() - items.size());
      items.forEach(tiles::addLast);
      book.outline().addLast(tiles);
    }
  }

  /**
   * Stamps page numbers at one height on every page, in line with text or with a tile's window, and
   * ends the file.
   *
   * @param isText whether the page with an index has text
   * @return a PDF/A-3a and PDF/UA-1 file; nothing of one that isn't kept, as neither numbers nor
   *     the file's own structure depend on what a pattern says
   */
  public byte[] numbered(IntPredicate isText) throws IOException {
    if (!writer.isKept()) {
      return new byte[0];
    }
    int pages = book.pageCount();
    Box window = paper.window();
    double descent = writer.lettering().descent(styles.style("page-number"));
    for (int i = 0; i < pages; i++) {
      // Below what tiles draw in, where most printers still reach; nothing depends on it there, as
      // a tile has its code inside.
      double height = book.pageHeight(i);
      double below = paper.height() - window.maxY();
      double baseline = height - Math.max(below - PAGE_NUMBER_BELOW, INK_INSIDE + descent);
      String text = wording.text("page.number", Map.of("page", i + 1, "pages", pages));
      double right = isText.test(i) ? paper.width() - TEXT_MARGIN : window.maxX();
      Item number =
          new Item.Lettering(
              text, new Point(right, baseline), Item.Alignment.END, 0, "page-number");
      book.stamp(i, new Drawing(paper.width(), height, List.of(number)));
    }
    return book.save();
  }

  @Override
  public void close() throws IOException {
    book.close();
  }
}
