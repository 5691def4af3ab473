package org.lapmark.figure.symbol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.lapmark.drawing.Item;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.source.ThingSource;

/** Symbols take up what they say, at any scale, and nothing of them is dropped. */
class SymbolsTest {
  private static final double[] SCALES = {1, 0.4, 0.12, 0.02};

  /** What forms need that have more measures than one width. */
  private record Stated(Map<String, Double> values, String part) implements Measures {
    @Override
    public double need(String property, double least, double most) {
      double value = values.get(property);
      assertTrue(value >= least && value <= most, property + " " + value);
      return value;
    }

    @Override
    public double or(String property, double usual, double least, double most) {
      double value = values.getOrDefault(property, usual);
      assertTrue(value >= least && value <= most, property + " " + value);
      return value;
    }
  }

  private static final Map<String, Double> SMALL =
      Map.of("inner_width", 6.0, "diameter", 7.0, "width", 10.0, "length", 30.0);
  private static final Map<String, Double> USUAL =
      Map.of("inner_width", 25.0, "diameter", 46.0, "width", 40.0, "length", 90.0);
  private static final Map<String, Double> LARGE =
      Map.of("inner_width", 40.0, "diameter", 50.0, "width", 60.0, "length", 100.0, "bar", 6.0);

  private record Case(String name, Symbol symbol) {}

  private static List<Case> cases() {
    List<Case> cases = new ArrayList<>();
    for (Form form : Symbols.FORMS) {
      for (String part : form.parts().isEmpty() ? List.of("") : form.parts()) {
        for (Map<String, Double> size : List.of(SMALL, USUAL, LARGE)) {
          cases.add(
              new Case(
                  form.id() + " " + part + " " + size.get("length"),
                  form.reader().apply(new Stated(size, part))));
        }
      }
    }
    cases.add(new Case("buttonhole", new Buttonhole(22)));
    return cases;
  }

  private static Canvas drawn(Symbol symbol, double scale) {
    Canvas canvas = DemoFigures.canvas();
    Affine map = Affine.scaling(scale, scale);
    symbol.draw(new Pen(canvas, path -> path.transformed(map), scale, symbol.size()));
    return canvas;
  }

  private static List<String> roles(Canvas canvas) {
    return canvas.items().stream().map(item -> ((Item.Shape) item).role()).distinct().toList();
  }

  @TestFactory
  List<DynamicTest> aSymbolFillsWhatItSaysAtEveryScale() {
    return cases().stream()
        .map(one -> DynamicTest.dynamicTest(one.name, () -> checkSize(one.symbol)))
        .toList();
  }

  private static void checkSize(Symbol symbol) {
    Box size = symbol.size();
    for (double scale : SCALES) {
      Box drawn = drawn(symbol, scale).bounds();
      assertEquals(size.minX() * scale, drawn.minX(), 0.02 * size.width() * scale);
      assertEquals(size.maxX() * scale, drawn.maxX(), 0.02 * size.width() * scale);
      assertEquals(size.minY() * scale, drawn.minY(), 0.02 * size.height() * scale);
      assertEquals(size.maxY() * scale, drawn.maxY(), 0.02 * size.height() * scale);
    }
  }

  @TestFactory
  List<DynamicTest> whatCantBeReadIsAnOutline() {
    return cases().stream()
        .map(
            one ->
                DynamicTest.dynamicTest(
                    one.name,
                    () -> {
                      double small =
                          Math.min(one.symbol.size().width(), one.symbol.size().height());
                      assertEquals(List.of("figure-symbol"), roles(drawn(one.symbol, 1.4 / small)));
                      assertFalse(drawn(one.symbol, 1.4 / small).lines().isEmpty());
                    }))
        .toList();
  }

  @Test
  void whatIsDrawnTwiceIsDrawnAlike() {
    for (Case one : cases()) {
      assertEquals(drawn(one.symbol, 0.4).items(), drawn(one.symbol, 0.4).items(), one.name);
    }
  }

  @Test
  void detailsShowWhereThereIsRoom() {
    for (Case one : cases()) {
      int large = drawn(one.symbol, 1).items().size();
      int small = drawn(one.symbol, 0.02).items().size();
      assertTrue(large >= small, one.name);
    }
    assertTrue(roles(drawn(new Button(20), 1)).contains("figure-symbol-solid"));
  }

  /** A leader ends on the thing, never in the hole of a ring. */
  @Test
  void leadersEndOnTheThing() {
    for (Case one : cases()) {
      Box size = one.symbol.size();
      one.symbol
          .pointedAt()
          .forEach(point -> assertTrue(size.contains(point), one.name + " " + point));
    }
    RoundRing ring = new RoundRing(30, 3);
    ring.pointedAt().forEach(point -> assertEquals(16.5, point.distance(new Point(0, 15)), 1e-9));
  }

  /** A strap comes up and goes down on the thing through which it goes. */
  @Test
  void gatesLieWithinTheirSymbols() {
    int gates = 0;
    for (Case one : cases()) {
      if (one.symbol.gate().isPresent()) {
        Symbol.Gate gate = one.symbol.gate().get();
        gates++;
        assertTrue(gate.width() <= one.symbol.size().width(), one.name);
        assertTrue(gate.up() < 0 && gate.down() > 0, one.name);
        assertTrue(gate.down() <= one.symbol.size().maxY(), one.name);
      }
    }
    assertTrue(gates >= 20, Integer.toString(gates));
  }

  @Test
  void theFormsOfPatternsAreTheFormsOfSymbols() {
    assertEquals(ThingSource.FORMS, Symbols.FORMS.stream().map(Form::id).toList());
  }

  @Test
  void everyFormAndPartHasItsWords() {
    for (Form form : Symbols.FORMS) {
      for (String part : form.parts().isEmpty() ? List.of("") : form.parts()) {
        String said =
            DemoFigures.staging(DemoFigures.pattern(DemoFigures.source(), "M"))
                .words()
                .word(form.words(part), "size", "25 mm");
        assertFalse(said.isBlank() || said.contains("_") || said.contains("{"), said);
      }
    }
  }
}
