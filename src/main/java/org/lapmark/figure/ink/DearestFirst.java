package org.lapmark.figure.ink;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * In which order places for a figure’s labels are looked for when it is tried again, at another
 * scale or in another frame: what was dear is likely to be dear again, and shows soonest that all
 * of them cost too much. Where each label finds its place doesn’t depend on the order.
 */
public final class DearestFirst {
  private double[] costs = {};

  /** All labels of so many, those first that were dearest. */
  List<Integer> order(int labels) {
    if (costs.length != labels) {
      costs = new double[labels];
    }
    double[] before = costs.clone();
    return IntStream.range(0, labels)
        .boxed()
        .sorted(Comparator.comparingDouble(label -> -before[label]))
        .toList();
  }

  /** What the cheapest place of a label costs; infinitely much where it has none. */
  void cost(int label, double cost) {
    costs[label] = cost;
  }
}
