package org.lapmark.figure.operation.plan;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Something seen from above.
 *
 * @param parts what is seen, each over those before it
 */
record PlanScene(List<Part> parts) implements Scene {
  /** Copies the list. */
  PlanScene {
    parts = List.copyOf(parts);
  }

  @Override
  public void draw(Canvas canvas, double scale) {
    for (int i = 0; i < parts.size(); i++) {
      List<List<Point>> above = new ArrayList<>();
      for (Part over : parts.subList(i + 1, parts.size())) {
        List<Point> cover = over.cover(scale);
        if (!cover.isEmpty()) {
          above.add(cover);
        }
      }
      Part part = parts.get(i);
      List<Part> below = parts.subList(0, i);
      part.drawn(scale)
          .filter(line -> isOnDark(line, below, scale))
          .ifPresent(line -> canvas.shape(line, "figure-line-halo"));
      part.draw(canvas, scale, above);
    }
    Box all = canvas.bounds();
    parts.forEach(part -> part.beside(canvas, scale, all));
  }

  /** Whether a line runs on dark cloth, for the most part. */
  private static boolean isOnDark(Path line, List<Part> below, double scale) {
    Point middle = line.atLength(line.length() / 2);
    for (int i = below.size() - 1; i >= 0; i--) {
      List<Point> cover = below.get(i).cover(scale);
      if (!cover.isEmpty() && Polygons.inside(cover, middle)) {
        return below.get(i).isDark();
      }
    }
    return false;
  }

  @Override
  public List<String> inWords(Words words) {
    return List.of();
  }
}
