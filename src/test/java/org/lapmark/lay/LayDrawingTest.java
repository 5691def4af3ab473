package org.lapmark.lay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.lapmark.lay.Samples.CANVAS;
import static org.lapmark.lay.Samples.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.lapmark.document.DocumentWriter;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.wording.Wording;

class LayDrawingTest {
  private static final Map<String, Lay> LAYS = Examples.all();

  private final DocumentWriter writer = Samples.writer();
  private final StyleSheet styles = writer.styles();
  private final LetteringMeasure lettering = writer.lettering();

  private LayDrawing drawer(Locale locale) {
    Wording wording = writer.wording(locale);
    return new LayDrawing(wording, styles, lettering, PrintForm.DEFAULT);
  }

  /** A line of lettering and the box of its capitals. */
  private record Written(String text, Box box) {}

  private List<Written> written(Drawing drawing) {
    List<Written> all = new ArrayList<>();
    for (Item item : drawing.items()) {
      if (item instanceof Item.Lettering text && !text.text().isBlank()) {
        var style = styles.style(text.role());
        assertTrue(style.fontSize() >= 8.5, text.role());
        double width = lettering.width(text.text(), style);
        double up = lettering.ascent(style) * 0.66;
        Affine turn = Affine.rotation(text.angle());
        Point a = text.anchor().plus(turn.applyVector(new Point(0.1, -up)));
        Point b = text.anchor().plus(turn.applyVector(new Point(width - 0.1, 0)));
        all.add(
            new Written(
                text.text(),
                new Box(
                    Math.min(a.x(), b.x()),
                    Math.min(a.y(), b.y()),
                    Math.max(a.x(), b.x()),
                    Math.max(a.y(), b.y()))));
      }
    }
    return all;
  }

  private void check(Lay lay, Drawing drawing, double width) {
    assertEquals(width, drawing.width(), 1e-9);
    Box page = Box.at(0, 0, drawing.width(), drawing.height());
    List<Written> written = written(drawing);
    for (int i = 0; i < written.size(); i++) {
      assertTrue(page.contains(written.get(i).box()), "off the page: " + written.get(i));
      for (int k = 0; k < i; k++) {
        assertFalse(
            written.get(i).box().overlaps(written.get(k).box()),
            written.get(i) + " on " + written.get(k));
      }
    }
    for (Item item : drawing.items()) {
      if (item instanceof Item.Shape shape) {
        shape.paths().forEach(path -> assertTrue(page.contains(path.bounds()), shape.role()));
      }
    }
    LayWords words = new LayWords(writer.wording(Locale.UK), PrintForm.DEFAULT);
    List<String> texts = written.stream().map(Written::text).toList();
    for (Placement placement : lay.placements()) {
      assertTrue(texts.contains(words.mark(placement)), "no " + words.mark(placement));
      String name = placement.piece().name();
      assertTrue(
          String.join(" ", texts).contains(name)
              || texts.contains(placement.piece().number() + " " + name),
          "no " + name);
    }
  }

  @Test
  void theExamplesAreLegible() {
    LAYS.forEach((name, lay) -> check(lay, drawer(Locale.UK).draw(lay, 165, 150), 165));
  }

  @Test
  void theExamplesAreLegibleInANarrowColumn() {
    LAYS.forEach((name, lay) -> check(lay, drawer(Locale.UK).draw(lay, 120, 190), 120));
  }

  @Property(tries = 60)
  void anythingIsLegible(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Samples samples =
        new Samples()
            .material(CANVAS, "canvas", "usable_width", (450 + random.nextInt(1100)) + " mm");
    int count = 1 + random.nextInt(8);
    for (int i = 0; i < count; i++) {
      int copies = 1 + random.nextInt(4);
      samples.rectangle(
          "Piece of sort " + i,
          random.nextDouble(10, 400),
          random.nextDouble(10, 600),
          cut(CANVAS, copies, random.nextInt(copies + 1)));
    }
    Lay lay = LayPlanner.plan(samples.pattern(), new Findings(), 200_000).get(0).lays().get(0);
    check(lay, drawer(Locale.UK).draw(lay, 165, 160), 165);
  }

