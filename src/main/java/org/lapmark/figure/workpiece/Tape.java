package org.lapmark.figure.workpiece;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A zip: x runs along its tape from the middle, y across from one edge of the tape.
 *
 * @param length from stop to stop
 * @param tape the tape's width
 * @param visible how much of it stays visible
 * @param side the side that faces the reader
 */
public record Tape(double length, double tape, double visible, Side side) implements Body {
  /**
   * How far the tape reaches beyond a stop, in millimetres, as zips are sold: far enough that a
   * seam beside the stop catches it.
   */
  private static final double END = 20;

  @Override
  public Path outline() {
    double half = length / 2 + END;
    return Path.rectangle(new Box(-half, 0, half, tape));
  }

  @Override
  public Path whole() {
    return outline();
  }

  @Override
  public List<Cut> cuts() {
    return List.of();
  }

  @Override
  public List<Flap> flaps() {
    return List.of();
  }

  @Override
  public boolean liesUnder() {
    return true;
  }

  @Override
  public double covered() {
    return (tape - visible) / 2;
  }

  @Override
  public void draw(PlacedBody laid, FlatInk ink) {
    Canvas canvas = ink.canvas();
    canvas.shape(laid.outline(), "figure-tape");
    canvas.line(laid.outline(), "figure-outline");
    double half = length / 2;
    double middle = tape / 2;
    boolean face = side == Side.RIGHT;
    Path coil = Path.polyline(List.of(new Point(-half, middle), new Point(half, middle)));
    canvas.line(coil.transformed(laid.map()), face ? "figure-coil" : "figure-coil-back");
    double stop = 2.5 / Math.max(ink.scale(), 0.35) * 0.6;
    for (double end : new double[] {-half, half}) {
      Path across =
          Path.polyline(List.of(new Point(end, middle - stop), new Point(end, middle + stop)));
      canvas.line(across.transformed(laid.map()), "figure-stop");
    }
    if (face) {
      double at = half - 9;
      Box slider = new Box(at - 4, middle - 3.5, at + 4, middle + 3.5);
      Box pull = new Box(at - 17, middle - 1.8, at - 3, middle + 1.8);
      for (Box box : List.of(slider, pull)) {
        canvas.shape(Path.rectangle(box).transformed(laid.map()), "figure-slider");
      }
    }
  }
}
