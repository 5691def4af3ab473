package org.lapmark.measure;

/** Sine and cosine of degrees, exact at right angles. */
final class Degrees {
  private Degrees() {}

  static double sin(double degrees) {
    double turn = Math.IEEEremainder(degrees, 360);
    if (turn == 0 || Math.abs(turn) == 180) {
      return 0;
    }
    if (Math.abs(turn) == 90) {
      return Math.signum(turn);
    }
    return StrictMath.sin(StrictMath.toRadians(turn));
  }

  static double cos(double degrees) {
    double turn = Math.abs(Math.IEEEremainder(degrees, 360));
    if (turn == 90) {
      return 0;
    }
    if (turn == 180) {
      return -1;
    }
    return StrictMath.cos(StrictMath.toRadians(turn));
  }
}
