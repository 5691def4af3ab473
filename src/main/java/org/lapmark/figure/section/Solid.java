package org.lapmark.figure.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Something cut through that is no layer, such as a cord, a zip's teeth or a rivet.
 *
 * @param at where
 * @param ring its closed outline in millimetres on paper, from that place on
 * @param texture how it is filled; nothing for metal, which is white
 * @param words its name
 */
public record Solid(
    SectionScene.Spot at, List<Point> ring, Optional<Texture> texture, Optional<String> words)
    implements SectionScene.Inlay {
  /** Copies the outline. */
  public Solid {
    ring = List.copyOf(ring);
  }

  /** The points of a circle. */
  public static List<Point> round(double radius) {
    List<Point> points = new ArrayList<>(Path.circle(new Point(0, 0), radius).flattened(0.02));
    points.set(points.size() - 1, points.get(0));
    return points;
  }

  /** The points of a rectangle from a corner to the opposite one. */
  public static List<Point> box(double minX, double minY, double maxX, double maxY) {
    return List.of(
        new Point(minX, minY),
        new Point(maxX, minY),
        new Point(maxX, maxY),
        new Point(minX, maxY),
        new Point(minX, minY));
  }

  @Override
  public void draw(Canvas canvas, double scale) {
    Point place = at.on(scale);
    Path outline = Path.polyline(ring.stream().map(place::plus).toList());
    if (texture.isPresent()) {
      canvas.cloth(outline, texture.get(), Side.RIGHT, 0);
    } else {
      canvas.shape(outline, "figure-tape");
    }
    canvas.line(outline, "figure-outline");
    words.ifPresent(text -> canvas.wish(text, List.of(outline.bounds().centre()), null));
  }
}
