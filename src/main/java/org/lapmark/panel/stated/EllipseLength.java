package org.lapmark.panel.stated;

/**
 * How long the way round an ellipse is, by Gauss's arithmetic-geometric mean: with a and b the
 * semi-axes and M their mean, {@code 2 pi / M (a^2 - sum of 2^(n-1) c_n^2)}, where {@code c_0^2 =
 * a^2 - b^2} and {@code c_(n+1) = (a_n - b_n) / 2}. It converges quadratically, to rounding.
 */
final class EllipseLength {
  private static final int ROUNDS = 40;

  private EllipseLength() {}

  /** The perimeter for two semi-axes above 0, in their unit. */
  static double of(double first, double second) {
    double a = Math.max(first, second);
    double b = Math.min(first, second);
    double sum = a * a - (a * a - b * b) / 2;
    double power = 1;
    for (int n = 0; n < ROUNDS && a - b > 1e-16 * a; n++) {
      double c = (a - b) / 2;
      double mean = (a + b) / 2;
      b = Math.sqrt(a * b);
      a = mean;
      sum -= power * c * c;
      power *= 2;
    }
    return 2 * Math.PI / a * sum;
  }
}
