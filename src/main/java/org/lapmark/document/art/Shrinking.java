package org.lapmark.document.art;

import java.util.Arrays;

/**
 * Makes a picture smaller: each pixel is the mean of what it covers. Rows are taken one by one, so
 * that the picture is never held twice.
 */
final class Shrinking {
  private final int fromWidth;
  private final int fromHeight;
  private final int width;
  private final int height;
  private final byte[] colours;
  private final double[] sum;
  private final double[] row;
  private int taken;
  private int made;

  Shrinking(int fromWidth, int fromHeight, int width, int height) {
    this.fromWidth = fromWidth;
    this.fromHeight = fromHeight;
    this.width = width;
    this.height = height;
    this.colours = new byte[3 * width * height];
    this.sum = new double[3 * width];
    this.row = new double[3 * width];
  }

  /** Takes the next row, three colours a pixel. */
  void take(int[] rgb) {
    across(rgb);
    double step = (double) height / fromHeight;
    double from = taken * step;
    taken++;
    double to = taken == fromHeight ? height : taken * step;
    while (made < height && from < to) {
      double until = Math.min(to, made + 1);
      for (int i = 0; i < sum.length; i++) {
        sum[i] += row[i] * (until - from);
      }
      from = until;
      if (until >= made + 1) {
        finish();
      }
    }
  }

  private void finish() {
    for (int i = 0; i < sum.length; i++) {
      colours[3 * width * made + i] = (byte) Math.max(0, Math.min(255, Math.round(sum[i])));
    }
    Arrays.fill(sum, 0);
    made++;
  }

  /** The means of the row's own pixels. */
  private void across(int[] rgb) {
    double step = (double) fromWidth / width;
    for (int x = 0; x < width; x++) {
      double from = x * step;
      double to = x + 1 == width ? fromWidth : (x + 1) * step;
      double red = 0;
      double green = 0;
      double blue = 0;
      for (int i = (int) from; i < fromWidth && i < to; i++) {
        double share = Math.min(to, i + 1) - Math.max(from, i);
        red += rgb[3 * i] * share;
        green += rgb[3 * i + 1] * share;
        blue += rgb[3 * i + 2] * share;
      }
      row[3 * x] = red / (to - from);
      row[3 * x + 1] = green / (to - from);
      row[3 * x + 2] = blue / (to - from);
    }
  }

  Pixels pixels() {
    return new Pixels(width, height, colours);
  }
}
