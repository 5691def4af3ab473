package org.lapmark.document.art;

/** Upright pixels in three colours, each from 0 to 255, row by row. */
record Pixels(int width, int height, byte[] colours) {
  /** The same, turned and mirrored as Exif numbers it from 1 to 8. */
  Pixels turned(int turn) {
    if (turn == 1) {
      return this;
    }
    boolean across = turn > 4;
    int w = across ? height : width;
    int h = across ? width : height;
    byte[] turned = new byte[colours.length];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int from = 3 * source(turn, x, y);
        System.arraycopy(colours, from, turned, 3 * (y * w + x), 3);
      }
    }
    return new Pixels(w, h, turned);
  }

  /** Which stored pixel is seen at a place of the turned picture. */
  private int source(int turn, int x, int y) {
    int right = width - 1;
    int bottom = height - 1;
    return switch (turn) {
      case 2 -> y * width + right - x;
      case 3 -> (bottom - y) * width + right - x;
      case 4 -> (bottom - y) * width + x;
      case 5 -> x * width + y;
      case 6 -> (bottom - x) * width + y;
      case 7 -> (bottom - x) * width + right - y;
      default -> x * width + right - y;
    };
  }
}
