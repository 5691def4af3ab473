package org.lapmark.seam;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the points of one side of a seam come to lie on another: ease is spread evenly between the
 * marks that coincide. Rising throughout.
 */
public final class EaseSpread {
  /** Pins nearer to each other than this, in millimetres, would make the spread steep or fall. */
  private static final double LEAST = 1e-6;

  private final List<double[]> pins = new ArrayList<>();

  /**
   * A spread over two sides.
   *
   * @param from the length of the one side in millimetres
   * @param to the length of the other
   * @param pairs marks that coincide, in order, of the one side and the other
   */
  public EaseSpread(double from, double to, List<NotchMatching.Pair> pairs) {
    pins.add(new double[] {0, 0});
    for (NotchMatching.Pair pair : pairs) {
      double[] last = pins.get(pins.size() - 1);
      double one = pair.first().at();
      double other = pair.second().at();
      if (one > last[0] + LEAST
          && other > last[1] + LEAST
          && one < from - LEAST
          && other < to - LEAST) {
        pins.add(new double[] {one, other});
      }
    }
    pins.add(new double[] {from, to});
  }

  /**
   * The place on the other side of a place on the one.
   *
   * @param place millimetres from the seam's start; beyond the ends the nearest stretch goes on
   * @return millimetres from the seam's start
   */
  public double of(double place) {
    int i = 1;
    while (i < pins.size() - 1 && place > pins.get(i)[0]) {
      i++;
    }
    double[] before = pins.get(i - 1);
    double[] after = pins.get(i);
    double run = after[0] - before[0];
    double share = run > LEAST ? (place - before[0]) / run : 0;
    return before[1] + share * (after[1] - before[1]);
  }
}
