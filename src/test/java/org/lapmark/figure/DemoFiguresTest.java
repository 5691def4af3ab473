package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.PatternSource;

class DemoFiguresTest {
  private static final FontMeasure FONT = new FontMeasure();
  private static final StyleSheet STYLES = DemoFigures.styles();

  /** What of a drawing can get into each other's way. */
  private record Seen(List<Box> texts, List<Point[]> leaders, List<Point> dots) {
    static Seen of(Drawing drawing) {
      Seen seen = new Seen(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
      seen.collect(drawing.items(), Affine.IDENTITY);
      return seen;
    }

    private void collect(List<Item> items, Affine map) {
      for (Item item : items) {
        if (item instanceof Item.Group group) {
          collect(group.items(), map.after(group.map()));
        } else if (item instanceof Item.Lettering lettering) {
          texts.add(box(lettering, map));
        } else if (item instanceof Item.Shape shape && shape.role().equals("figure-leader")) {
          leaders.add(
              new Point[] {
                map.apply(shape.paths().get(0).start()), map.apply(shape.paths().get(0).end())
              });
        } else if (item instanceof Item.Shape shape && shape.role().equals("figure-leader-dot")) {
          dots.add(map.apply(shape.paths().get(0).bounds().centre()));
        }
      }
    }

    /** From the tops of the capitals to the ends of descenders. */
    private static Box box(Item.Lettering lettering, Affine map) {
      Style style = STYLES.style(lettering.role());
      Point anchor = map.apply(lettering.anchor());
      double size = style.fontSize() * 25.4 / 72;
      double width = FONT.width(lettering.text(), style);
      double left =
          switch (lettering.alignment()) {
            case START -> anchor.x();
            case MIDDLE -> anchor.x() - width / 2;
            case END -> anchor.x() - width;
          };
      return new Box(left, anchor.y() - 0.66 * size, left + width, anchor.y() + 0.21 * size);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"S", "M", "L"})
  void everyFigureIsDrawnWithoutFindingAndItsLabelsKeepApart(String size) {
    PatternSource source = DemoFigures.source();
    EvaluatedPattern pattern = DemoFigures.pattern(source, size);
    Map<String, SourceText> blocks = DemoFigures.blocks(source);
    assertTrue(blocks.size() >= 15);
    for (PrintForm.Units units :
        List.of(PrintForm.Units.METRIC_FIRST, PrintForm.Units.INCHES_FIRST)) {
      PrintForm form = source.masthead().form().with(units);
      blocks.forEach((name, block) -> check(name + " " + size, block, pattern, form));
    }
  }

  private static void check(
      String name, SourceText block, EvaluatedPattern pattern, PrintForm form) {
    Findings findings = new Findings();
    FigureSource figure = FigureSource.parse(block, findings).orElseThrow();
    Figure drawn =
        DemoFigures.drawer()
            .draw(figure, pattern, form, findings)
            .orElseThrow(() -> new AssertionError(name + DemoFigures.said(findings)));
    assertEquals("", DemoFigures.said(findings), name);
    assertFalse(drawn.alternative().isBlank(), name);
    assertFalse(drawn.caption().isBlank(), name);
    assertEquals(figure.half() ? FigureDrawer.HALF : FigureDrawer.FULL, drawn.drawing().width());
    assertTrue(drawn.drawing().height() <= FigureDrawer.HIGHEST + 3.01, name);
    Seen seen = Seen.of(drawn.drawing());
    Box frame = Box.at(0, 0, drawn.drawing().width(), drawn.drawing().height());
    assertFalse(seen.texts.isEmpty(), name);
    for (int i = 0; i < seen.texts.size(); i++) {
      Box text = seen.texts.get(i);
      assertTrue(frame.contains(text), name + " leaves the frame: " + text);
      for (int j = 0; j < i; j++) {
        assertFalse(text.overlaps(seen.texts.get(j)), name + " overlap: " + text);
      }
      for (Point[] leader : seen.leaders) {
        assertFalse(Polygons.crosses(text, leader[0], leader[1]), name + " leader through " + text);
      }
    }
    assertEquals(seen.leaders.size(), seen.dots.size(), name);
    for (int i = 0; i < seen.leaders.size(); i++) {
      Point[] leader = seen.leaders.get(i);
      assertTrue(leader[1].distance(seen.dots.get(i)) < 1e-6, name);
      for (int j = 0; j < i; j++) {
        assertFalse(cross(leader, seen.leaders.get(j)), name + " leaders cross");
      }
    }
  }

  private static boolean cross(Point[] a, Point[] b) {
    Point u = a[1].minus(a[0]);
    Point v = b[1].minus(b[0]);
    return u.cross(b[0].minus(a[0])) * u.cross(b[1].minus(a[0])) < 0
        && v.cross(a[0].minus(b[0])) * v.cross(a[1].minus(b[0])) < 0;
  }

  @Test
  void theSameFigureIsDrawnTheSameWay() {
    PatternSource source = DemoFigures.source();
    SourceText block = DemoFigures.blocks(source).get("cut-1");
    Findings findings = new Findings();
    FigureSource figure = FigureSource.parse(block, findings).orElseThrow();
    EvaluatedPattern pattern = DemoFigures.pattern(source, "M");
    PrintForm form = source.masthead().form();
    assertEquals(
        DemoFigures.drawer().draw(figure, pattern, form, findings),
        DemoFigures.drawer().draw(figure, DemoFigures.pattern(source, "M"), form, findings));
  }

  @Test
  void theComputedAlternativeNamesSidesAndDistances() {
    PatternSource source = DemoFigures.source();
    Findings findings = new Findings();
    FigureSource figure =
        FigureSource.parse(DemoFigures.blocks(source).get("zip-1"), findings).orElseThrow();
    String words =
        DemoFigures.drawer()
            .draw(figure, DemoFigures.pattern(source, "M"), source.masthead().form(), findings)
            .orElseThrow()
            .alternative();
    assertEquals(
        "3 layers on each other, the lowest first. Layer 1: piece 3, Rear strip, main, right"
            + " side. Layer 2: zip, face down. Layer 3: piece 3, Rear strip, lining, wrong side."
            + " A stitching line along the bottom edge, 10 mm (3/8 in) from the raw edge."
            + " A label says: “sew through all three”. Measured at its right: 10 mm (3/8 in).",
        words.replace('\u00a0', ' '));
  }

  @Test
  void theKeyNamesEverySideOnce() {
    Drawing key = DemoFigures.drawer().key(DemoFigures.pattern(DemoFigures.source(), "S"));
    Seen seen = Seen.of(key);
    assertEquals(9, seen.texts.size());
    Box frame = Box.at(0, 0, key.width(), key.height());
    seen.texts.forEach(text -> assertTrue(frame.contains(text)));
  }
}
