package org.lapmark.figure.workpiece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;

class LinesTest {
  private static final Panel STRIP = PanelBuilder.rectangle("strip", 240, 60, false);
  private static final Map<String, Double> ALLOWANCES =
      Map.of("top", 10.0, "right", 10.0, "bottom", 10.0, "left", 10.0);

  @Property(tries = 100)
  void aLineRunsAtItsTrueDistanceFromTheStitchingLine(
      @ForAll @DoubleRange(min = 0, max = 10) double outside) {
    List<Path> lines = Lines.beside(STRIP, ALLOWANCES, List.of("top"), outside, List.of());
    assertEquals(1, lines.size());
    for (Point point : lines.get(0).flattened(0.01)) {
      assertEquals(-outside, point.y(), 1e-6);
    }
    assertEquals(260, lines.get(0).length(), 1e-6);
  }

  @Test
  void besideATurnedEdgeALineEndsThere() {
    Map<String, Double> allowances =
        Map.of("top", 10.0, "right", 10.0, "bottom", 10.0, "left", 0.0);
    List<Path> lines = Lines.beside(STRIP, allowances, List.of("top"), 4, List.of("left"));
    assertEquals(250, lines.get(0).length(), 1e-6);
  }

  @Test
  void aLineAlongAllEdgesIsClosed() {
    List<String> all = List.of("top", "right", "bottom", "left");
    List<Path> lines = Lines.beside(STRIP, ALLOWANCES, all, -3, List.of());
    assertEquals(1, lines.size());
    assertTrue(lines.get(0).isClosed());
    assertEquals(2 * (234 + 54), lines.get(0).length(), 1e-6);
    assertTrue(Lines.beside(STRIP, ALLOWANCES, all, -31, List.of()).isEmpty());
  }

  @Test
  void aTurnedEdgeHasNoAllowance() {
    Path outline = Lines.outline(STRIP, ALLOWANCES, List.of("bottom"));
    assertEquals(70, outline.bounds().height(), 1e-6);
    assertEquals(260, outline.bounds().width(), 1e-6);
  }

  @Test
  void cuttingOffLeavesTheOtherSide() {
    Path outline = Lines.outline(STRIP, ALLOWANCES, List.of());
    Lines.Cropped cropped = Lines.crop(outline, new Point(0, 30), new Point(0, 1));
    assertEquals(30, cropped.path().bounds().maxY(), 1e-9);
    assertEquals(260 * 40, Math.abs(cropped.path().signedArea()), 1e-6);
    assertEquals(260, cropped.from().distance(cropped.to()), 1e-9);
    assertEquals(outline, Lines.crop(outline, new Point(0, 300), new Point(0, 1)).path());
  }
}
