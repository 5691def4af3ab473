package org.lapmark.panel.derivation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;

class InnerLineTest {
  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** A trapezium, wider at its foot; corners clockwise from the top left. */
  private static Panel panel() {
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("a", p(40, 0));
    corners.put("b", p(160, 0));
    corners.put("c", p(200, 100));
    corners.put("d", p(0, 100));
    Path outline = Path.polyline(List.of(p(40, 0), p(160, 0), p(200, 100), p(0, 100), p(40, 0)));
    return PanelBuilder.fromOutline(
        "hem", outline, corners, Map.of(), Map.of("sides", List.of("b-c", "c-d")), List.of());
  }

  private static Path line(String edge, double from, double to, double inset) {
    Panel panel = panel();
    Path path = panel.line(edge);
    return InnerLine.of(panel, path, from, to < 0 ? path.length() : to, inset);
  }

  private static void ends(Path line, Point from, Point to) {
    assertEquals(0, line.start().distance(from), 1e-6, line.toString());
    assertEquals(0, line.end().distance(to), 1e-6, line.toString());
  }

  @Test
  void itEndsOnTheSides() {
    // Beside the longer edge it is cut off, beside the shorter one it goes on.
    ends(line("c-d", 0, -1, 50), p(180, 50), p(20, 50));
    ends(line("a-b", 0, -1, 50), p(20, 50), p(180, 50));
    ends(line("a-b", 0, -1, 0), p(40, 0), p(160, 0));
  }

  @Test
  void aPartOfItStaysAPart() {
    ends(line("a-b", 30, 90, 20), p(70, 20), p(130, 20));
  }

  @Test
  void itTurnsCornersWithoutALoop() {
    Path line = line("sides", 0, -1, 10);
    assertTrue(line.selfCrossing().isEmpty());
    assertTrue(panel().outline().encloses(line.atLength(line.length() / 2)));
    for (Point point : line.flattened(0.01)) {
      double distance = Math.min(panel().line("b-c").distance(point), 1000);
      assertTrue(
          Math.min(distance, panel().line("c-d").distance(point)) > 9.99
              || point.y() < 20
              || point.x() < 20,
          point.toString());
    }
  }

  @Test
  void nothingIsLeftBeyondTheOtherSide() {
    assertNull(line("a-b", 0, -1, 101));
  }
}
