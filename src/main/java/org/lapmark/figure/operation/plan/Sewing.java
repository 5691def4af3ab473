package org.lapmark.figure.operation.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.stitching.StitchKind;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Stitches along a line.
 *
 * @param kind how they are sewn
 * @param line where, in millimetres of cloth
 * @param now whether this step sews them
 * @param begun whether they are backstitched where they begin
 * @param ended whether they are backstitched where they end
 * @param words a label, or nothing
 */
record Sewing(StitchKind kind, Path line, boolean now, boolean begun, boolean ended, String words)
    implements Part {
  private Path on(double scale) {
    return line.transformed(Affine.scaling(scale, scale));
  }

  @Override
  public Optional<Path> drawn(double scale) {
    return Optional.of(on(scale));
  }

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    Path on = on(scale);
    canvas.lines(kind.strokes(on), kind.role(now));
    List<Path> back = new ArrayList<>();
    if (begun) {
      back.add(StitchKind.backstitch(on, false));
    }
    if (ended) {
      back.add(StitchKind.backstitch(on, true));
    }
    canvas.lines(back, now ? "figure-stitch-end-now" : "figure-stitch-end");
    if (!words.isEmpty()) {
      List<Point> anchors = new ArrayList<>();
      for (int i : new int[] {6, 3, 9, 2, 10, 5, 7, 1, 11}) {
        anchors.add(on.atLength(on.length() * i / 12));
      }
      canvas.wish(words, anchors, null);
    }
  }
}
