package org.lapmark.document.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

class PdfCanvasTest {
  private static final double MM = 25.4 / 72;
  private static final double WIDTH = 210;
  private static final double HEIGHT = 297;
  private static final FontFiles FILES = FontFiles.load();
  private static final Glyphs GLYPHS = new Glyphs(FILES);

  private static byte[] page(Item... items) throws IOException {
    Map<String, Style> styles = new LinkedHashMap<>();
    styles.put("line", new Style(0.6, List.of(), 0, -1, 0, false, 0));
    styles.put("dashes", new Style(0.3, List.of(3.0, 1.5), 0.4, -1, 0, false, 0));
    styles.put("area", new Style(0, List.of(), 0, 0.9, 0, false, 0));
    styles.put("text", new Style(0, List.of(), 0, -1, 10, false, 0));
    styles.put("haloed", new Style(0, List.of(), 0.25, -1, 10, true, 0.5));
    Imprint imprint = new Imprint("t", "a", "s", "en", LocalDate.of(2027, 1, 1), "p");
    try (PdfBook book = new PdfBook(imprint, new StyleSheet(styles), FILES, GLYPHS)) {
      book.append(new Drawing(WIDTH, HEIGHT, List.of(items)), "a page");
      return book.save();
    }
  }

  private record Step(String operator, List<Double> numbers) {}

