package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.drawing.Item;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;

/** Hardware and notions on the specimen sheet. */
class NotionsTest {
  private static Figure figure(SourceText block, String size) throws IOException {
    PatternSource source = NotionsSheet.source();
    EvaluatedPattern pattern = DemoFigures.pattern(source, size);
    Findings findings = new Findings();
    Figure figure =
        FigureSource.parse(block, findings)
            .flatMap(
                one -> DemoFigures.drawer().draw(one, pattern, source.masthead().form(), findings))
            .orElse(null);
    assertEquals("", DemoFigures.said(findings));
    return figure;
  }

  private static Figure figure(String things) throws IOException {
    return figure(
        DemoFigures.block("pieces:\n- piece: 1\n  name: no\n  things: [" + things + "]\n"), "L");
  }

  /** All shapes in the order in which they are drawn, in the picture’s own coordinates. */
  private static List<Item.Shape> shapes(List<Item> items) {
    List<Item.Shape> shapes = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group && group.clip() == null) {
        shapes.addAll(shapes(group.items()));
      } else if (item instanceof Item.Shape shape) {
        shapes.add(shape);
      }
    }
    return shapes;
  }

  /** The role of what is filled last over a point. */
  private static String top(List<Item.Shape> shapes, Point point) {
    String top = "";
    for (Item.Shape shape : shapes) {
      boolean fills = DemoFigures.styles().style(shape.role()).fillGrey() >= 0;
      long round =
          shape.paths().stream().filter(Path::isClosed).filter(p -> p.encloses(point)).count();
      if (fills && round % 2 == 1) {
        top = shape.role();
      }
    }
    return top;
  }

  /** Millimetres of cloth from the middle of the piece’s top edge, as a point of the picture. */
  private static Point at(List<Item.Shape> shapes, double right, double down) {
    Box sheet = shapes.get(0).paths().get(0).bounds();
    double scale = sheet.width() / 320;
    return new Point(sheet.centre().x() + right * scale, sheet.minY() + down * scale);
  }

  @Test
  void theSheetShowsEveryFormInEverySize() throws IOException {
    PatternSource source = NotionsSheet.source();
    StringBuilder all = new StringBuilder();
    for (SourceText block : DemoFigures.blocks(source).values()) {
      all.append(block.text());
      for (String size : List.of("S", "L")) {
        assertFalse(figure(block, size).drawing().items().isEmpty());
        assertEquals(figure(block, size), figure(block, size), "drawn alike");
      }
    }
    Set<String> forms = new TreeSet<>();
    for (ThingSource thing : source.hardware()) {
      if (thing.form() != null && all.toString().contains(thing.id().text())) {
        forms.add(thing.form().text());
      }
    }
    assertEquals(new TreeSet<>(ThingSource.FORMS), forms);
  }

  @Test
  void aStrapTurnsBackRoundTheBarAndTheRestOfTheRingLiesOpen() throws IOException {
    List<Item.Shape> shapes =
        shapes(
            figure("{width: 25 mm, length: 60 mm, edge: top, cloth: webbing, through: [d_ring]}")
                .drawing()
                .items());
    assertEquals("figure-webbing", top(shapes, at(shapes, 0, 58.5)), "over the bar");
    assertEquals("figure-symbol", top(shapes, at(shapes, 14, 58.5)), "the bar beside the strap");
    assertEquals("figure-main", top(shapes, at(shapes, 0, 64)), "through the ring");
    assertEquals("figure-symbol", top(shapes, at(shapes, 0, 79.5)), "the ring’s bow");
  }

  @Test
  void aStrapGoesUnderTheOuterBarsOfASlideAndOverTheMiddleOne() throws IOException {
    String through = "through: [{hardware: slide, at: 40 mm}]";
    List<Item.Shape> shapes =
        shapes(
            figure("{width: 25 mm, length: 80 mm, edge: top, cloth: webbing, " + through + "}")
                .drawing()
                .items());
    // The middle bar is 3 mm thick and ends at 40 mm; the slots are 5.5 mm wide.
    assertEquals("figure-symbol", top(shapes, at(shapes, 0, 30)), "the first bar over the strap");
    assertEquals("figure-webbing", top(shapes, at(shapes, 0, 38.5)), "the strap over the middle");
    assertEquals("figure-symbol", top(shapes, at(shapes, 0, 47)), "the last bar over the strap");
    assertEquals("figure-webbing", top(shapes, at(shapes, 0, 60)), "and on");
  }

  @Test
  void anAttachedRingIsInTheFoldOfWhatHoldsItIfThatIsShown() throws IOException {
    List<Item.Shape> both =
        shapes(figure("{attachment: held}, {attachment: ring}").drawing().items());
    // The tab begins at the raw edge, 60 mm from the left of a sheet of 300 mm.
    assertEquals("figure-webbing", top(both, at(both, -90, 48.5)));
    List<Item.Shape> alone = shapes(figure("{attachment: ring}").drawing().items());
    assertEquals("figure-symbol", top(alone, at(alone, -90, 48.5)));
  }

  @Test
  void throughAnEyeletIsSeenWhatLiesUnderIt() throws IOException {
    List<Item.Shape> shapes =
        shapes(figure("{hardware: eyelet, edge: top, inside: 40 mm}").drawing().items());
    assertEquals("figure-main", top(shapes, at(shapes, 0, 40)));
    assertEquals("figure-symbol", top(shapes, at(shapes, 5.5, 40)));
  }

  @Test
  void placesFollowTheSize() throws IOException {
    for (String size : List.of("S", "L")) {
      Figure figure =
          figure(
              DemoFigures.block(
                  "pieces:\n- piece: 1\n  name: no\n  things:"
                      + " [{hardware: rivet, at: [wide - 20 mm, 20 mm]}]\n"),
              size);
      List<Item.Shape> shapes = shapes(figure.drawing().items());
      Box sheet = shapes.get(0).paths().get(0).bounds();
      double scale = sheet.height() / 130;
      Box rivet =
          shapes.stream()
              .filter(shape -> shape.role().equals("figure-symbol"))
              .findFirst()
              .orElseThrow()
              .paths()
              .get(0)
              .bounds();
      assertEquals(8 * scale, rivet.width(), 0.05);
      assertEquals(sheet.maxX() - 30 * scale, rivet.centre().x(), 0.01);
      assertEquals(sheet.minY() + 30 * scale, rivet.centre().y(), 0.01);
    }
  }

  @Test
  void aTrimFollowsItsCurve() throws IOException {
    Figure figure =
        figure(
            DemoFigures.block("pieces:\n- piece: 3\n  name: no\n  things: [{trim: curved}]\n"),
            "L");
    List<Item.Shape> shapes = shapes(figure.drawing().items());
    Item.Shape tape =
        shapes.stream()
            .filter(shape -> shape.role().equals("figure-symbol"))
            .findFirst()
            .orElseThrow();
    Box box = tape.paths().get(0).bounds();
    // 180 mm of tape along an edge of radius 160 mm; 32 mm wide, its middle 6 mm outside.
    double half = 180 / 160.0 / 2;
    double width = 2 * 182 * StrictMath.sin(half);
    double height = 182 - 150 * StrictMath.cos(half);
    assertEquals(height / width, box.height() / box.width(), 0.003);
  }

  @Test
  void whatIsShownIsSaidInSentences() throws IOException {
    String said =
        figure(
                "{attachment: held, name: strap}, {attachment: ring}, {hardware: stud, part:"
                    + " socket, mark: stud}, {width: 20 mm, length: 60 mm, edge: top, through:"
                    + " [{hardware: slide, at: 20 mm}, {hardware: hook, back: 25 mm}]}")
            .alternative();
    assertEquals(
        "Laid flat: piece 1, Sheet, felt, right side. On it: strap. On it: a D-ring, 25 mm (1 in)"
            + " wide inside, in the fold of what holds it. On it: the socket half of a press stud,"
            + " 12 mm (1/2 in) across. On it: a strap, passed through a slide, 25 mm (1 in) wide"
            + " inside, turned back round a swivel hook, its eye 25 mm (1 in) wide inside, its end"
            + " lying 25 mm (1 in) over itself.",
        said.replace('\u00a0', ' ').replace('\u202f', ' '));
  }
}
