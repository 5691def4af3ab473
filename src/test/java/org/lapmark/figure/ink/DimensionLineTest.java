package org.lapmark.figure.ink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapmark.figure.DemoFigures;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

class DimensionLineTest {
  private static final Box SHAPE = Box.at(0, 0, 60, 30);

  private static Canvas canvas() {
    Canvas canvas = DemoFigures.canvas();
    canvas.line(Path.rectangle(SHAPE), "figure-outline");
    return canvas;
  }

  private static void measure(Canvas canvas, double from, double to) {
    canvas.dimension(new Point(from, 0), new Point(to, 0), Beside.ABOVE, "48 mm (1 7/8 in)", SHAPE);
  }

  private static void keptApart(Canvas canvas) {
    for (int i = 0; i < canvas.texts().size(); i++) {
      Box text = canvas.texts().get(i);
      canvas
          .lines()
          .forEach(line -> assertFalse(Polygons.crosses(text, line.from(), line.to()), "" + line));
      for (Box other : canvas.texts().subList(0, i)) {
        assertFalse(text.overlaps(other));
      }
    }
  }

  @Test
  void wordsStandOverTheMiddleOfTheLine() {
    Canvas canvas = canvas();
    measure(canvas, 0, 60);
    assertEquals(30, canvas.texts().get(0).centre().x(), 1e-9);
    assertEquals(List.of("48 mm (1 7/8 in)"), canvas.measured().get(Beside.ABOVE));
    keptApart(canvas);
  }

  @Test
  void dimensionsShorterThanTheirWordsKeepApart() {
    Canvas canvas = canvas();
    measure(canvas, 10, 20);
    measure(canvas, 20, 27);
    measure(canvas, 27, 60);
    assertFalse(canvas.isCrowded());
    assertEquals(3, canvas.texts().size());
    keptApart(canvas);
  }

  @Test
  void dimensionsThatOverlapStandInRows() {
    Canvas canvas = canvas();
    measure(canvas, 0, 60);
    measure(canvas, 0, 40);
    assertTrue(canvas.texts().get(1).maxY() < canvas.texts().get(0).minY());
    keptApart(canvas);
  }

  @Test
  void moreThanThereIsRoomForIsToldAsCrowded() {
    Canvas canvas = canvas();
    for (int i = 0; i < 12; i++) {
      measure(canvas, 0, 60);
    }
    assertTrue(canvas.isCrowded());
  }
}
