package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.paper.Paper;

class PrintingPageTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();

  static Stream<Paper> papers() {
    return Stream.of(Paper.A4, Paper.LETTER, Paper.SHARED);
  }

  private static List<Path> paths(Drawing drawing, String role) {
    return drawing.items().stream()
        .filter(item -> item instanceof Item.Shape shape && shape.role().equals(role))
        .flatMap(item -> ((Item.Shape) item).paths().stream())
        .toList();
  }

  private static List<Box> letters(Drawing drawing) {
    List<Box> boxes = new ArrayList<>();
    for (Item item : drawing.items()) {
      if (item instanceof Item.Lettering text) {
        Style style = PLANNER.styles().style(text.role());
        double width = PLANNER.lettering().width(text.text(), style);
        double up = 0.72 * style.fontSize() * 25.4 / 72;
        double down = 0.2 * style.fontSize() * 25.4 / 72;
        double start =
            switch (text.alignment()) {
              case START -> 0;
              case MIDDLE -> -width / 2;
              case END -> -width;
            };
        Point a = text.anchor();
        boxes.add(
            text.angle() == 0
                ? new Box(a.x() + start, a.y() - up, a.x() + start + width, a.y() + down)
                : new Box(a.x() - up, a.y() - start - width, a.x() + down, a.y() - start));
      }
    }
    return boxes;
  }

  @ParameterizedTest
  @MethodSource("papers")
  void shapesAreTrueToSize(Paper paper) {
    Drawing page = PLANNER.printingPage(paper);
    assertEquals(paper.width(), page.width());
    assertEquals(paper.height(), page.height());
    List<Path> squares = paths(page, "test-square");
    assertEquals(2, squares.size());
    double[] sides = {100, 76.2};
    for (int i = 0; i < 2; i++) {
      assertEquals(sides[i], squares.get(i).bounds().width(), 1e-9);
      assertEquals(sides[i], squares.get(i).bounds().height(), 1e-9);
      assertEquals(sides[i] * sides[i], Math.abs(squares.get(i).signedArea()), 1e-6);
    }
    List<Double> bars = paths(page, "scale-bar").stream().map(Path::length).sorted().toList();
    assertEquals(180, bars.get(4), 1e-9);
    assertEquals(240, bars.get(5), 1e-9);
    Path card = paths(page, "card").get(0);
    assertTrue(card.isClosed());
    assertEquals(85.60, card.bounds().width(), 1e-9);
    assertEquals(53.98, card.bounds().height(), 1e-9);
    double corners = (4 - Math.PI) * 3.18 * 3.18;
    assertEquals(85.60 * 53.98 - corners, card.signedArea(), 1e-6);
  }

  @ParameterizedTest
  @MethodSource("papers")
  void nothingCollidesOrLeavesTheWindow(Paper paper) {
    Drawing page = PLANNER.printingPage(paper);
    List<Box> shapes = new ArrayList<>();
    for (String role : List.of("test-square", "card")) {
      paths(page, role).forEach(path -> shapes.add(path.bounds()));
    }
    // A bar with its ends: the first path is the bar, the next two are its ends.
    List<Path> bars = paths(page, "scale-bar");
    shapes.add(bars.get(1).bounds().union(bars.get(2).bounds()));
    shapes.add(bars.get(4).bounds().union(bars.get(5).bounds()));
    for (int i = 0; i < shapes.size(); i++) {
      assertTrue(paper.window().contains(shapes.get(i)), shapes.get(i).toString());
      for (int k = i + 1; k < shapes.size(); k++) {
        assertFalse(shapes.get(i).expanded(1).overlaps(shapes.get(k).expanded(1)), i + " " + k);
      }
    }
    List<Box> letters = letters(page);
    for (int i = 0; i < letters.size(); i++) {
      Box box = letters.get(i);
      assertTrue(paper.window().contains(box), box.toString());
      for (Box shape : shapes) {
        assertTrue(!box.overlaps(shape) || shape.expanded(-1).contains(box), box.toString());
      }
      for (int k = i + 1; k < letters.size(); k++) {
        assertFalse(box.overlaps(letters.get(k)), box + " " + letters.get(k));
      }
    }
  }

  @Test
  void theTableCuresWhatItNames() {
    List<String> texts =
        PLANNER.printingPage(Paper.A4).items().stream()
            .filter(item -> item instanceof Item.Lettering)
            .map(item -> ((Item.Lettering) item).text())
            .toList();
    assertTrue(rowOf(texts, "176").equals(List.of("176", "−2.2", "102.3")));
    assertTrue(rowOf(texts, "183").equals(List.of("183", "+1.7", "98.4")));
    assertTrue(rowOf(texts, "234").equals(List.of("234", "−2.5", "102.6")));
    assertTrue(rowOf(texts, "240").equals(List.of("240", "true", "100.0")));
  }

  private static List<String> rowOf(List<String> texts, String length) {
    int at = texts.indexOf(length);
    return texts.subList(at, at + 3);
  }
}
