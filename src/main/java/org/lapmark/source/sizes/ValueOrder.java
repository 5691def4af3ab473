package org.lapmark.source.sizes;

import java.util.ArrayList;
import java.util.List;

/** Whether values go one way from size to size, and which of them doesn't. */
final class ValueOrder {
  /** A step up to this is none. */
  static final double NOTHING = 1e-9;

  private ValueOrder() {}

  /** The first place where a row that rose falls, or the other way round; -1 if there is none. */
  static int turn(List<Double> amounts) {
    return turn(amounts, NOTHING);
  }

  /** The same where steps up to a size are none. */
  static int turn(List<Double> amounts, double nothing) {
    double direction = 0;
    for (int i = 1; i < amounts.size(); i++) {
      double step = amounts.get(i) - amounts.get(i - 1);
      if (Math.abs(step) > nothing) {
        if (direction * step < 0) {
          return i - 1;
        }
        direction = step;
      }
    }
    return -1;
  }

  /** The values in another order of their places. */
  static List<Double> permuted(List<Double> amounts, List<Integer> order) {
    return order.stream().map(amounts::get).toList();
  }

  /** The value without which a row goes one way; one between two others if there is one. */
  static int odd(List<Double> amounts) {
    for (int at = 1; at < amounts.size() - 1; at++) {
      if (isOrderedWithout(amounts, at) && isBeyond(amounts, at)) {
        return at;
      }
    }
    int last = amounts.size() - 1;
    return isOrderedWithout(amounts, 0)
        ? 0
        : isOrderedWithout(amounts, last) ? last : turn(amounts);
  }

  private static boolean isOrderedWithout(List<Double> amounts, int at) {
    List<Double> rest = new ArrayList<>(amounts);
    rest.remove(at);
    return turn(rest) < 0;
  }

  /** Whether a value isn't between its neighbours. */
  private static boolean isBeyond(List<Double> amounts, int at) {
    return (amounts.get(at) - amounts.get(at - 1)) * (amounts.get(at + 1) - amounts.get(at)) < 0;
  }

  /**
   * The name without which the others go one way: upwards, unless more of them go down. Of three
   * any two go some way, so that the direction has to be known first.
   */
  static int oddName(List<Double> ranks) {
    boolean rises = longest(ranks, 1) >= longest(ranks, -1);
    int last = ranks.size() - 1;
    List<Integer> candidates = new ArrayList<>();
    for (int at = 0; at <= last; at++) {
      List<Double> rest = new ArrayList<>(ranks);
      rest.remove(at);
      if (goes(rest, rises ? 1 : -1)) {
        candidates.add(at);
      }
    }
    return candidates.stream()
        .filter(at -> at > 0 && at < last)
        .findFirst()
        .orElseGet(() -> candidates.isEmpty() ? odd(ranks) : candidates.get(0));
  }

  private static boolean goes(List<Double> amounts, int direction) {
    for (int i = 1; i < amounts.size(); i++) {
      if (direction * (amounts.get(i) - amounts.get(i - 1)) < 0) {
        return false;
      }
    }
    return true;
  }

  /** How many values can be kept so that all of them go in a direction. */
  private static int longest(List<Double> amounts, int direction) {
    int[] kept = new int[amounts.size()];
    int most = 0;
    for (int i = 0; i < kept.length; i++) {
      kept[i] = 1;
      for (int j = 0; j < i; j++) {
        if (direction * (amounts.get(i) - amounts.get(j)) > 0) {
          kept[i] = Math.max(kept[i], kept[j] + 1);
        }
      }
      most = Math.max(most, kept[i]);
    }
    return most;
  }
}