  @Test
  void piecesAreDrawnToScaleAndNeverMirrored() {
    for (Lay lay : LAYS.values()) {
      Drawing drawing = drawer(Locale.UK).draw(lay, 165, 150);
      List<Path> drawn = new ArrayList<>();
      outlines(drawing.items(), drawn);
      if (drawn.size() != lay.placements().size()) {
        continue;
      }
      double scale = Double.NaN;
      for (int i = 0; i < drawn.size(); i++) {
        double area = lay.placements().get(i).outline().signedArea();
        double ratio = drawn.get(i).signedArea() / area;
        assertTrue(ratio > 0, "mirrored");
        scale = Double.isNaN(scale) ? ratio : scale;
        assertEquals(scale, ratio, 1e-9);
      }
    }
  }

  private static void outlines(List<Item> items, List<Path> into) {
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        outlines(group.items(), into);
      } else if (item instanceof Item.Shape shape
          && (shape.role().equals("lay-piece") || shape.role().equals("lay-piece-reversed"))) {
        into.addAll(shape.paths());
      }
    }
  }

  @Test
  void aLongLayIsBrokenIntoRowsWhereItsPiecesWouldBeTooSmall() {
    Samples samples = new Samples().material(CANVAS, "ribbon cloth", "usable_width", "200 mm");
    samples.rectangle("Flag", 30, 45, cut(CANVAS, 300, 0));
    Lay lay = LayPlanner.plan(samples.pattern(), new Findings(), 200_000).get(0).lays().get(0);
    Drawing drawing = drawer(Locale.UK).draw(lay, 165, 230);
    check(lay, drawing, 165);
    long rows =
        drawing.items().stream()
            .filter(item -> item instanceof Item.Group group && group.clip() != null)
            .count();
    assertTrue(rows >= 2, rows + " rows");
    assertTrue(written(drawing).stream().anyMatch(text -> text.text().startsWith("Length in all")));
  }

  @Test
  void selvedgesAndWidthAreNamedInTheDocumentsWords() {
    Lay lay = LAYS.get("bag");
    assertEquals(2, count(drawer(Locale.UK).draw(lay, 165, 150), "selvedge"));
    assertEquals(2, count(drawer(Locale.US).draw(lay, 165, 150), "selvage"));
    assertEquals(1, count(drawer(Locale.UK).draw(lay, 165, 150), "145\u00a0cm (57\u00a0in)"));
    assertEquals(0, count(drawer(Locale.UK).draw(LAYS.get("foam"), 165, 150), "selvedge"));
  }

  private long count(Drawing drawing, String text) {
    return written(drawing).stream().filter(line -> line.text().equals(text)).count();
  }

  @Test
  void theAlternativeNamesEveryPiece() {
    LayWords words = new LayWords(writer.wording(Locale.UK), PrintForm.DEFAULT);
    assertEquals(
        "Cutting layout for heavy canvas, 50\u00a0cm (20\u00a0in) wide, size M: 2 pieces on"
            + " 130\u00a0mm (5\u00a01/8\u00a0in) of its length, in one layer. From the cut end on:"
            + " 1 End stiffener; 1 End stiffener.",
        words.alternative(LAYS.get("foam")));
    assertTrue(words.alternative(LAYS.get("bag")).contains("1 M End"));
    assertEquals(
        "Buy 3.4\u00a0m or 3\u00a05/8\u00a0yd. The layout uses 3004\u00a0mm (118\u00a03/8\u00a0in);"
            + " 10% is added.",
        words.purchase(LAYS.get("long")));
    assertTrue(words.purchase(LAYS.get("bag")).contains("nothing is added"));
  }
}
