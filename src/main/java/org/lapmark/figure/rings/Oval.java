package org.lapmark.figure.rings;

/**
 * A level oval: half its axes and how high it lies, in millimetres of cloth.
 *
 * @param across from the middle to a side
 * @param ahead from the middle to the front
 * @param level how high it lies
 */
record Oval(double across, double ahead, double level) {
  /** The oval at a share of the way from this one to another. */
  Oval towards(Oval other, double share) {
    return new Oval(
        across + (other.across - across) * share,
        ahead + (other.ahead - ahead) * share,
        level + (other.level - level) * share);
  }

  /** How long the cloth between two ovals is at the front. */
  double slope(Oval other) {
    double out = other.ahead - ahead;
    double down = other.level - level;
    return Math.sqrt(out * out + down * down);
  }
}