  private static List<Step> steps(byte[] file) throws IOException {
    List<Step> steps = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file)) {
      List<Double> numbers = new ArrayList<>();
      for (Object token : new PDFStreamParser(document.getPage(0)).parse()) {
        if (token instanceof COSNumber number) {
          numbers.add((double) number.floatValue());
        } else if (token instanceof Operator operator) {
          steps.add(new Step(operator.getName(), List.copyOf(numbers)));
          numbers.clear();
        }
      }
    }
    return steps;
  }

  /** Points of an operator on the drawing, in millimetres with y down. */
  private static List<Point> points(Step step) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < step.numbers.size(); i += 2) {
      points.add(new Point(step.numbers.get(i) * MM, HEIGHT - step.numbers.get(i + 1) * MM));
    }
    return points;
  }

  @Property(tries = 60)
  void drawsCurvesWithinTwoMicrometres(
      @ForAll @DoubleRange(min = 1, max = 400) double radius,
      @ForAll @DoubleRange(min = -180, max = 180) double turn,
      @ForAll @DoubleRange(min = -6.28, max = 6.28) double sweep)
      throws IOException {
    Point centre = new Point(13.3, -7.7);
    Affine map = Affine.translation(100.123, 150.456).after(Affine.rotation(turn));
    Arc arc = new Arc(centre, radius, radius, 0, 0.3, sweep == 0 ? 1 : sweep);
    Cubic cubic =
        new Cubic(arc.end(), new Point(radius, 20), new Point(-radius, 33.333), new Point(5, 6));
    Path path = new Path(List.of(arc, cubic));
    byte[] file =
        page(new Item.Group(null, map, null, List.of(new Item.Shape(List.of(path), "line"))));
    Point middle = map.apply(centre);
    List<Step> curves = new ArrayList<>();
    Point at = null;
    for (Step step : steps(file)) {
      if (step.operator.equals("m")) {
        at = points(step).get(0);
        assertTrue(at.distance(map.apply(arc.start())) < 0.002);
      } else if (step.operator.equals("c")) {
        curves.add(step);
      }
    }
    for (Step step : curves.subList(0, curves.size() - 1)) {
      List<Point> p = points(step);
      Cubic piece = new Cubic(at, p.get(0), p.get(1), p.get(2));
      for (double t = 0; t <= 1; t += 0.125) {
        assertEquals(radius, piece.at(t).distance(middle), 0.002);
      }
      at = p.get(2);
    }
    assertTrue(at.distance(map.apply(arc.end())) < 0.002);
    List<Point> last = points(curves.get(curves.size() - 1));
    assertTrue(last.get(0).distance(map.apply(cubic.control1())) < 0.002);
    assertTrue(last.get(1).distance(map.apply(cubic.control2())) < 0.002);
    assertTrue(last.get(2).distance(map.apply(cubic.end())) < 0.002);
  }

  @Test
  void keepsLineWidthsAndDashesUnderAMap() throws Exception {
    Path square = Path.rectangle(Box.at(0, 0, 10, 10));
    List<Step> steps =
        steps(
            page(
                new Item.Group(
                    Path.rectangle(Box.at(20, 20, 50, 50)),
                    Affine.translation(30, 30).after(Affine.scaling(0.1, 0.1)),
                    "Size M",
                    List.of(new Item.Shape(List.of(square), "dashes"))),
                new Item.Shape(List.of(square, Path.rectangle(Box.at(2, 2, 3, 3))), "area")));
    List<String> operators = steps.stream().map(Step::operator).toList();
    Step width = steps.get(operators.indexOf("w"));
    assertEquals(0.3, width.numbers.get(0) * MM, 1e-4);
    assertEquals(
        List.of("BDC", "BDC", "q", "m", "l", "l", "l", "l", "h", "W*", "n"),
        operators.subList(0, 11));
    assertTrue(operators.indexOf("S") < operators.indexOf("Q"));
    assertTrue(operators.contains("f*"), "filled by the even-odd rule");
  }

  @Test
  void setsLetteringWhereItIsAnchored() throws Exception {
    byte[] file =
        page(
            new Item.Lettering("Begin", new Point(50, 60), Item.Alignment.START, 0, "text"),
            new Item.Lettering("Halfway", new Point(50, 80), Item.Alignment.MIDDLE, 0, "haloed"),
            new Item.Group(
                null,
                new Affine(-1, 0, 0, 1, 200, 0),
                null,
                List.of(
                    new Item.Lettering(
                        "Mirror", new Point(50, 100), Item.Alignment.END, 0, "text"))));
    List<TextPosition> letters = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(file)) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition text) {
          letters.add(text);
        }
      }.getText(document);
    }
    assertEquals("B", letters.get(0).getUnicode());
    assertEquals(50, letters.get(0).getTextMatrix().getTranslateX() * MM, 0.01);
    assertEquals(60, HEIGHT - letters.get(0).getTextMatrix().getTranslateY() * MM, 0.01);
    TextPosition first = letters.get(5);
    TextPosition last = letters.get(11);
    double left = first.getTextMatrix().getTranslateX() * MM;
    double right = (last.getTextMatrix().getTranslateX() + last.getWidth()) * MM;
    assertEquals(50, (left + right) / 2, 0.02);
    // A mirrored map turns the baseline round and leaves the letters readable.
    TextPosition mirrored = letters.get(12);
    assertEquals("M", mirrored.getUnicode());
    assertTrue(mirrored.getTextMatrix().getScaleX() < 0);
    assertTrue(mirrored.getTextMatrix().getScaleY() < 0);
  }

  @Test
  void namesLayersForReadersToSwitch() throws Exception {
    Item shape = new Item.Shape(List.of(Path.rectangle(Box.at(1, 1, 5, 5))), "line");
    byte[] file =
        page(
            new Item.Group(null, Affine.IDENTITY, "Size S", List.of(shape)),
            new Item.Group(null, Affine.IDENTITY, "Size M", List.of(shape)),
            new Item.Group(null, Affine.IDENTITY, "Size S", List.of(shape)));
    try (PDDocument document = Loader.loadPDF(file)) {
      var properties = document.getDocumentCatalog().getOCProperties();
      assertEquals(List.of("Size S", "Size M"), List.of(properties.getGroupNames()));
      assertEquals(
          2,
          properties.getCOSObject().getCOSDictionary(COSName.D).getCOSArray(COSName.ORDER).size());
    }
  }
}
