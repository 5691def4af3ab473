package org.lapmark.lay;

/**
 * A strip cut at 45 degrees, in as many equal lengths as a width of cloth makes necessary.
 *
 * <p>A strip of length l and width w needs (l + w) / √2 across the cloth. Two lengths are laid at
 * right angles to each other on a square of side w and joined along its diagonal, on the straight
 * grain; each join costs w of length.
 *
 * @param parts how many lengths; 0 when no number of them fits
 * @param length the length of each, in millimetres
 */
record BiasStrip(int parts, double length) {
  /** No strip is joined from more lengths. */
  static final int MOST_PARTS = 50;

  private static final double FITS = 1e-6;

  /** Whether lengths of a strip can be joined at all, however many it takes. */
  static boolean canBeJoined(double usable, double width) {
    return usable * Math.sqrt(2) > 2 * width;
  }

  static BiasStrip on(double usable, double length, double width) {
    double longest = usable * Math.sqrt(2) - width;
    if (length <= longest + FITS) {
      return new BiasStrip(1, length);
    }
    double gained = longest - width;
    double parts = gained <= 0 ? Double.POSITIVE_INFINITY : (length - width) / gained;
    if (parts > MOST_PARTS) {
      return new BiasStrip(0, length);
    }
    int count = (int) Math.ceil(parts - FITS);
    return new BiasStrip(count, (length + (count - 1) * width) / count);
  }
}
