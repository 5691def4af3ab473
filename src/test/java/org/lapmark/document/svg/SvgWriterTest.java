package org.lapmark.document.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.io.StringReader;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.batik.parser.AWTPathProducer;
import org.junit.jupiter.api.Test;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

class SvgWriterTest {
  private static final StyleSheet STYLES =
      StyleSheet.parse(
          """
          cut.stroke = 0.5
          cut.dash = 2 1
          cloth.fill = 0.8
          word.size = 12
          word.bold = true
          word.halo = 0.4
          nothing.grey = 0
          """);

  private static final LetteringMeasure LETTERING =
      new LetteringMeasure() {
        @Override
        public double width(String text, Style style) {
          return text.length() * 2.5;
        }

        @Override
        public double ascent(Style style) {
          return 3;
        }

        @Override
        public double descent(Style style) {
          return 1;
        }
      };

  private static String svg(Item... items) {
    return new SvgWriter(STYLES, LETTERING)
        .write(new Drawing(100, 50.5, List.of(items)), "d1", "Name <1>", "What it & shows");
  }

  @Test
  void writesWhatIsDrawnAtItsSizeWithItsWords() {
    String svg =
        svg(
            new Item.Shape(
                List.of(Path.polyline(List.of(new Point(0, 0), new Point(10.12345, -0.0001)))),
                "cut"));
    assertEquals(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100mm\" height=\"50.5mm\""
            + " viewBox=\"0 0 100 50.5\" role=\"img\" aria-labelledby=\"d1-title d1-text\">"
            + "<title id=\"d1-title\">Name &lt;1&gt;</title>"
            + "<desc id=\"d1-text\">What it &amp; shows</desc>"
            + "<path d=\"M0 0L10.123 0\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.5\""
            + " stroke-dasharray=\"2 1\"/></svg>",
        svg);
  }

  @Test
  void whatHasNoLookIsLeftOut() {
    Path line = Path.polyline(List.of(new Point(0, 0), new Point(1, 1)));
    assertFalse(svg(new Item.Shape(List.of(line), "nothing")).contains("<path"));
    assertFalse(svg(new Item.Shape(List.of(), "cut")).contains("<path"));
  }

  @Test
  void aDrawingWithoutNameIsHiddenFromReaders() {
    String svg = new SvgWriter(STYLES, LETTERING).write(new Drawing(1, 1, List.of()), "d", "", "");
    assertTrue(svg.contains("aria-hidden=\"true\""));
    assertFalse(svg.contains("role="));
  }

  @Test
  void letteringIsTextOfItsMeasuredWidth() {
    String svg =
        svg(
            new Item.Group(
                null,
                Affine.translation(5, 5),
                null,
                List.of(
                    new Item.Lettering(
                        "a<b", new Point(1, 2), Item.Alignment.MIDDLE, 90, "word"))));
    assertTrue(
        svg.contains(
            "<text x=\"6\" y=\"7\" font-size=\"4.233\" font-weight=\"600\""
                + " text-anchor=\"middle\" textLength=\"7.5\" lengthAdjust=\"spacingAndGlyphs\""
                + " transform=\"rotate(90 6 7)\" fill=\"#000000\" stroke=\"#fff\""
                + " stroke-width=\"0.8\" stroke-linejoin=\"round\" paint-order=\"stroke\">"
                + "a&lt;b</text>"),
        svg);
  }

  @Test
  void clipsHaveIdsOfTheirOwn() {
    Item.Shape shape = new Item.Shape(List.of(Path.rectangle(new Box(0, 0, 9, 9))), "cloth");
    Item group =
        new Item.Group(Path.circle(new Point(5, 5), 5), Affine.scaling(2, 2), "S", List.of(shape));
    String svg = svg(group, group);
    for (int i = 1; i <= 2; i++) {
      assertTrue(svg.contains("<clipPath id=\"d1-clip-" + i + "\">"), svg);
      assertTrue(svg.contains("<g clip-path=\"url(#d1-clip-" + i + ")\" data-layer=\"S\">"), svg);
    }
    // The clip lies outside the map, the shape inside it.
    assertTrue(svg.contains("M10 5A5 5 0 0 1 5 10A5 5 0 0 1 0 5A"), svg);
    assertTrue(svg.contains("M0 0L18 0L18 18L0 18L0 0Z\" fill=\"#cccccc\"/>"), svg);
  }

  /** Every curve, turned, stretched and mirrored, is read back where it was drawn. */
  @Property(tries = 200)
  void curvesComeBack(
      @ForAll @DoubleRange(min = 0.5, max = 80) double radius,
      @ForAll @DoubleRange(min = -6.2, max = 6.2) double start,
      @ForAll @DoubleRange(min = -6.28, max = 6.28) double sweep,
      @ForAll @DoubleRange(min = -180, max = 180) double turn,
      @ForAll @DoubleRange(min = -2, max = 2) double stretch)
      throws Exception {
    Arc arc = new Arc(new Point(3, 4), radius, radius * 0.6, 0.4, start, sweep);
    Point end = arc.end();
    Cubic cubic =
        new Cubic(
            end, end.plus(new Point(7, 1)), end.plus(new Point(2, 9)), end.plus(new Point(12, 12)));
    Path path = new Path(List.of(arc, cubic, new Line(cubic.end(), new Point(-20, 30))));
    double across = Math.abs(stretch) < 0.1 ? 1 : stretch;
    Affine map = Affine.rotation(turn).after(Affine.scaling(across, 1));
    String svg =
        svg(new Item.Group(null, map, null, List.of(new Item.Shape(List.of(path), "cut"))));
    Matcher data = Pattern.compile(" d=\"([^\"]*)\"").matcher(svg);
    assertTrue(data.find());
    Shape read = AWTPathProducer.createShape(new StringReader(data.group(1)), 0);
    Path drawn = path.transformed(map);
    double length = 0;
    Point before = null;
    PathIterator points = read.getPathIterator(null, 0.001);
    for (double[] at = new double[6]; !points.isDone(); points.next()) {
      points.currentSegment(at);
      Point point = new Point(at[0], at[1]);
      double off = drawn.atLength(drawn.nearestLength(point)).distance(point);
      // The reader turns arcs into cubics of a quarter turn, which stray by 0.03 % of the radius.
      assertEquals(0, off, 0.06);
      length += before == null ? 0 : before.distance(point);
      before = point;
    }
    assertEquals(drawn.length(), length, 0.002 * drawn.length() + 0.01);
  }
}
