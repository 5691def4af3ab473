package org.lapmark.figure.operation.plan;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A zip that lies along, its face up.
 *
 * @param tape its tape in millimetres of cloth
 * @param from where its teeth begin
 * @param to where they end
 * @param name what it is called; empty where it is named elsewhere
 */
record ZipFace(Box tape, double from, double to, String name) implements Part {
  /** The share of a tape that its teeth take up. */
  private static final double TEETH = 0.18;

  private Path shape(double scale) {
    return Path.rectangle(tape).transformed(Affine.scaling(scale, scale));
  }

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    Path shape = shape(scale);
    canvas.shape(shape, "figure-tape");
    canvas.line(shape, "figure-outline");
    double middle = tape.centre().y() * scale;
    Path teeth =
        Path.polyline(List.of(new Point(from * scale, middle), new Point(to * scale, middle)));
    canvas.line(teeth, "figure-coil");
    double half = tape.height() * TEETH / 2 * scale;
    for (double end : new double[] {from, to}) {
      if (end > tape.minX() + 1e-6 && end < tape.maxX() - 1e-6) {
        canvas.line(
            Path.polyline(
                List.of(
                    new Point(end * scale, middle - half), new Point(end * scale, middle + half))),
            "figure-stop");
      }
    }
    if (!name.isEmpty()) {
      double quarter = (tape.minY() * 3 + tape.maxY()) / 4 * scale;
      double left = tape.minX() * scale;
      double wide = tape.width() * scale;
      canvas.wish(
          name,
          List.of(
              new Point(left + wide * 0.3, quarter),
              new Point(left + wide * 0.5, quarter),
              new Point(left + wide * 0.7, quarter),
              new Point(left + wide * 0.2, quarter)),
          null);
    }
  }

  @Override
  public List<Point> cover(double scale) {
    return shape(scale).flattened(0.05);
  }
}
