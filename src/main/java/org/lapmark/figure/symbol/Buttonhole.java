package org.lapmark.figure.symbol;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * A buttonhole: its cut along y, worked over on both sides and barred at both ends.
 *
 * @param length how long the cut is
 */
public record Buttonhole(double length) implements Symbol {
  /** How wide the stitches are on one side, and how long a bar is, in millimetres. */
  private static final double LEG = 1.8;

  /** How far stitches are apart on paper. */
  private static final double PITCH = 0.5;

  @Override
  public Box size() {
    return Outline.about(2 * LEG, -length / 2 - LEG, length / 2 + LEG);
  }

  @Override
  public double told() {
    return length;
  }

  @Override
  public void draw(Pen pen) {
    double half = length / 2;
    pen.body(Path.rectangle(size()));
    List<Path> stitches = new ArrayList<>();
    int count = (int) Math.max(2, Math.floor(length / pen.onPaper(PITCH)));
    for (int i = 1; i < count; i++) {
      double y = -half + length * i / count;
      stitches.add(Outline.line(-LEG, y, -LEG * 0.25, y));
      stitches.add(Outline.line(LEG * 0.25, y, LEG, y));
    }
    pen.details(stitches);
    pen.detail(Outline.line(-LEG, -half, LEG, -half));
    pen.detail(Outline.line(-LEG, half, LEG, half));
    pen.solid(Path.rectangle(Outline.about(LEG * 0.3, -half, half)));
  }
}
