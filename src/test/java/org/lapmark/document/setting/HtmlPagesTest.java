package org.lapmark.document.setting;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.Specimen;
import org.lapmark.document.manual.Look;
import org.lapmark.document.pdf.Imprint;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/** What can be laid out can be drawn, and what can't be drawn shows when it is laid out. */
class HtmlPagesTest {
  private static final DocumentWriter WRITER = new DocumentWriter(Specimen.templates());

  private static final Map<String, Drawing> DRAWINGS =
      Map.of(
          "square",
          new Drawing(
              20,
              20,
              List.of(
                  new Item.Shape(List.of(Path.rectangle(Box.at(1, 1, 9, 9))), "cutting-line"))));

  @Test
  void whatCanBeLaidOutCanBeDrawn() throws Exception {
    String html =
        page(
            "<bookmark name='One' href='#one'/>",
            "<h1 id='one'>One</h1><p>To <a href='#one'>one</a>, or <a"
                + " href='https://example.org/'>out</a>.</p>"
                + "<object type='lapmark/drawing' data='square' alt='A square'"
                + " style='width: 20mm; height: 20mm'></object>"
                + "<table><tr><td>"
                + "abcdefghijklmnopqrstuvwxyz".repeat(4)
                + "</td><td>"
                + "abcdefghijklmnopqrstuvwxyz".repeat(4)
                + "</td></tr></table>");
    assertDoesNotThrow(() -> layOut(html));
    assertTrue(render(html) > 0);
    assertEquals(0, layOut(html), "nothing is drawn");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<p>To <a href='#two'>two</a></p>",
        "<p>To <a href='#gone'>what isn’t shown</a></p><p id='gone' style='display: none'>x</p>",
        "<object type='lapmark/drawing' data='square' style='width: 20mm; height: 20mm'></object>",
        "<object type='lapmark/drawing' data='square' alt='' style='width: 20mm; height: 20mm'></object>",
        "<object type='lapmark/drawing' data='circle' alt='A circle'></object>",
        "<p style='color: rd'>x</p>"
      })
  void whatCannotBeDrawnShowsWhenItIsLaidOut(String body) {
    String html = page("", body);
    assertThrows(IllegalStateException.class, () -> render(html));
    assertThrows(IllegalStateException.class, () -> layOut(html));
  }

  @Test
  void bookmarksLeadSomewhere() {
    String html = page("<bookmark name='Two' href='#two'/>", "<p id='one'>x</p>");
    assertThrows(IllegalStateException.class, () -> render(html));
    assertThrows(IllegalStateException.class, () -> layOut(html));
  }

  private static String page(String bookmarks, String body) {
    return "<html lang='en'><head><title>t</title><meta name='subject' content='s'/><meta name='description' content='d'/>"
        + "<bookmarks>"
        + bookmarks
        + "</bookmarks><style>body { font-family: 'Source Sans Pro', sans-serif; }</style></head>"
        + "<body>"
        + body
        + "</body></html>";
  }

  private static int render(String html) throws Exception {
    try (PdfBook book = book()) {
      HtmlPages.render(book, html, DRAWINGS, 0);
      return book.pageCount();
    }
  }

  private static int layOut(String html) throws Exception {
    try (PdfBook book = book()) {
      HtmlPages.layOut(book, html, DRAWINGS, 0);
      return book.pageCount();
    }
  }

  private static PdfBook book() throws Exception {
    return new PdfBook(
        new Imprint("t", "a", "s", "en-GB", LocalDate.of(2027, 1, 1), "p"),
        WRITER.styles(Look.STANDARD),
        WRITER.fonts(),
        WRITER.glyphs());
  }
}
