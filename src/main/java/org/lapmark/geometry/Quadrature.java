package org.lapmark.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrals of a speed over a parameter, by the Gauss-Legendre rule of twelve nodes, halved until
 * two halves agree with their whole. A speed has kinks only where a curve has cusps; there the
 * halving goes on into the kink.
 */
final class Quadrature {
  private static final double TOLERANCE = 1e-10;
  private static final int DEEPEST = 40;
  private static final int NODES = 12;

  private final double[] nodes = new double[NODES];
  private final double[] weights = new double[NODES];

  private Quadrature() {
    // The roots of the Legendre polynomial by Newton's rule from the usual cosine guess.
    for (int i = 0; i < NODES; i++) {
      double x = StrictMath.cos(Math.PI * (i + 0.75) / (NODES + 0.5));
      double slope = 1;
      for (int round = 0; round < 60; round++) {
        double before = 1;
        double value = x;
        for (int n = 2; n <= NODES; n++) {
          double next = ((2 * n - 1) * x * value - (n - 1) * before) / n;
          before = value;
          value = next;
        }
        slope = NODES * (x * value - before) / (x * x - 1);
        double step = value / slope;
        x -= step;
        if (Math.abs(step) < 1e-16) {
          break;
        }
      }
      nodes[i] = x;
      weights[i] = 2 / ((1 - x * x) * slope * slope);
    }
  }

  private static final Quadrature RULE = new Quadrature();

  /** The integral from one parameter to another, within about 1e-9 for lengths in millimetres. */
  static double integral(DoubleUnaryOperator speed, double from, double to) {
    if (to <= from) {
      return 0;
    }
    return RULE.refined(speed, from, to, RULE.once(speed, from, to), TOLERANCE, 0);
  }

  /** The parameter in 0 to 1 at which the integral from 0 reaches a length; clamped. */
  static double inverse(DoubleUnaryOperator speed, double length, double total) {
    if (length <= 0 || total <= 0) {
      return 0;
    }
    if (length >= total) {
      return 1;
    }
    double low = 0;
    double lengthAtLow = 0;
    double high = 1;
    double t = length / total;
    for (int round = 0; round < 100; round++) {
      double reached = lengthAtLow + integral(speed, low, t);
      double miss = reached - length;
      if (Math.abs(miss) <= 1e-11 * Math.max(1, total)) {
        return t;
      }
      double rate = speed.applyAsDouble(t);
      if (miss > 0) {
        high = t;
      } else {
        low = t;
        lengthAtLow = reached;
      }
      double next = rate > 0 ? t - miss / rate : Double.NaN;
      t = next > low && next < high ? next : (low + high) / 2;
      if (high - low < 1e-16) {
        return t;
      }
    }
    return t;
  }

  private double once(DoubleUnaryOperator speed, double from, double to) {
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    double sum = 0;
    for (int i = 0; i < NODES; i++) {
      sum += weights[i] * speed.applyAsDouble(middle + half * nodes[i]);
    }
    return sum * half;
  }

  private double refined(
      DoubleUnaryOperator speed,
      double from,
      double to,
      double whole,
      double tolerance,
      int depth) {
    double middle = (from + to) / 2;
    double left = once(speed, from, middle);
    double right = once(speed, middle, to);
    double allowed = Math.max(tolerance, 1e-14 * Math.abs(whole));
    if (Math.abs(left + right - whole) <= allowed || depth >= DEEPEST) {
      return left + right;
    }
    return refined(speed, from, middle, left, tolerance / 2, depth + 1)
        + refined(speed, middle, to, right, tolerance / 2, depth + 1);
  }
}
