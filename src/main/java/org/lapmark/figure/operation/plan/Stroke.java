package org.lapmark.figure.operation.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A line or a filled shape.
 *
 * @param path where it runs, in millimetres of cloth
 * @param role how it is drawn
 * @param words a label, or nothing
 */
record Stroke(Path path, String role, String words) implements Part {
  private Path on(double scale) {
    return path.transformed(Affine.scaling(scale, scale));
  }

  @Override
  public Optional<Path> drawn(double scale) {
    return Optional.of(on(scale));
  }

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    Path on = on(scale);
    canvas.line(on, role);
    if (!words.isEmpty()) {
      List<Point> anchors = new ArrayList<>();
      for (int i : new int[] {3, 2, 4, 1, 5}) {
        anchors.add(on.atLength(on.length() * i / 6));
      }
      canvas.wish(words, anchors, null);
    }
  }
}
