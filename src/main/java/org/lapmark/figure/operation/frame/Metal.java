package org.lapmark.figure.operation.frame;

import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.figure.section.SectionScene;
import org.lapmark.figure.section.SectionScene.Spot;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Metal or a tool cut through, as wide as it is.
 *
 * @param ring its closed outline
 * @param dark whether it is filled dark, as tools are
 * @param words its name; empty where it is named elsewhere
 */
public record Metal(List<Spot> ring, boolean dark, String words) implements SectionScene.Inlay {
  /** Copies the outline. */
  public Metal {
    ring = List.copyOf(ring);
  }

  /** A box. */
  public static List<Spot> box(double from, double upper, double to, double lower) {
    return List.of(at(from, upper), at(to, upper), at(to, lower), at(from, lower));
  }

  /** A dome on a level, so many levels high; one below 0 hangs. */
  public static List<Spot> dome(double middle, double half, double level, double high) {
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i <= 16; i++) {
      double angle = StrictMath.PI * i / 16;
      spots.add(
          at(
              middle - half * StrictMath.cos(angle),
              level - high * StrictMath.pow(StrictMath.sin(angle), 0.6)));
    }
    return spots;
  }

  @Override
  public void draw(Canvas canvas, double scale) {
    List<Point> points = new ArrayList<>();
    ring.forEach(spot -> points.add(spot.on(scale)));
    points.add(points.get(0));
    Path outline = Path.polyline(points);
    canvas.shape(outline, dark ? "figure-tool" : "figure-symbol");
    canvas.line(outline, "figure-outline");
    if (!words.isEmpty()) {
      canvas.wish(words, inside(points, outline.bounds()), null);
    }
  }

  /** Points within an outline, or a corner of it where it is too thin. */
  private static List<Point> inside(List<Point> outline, Box box) {
    List<Point> inside = new ArrayList<>();
    for (int i : new int[] {5, 2, 8, 1, 9}) {
      for (int j : new int[] {5, 2, 8, 9}) {
        Point point =
            new Point(box.minX() + box.width() * i / 10, box.minY() + box.height() * j / 10);
        if (Polygons.inside(outline, point)) {
          inside.add(point);
        }
      }
    }
    return inside.isEmpty() ? List.of(outline.get(0)) : inside;
  }
}
