package org.lapmark.grade.scope;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Looks for the values between two bounds at which a function of one number is zero: the interval
 * is sampled at equal distances; where the sign changes, the zero is enclosed by secants, and by
 * halving where they are slow; where the function turns towards zero without a change of sign, its
 * least distance is enclosed by golden sections. The order and number of evaluations depend on the
 * function's values alone. Zeros closer to each other than two samples may be missed.
 *
 * @param found whether there is one within the tolerance
 * @param at the least of them; without any the value at which the function is nearest to zero
 * @param remaining the function there
 * @param several whether there are more of them
 * @param anywhere whether the function has a value anywhere
 */
record RootSearch(boolean found, double at, double remaining, boolean several, boolean anywhere) {
  /** How many equal parts the interval is sampled in. */
  static final int PARTS = 64;

  private static final int MOST_EVALUATIONS = 2_000;
  private static final int MOST_HALVINGS = 200;
  private static final int SECTIONS = 80;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

  /**
   * Looks for a zero.
   *
   * @param function the function; NaN where it has no value
   * @param from the lower bound
   * @param to the upper bound, above the lower
   * @param tolerance how far from zero still counts, where the function doesn't pass through it
   * @return the least zero, or what comes nearest
   */
  public static RootSearch of(
      DoubleUnaryOperator function, double from, double to, double tolerance) {
    return new Search(function, from, to, tolerance).root();
  }

  private static final class Search {
    private final DoubleUnaryOperator function;
    private final double from;
    private final double to;
    private final double tolerance;
    private final double[] x = new double[PARTS + 1];
    private final double[] y = new double[PARTS + 1];
    private final List<Double> zeros = new ArrayList<>();
    private int evaluations;
    private double nearest = Double.NaN;
    private double least = Double.NaN;

    Search(DoubleUnaryOperator function, double from, double to, double tolerance) {
      this.function = function;
      this.from = from;
      this.to = to;
      this.tolerance = tolerance;
    }

    RootSearch root() {
      for (int i = 0; i <= PARTS; i++) {
        x[i] = i == PARTS ? to : from + (to - from) * i / PARTS;
        y[i] = value(x[i]);
      }
      for (int i = 0; i <= PARTS; i++) {
        if (y[i] == 0) {
          zeros.add(x[i]);
        } else if (i < PARTS && y[i] * y[i + 1] < 0) {
          pass(x[i], y[i], x[i + 1], y[i + 1]);
        }
        if (turns(i)) {
          turn(i);
        }
      }
      if (zeros.isEmpty()) {
        return new RootSearch(false, nearest, least, false, !Double.isNaN(least));
      }
      zeros.sort(Double::compare);
      double lowest = zeros.get(0);
      double highest = zeros.get(zeros.size() - 1);
      boolean several = highest - lowest > 1e-9 * (to - from);
      return new RootSearch(true, lowest, value(lowest), several, true);
    }

    private double value(double at) {
      if (evaluations++ > MOST_EVALUATIONS) {
        return Double.NaN;
      }
      double value = function.applyAsDouble(at);
      if (!Double.isFinite(value)) {
        return Double.NaN;
      }
      if (Double.isNaN(least) || Math.abs(value) < Math.abs(least)) {
        nearest = at;
        least = value;
      }
      return value;
    }

    /** Encloses the zero between two values of different sign; a jump over zero is none. */
    private void pass(double first, double atFirst, double second, double atSecond) {
      double a = first;
      double fa = atFirst;
      double b = second;
      double fb = atSecond;
      // The weights keep a secant from holding on to one end.
      double wa = fa;
      double wb = fb;
      for (int i = 0; i < MOST_HALVINGS; i++) {
        double middle = a + (b - a) / 2;
        if (middle == a || middle == b) {
          break;
        }
        double secant = b - wb * ((b - a) / (wb - wa));
        boolean halve = i % 3 == 2 || !(secant > Math.min(a, b) && secant < Math.max(a, b));
        double c = halve ? middle : secant;
        double fc = value(c);
        if (Double.isNaN(fc)) {
          return;
        }
        if (fc == 0) {
          zeros.add(c);
          return;
        }
        if (fc < 0 == fa < 0) {
          a = c;
          fa = fc;
          wa = fc;
          wb = wb / 2;
        } else {
          b = c;
          fb = fc;
          wb = fc;
          wa = wa / 2;
        }
      }
      boolean first2 = Math.abs(fa) <= Math.abs(fb);
      if (Math.abs(first2 ? fa : fb) <= tolerance) {
        zeros.add(first2 ? a : b);
      }
    }

    /** Whether the function comes nearer to zero at a sample than at its neighbours. */
    private boolean turns(int i) {
      if (Double.isNaN(y[i]) || y[i] == 0) {
        return false;
      }
      return beyond(i, i - 1) && beyond(i, i + 1);
    }

    private boolean beyond(int i, int neighbour) {
      if (neighbour < 0 || neighbour > PARTS || Double.isNaN(y[neighbour])) {
        return true;
      }
      return y[neighbour] * y[i] > 0 && Math.abs(y[neighbour]) >= Math.abs(y[i]);
    }

    private void turn(int i) {
      double sign = Math.signum(y[i]);
      double low = x[Math.max(0, i - 1)];
      double high = x[Math.min(PARTS, i + 1)];
      double best = x[i];
      double atBest = y[i];
      double c = high - GOLDEN * (high - low);
      double d = low + GOLDEN * (high - low);
      double fc = value(c);
      double fd = value(d);
      for (int n = 0; n < SECTIONS && high - low > 0; n++) {
        double inner = better(fc, fd, sign) ? c : d;
        double atInner = inner == c ? fc : fd;
        if (better(atInner, atBest, sign)) {
          best = inner;
          atBest = atInner;
        }
        if (atBest * sign <= 0) {
          break;
        }
        if (better(fc, fd, sign)) {
          high = d;
          d = c;
          fd = fc;
          c = high - GOLDEN * (high - low);
          fc = value(c);
        } else {
          low = c;
          c = d;
          fc = fd;
          d = low + GOLDEN * (high - low);
          fd = value(d);
        }
      }
      if (atBest * sign < 0) {
        around(i, best, atBest);
      } else if (Math.abs(atBest) <= tolerance) {
        zeros.add(best);
      }
    }

    /** The function passes through zero twice between two samples. */
    private void around(int i, double inside, double atInside) {
      for (int neighbour : new int[] {inside < x[i] ? i - 1 : i, inside < x[i] ? i : i + 1}) {
        if (neighbour >= 0 && neighbour <= PARTS && y[neighbour] * atInside < 0) {
          pass(
              Math.min(x[neighbour], inside),
              x[neighbour] < inside ? y[neighbour] : atInside,
              Math.max(x[neighbour], inside),
              x[neighbour] < inside ? atInside : y[neighbour]);
        }
      }
    }

    private static boolean better(double one, double other, double sign) {
      return !Double.isNaN(one) && (Double.isNaN(other) || one * sign < other * sign);
    }
  }
}
