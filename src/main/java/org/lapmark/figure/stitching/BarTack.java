package org.lapmark.figure.stitching;

import java.util.List;
import org.lapmark.geometry.Path;

/** A bar of close stitches. */
public final class BarTack {
  private static final double REACH = 0.75;
  private static final double STEP = 0.45;

  private BarTack() {}

  /**
   * Its strokes.
   *
   * @param line from end to end, on paper
   */
  public static List<Path> strokes(Path line) {
    return Strokes.zigzag(line, REACH, STEP);
  }
}
