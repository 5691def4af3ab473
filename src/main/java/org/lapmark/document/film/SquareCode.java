package org.lapmark.document.film;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A text as a QR code of vectors. Its squares are drawn as what they are together, one outline
 * around each dark region, so that no hairline shows between two of them.
 */
public final class SquareCode {
  /** The smallest width with the margin that a camera needs, in millimetres. */
  static final double SMALLEST = 18;

  /** The smallest square that any printer prints and any camera reads, in millimetres. */
  static final double SMALLEST_SQUARE = 0.45;

  /** Squares around the code that stay white. */
  static final int MARGIN = 4;

  private SquareCode() {}

  /**
   * Draws one.
   *
   * @param text an address, of few hundred characters
   */
  public static Drawing of(String text) {
    ByteMatrix squares;
    try {
      squares =
          Encoder.encode(
                  text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
              .getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("too long for a code: " + text.length(), e);
    }
    int count = squares.getWidth() + 2 * MARGIN;
    double square = Math.max(SMALLEST_SQUARE, SMALLEST / count);
    return new Drawing(
        count * square,
        count * square,
        List.of(new Item.Shape(outlines(squares, square), "film-code")));
  }

  /** A corner between squares. */
  private record Corner(int x, int y) {}

  private static List<Path> outlines(ByteMatrix squares, double square) {
    Map<Corner, Deque<Corner>> sides = new LinkedHashMap<>();
    for (int y = 0; y < squares.getHeight(); y++) {
      for (int x = 0; x < squares.getWidth(); x++) {
        if (isDark(squares, x, y)) {
          sides(squares, x, y, sides);
        }
      }
    }
    List<Path> outlines = new ArrayList<>();
    for (Corner start : sides.keySet()) {
      while (!sides.get(start).isEmpty()) {
        outlines.add(outline(start, sides, square));
      }
    }
    return outlines;
  }

  /** The sides of a dark square that part it from white, clockwise. */
  private static void sides(ByteMatrix squares, int x, int y, Map<Corner, Deque<Corner>> sides) {
    int[][] around = {
      {0, -1, 0, 0, 1, 0}, {1, 0, 1, 0, 1, 1}, {0, 1, 1, 1, 0, 1}, {-1, 0, 0, 1, 0, 0}
    };
    for (int[] side : around) {
      if (!isDark(squares, x + side[0], y + side[1])) {
        sides
            .computeIfAbsent(new Corner(x + side[2], y + side[3]), unused -> new ArrayDeque<>())
            .add(new Corner(x + side[4], y + side[5]));
      }
    }
  }

  private static boolean isDark(ByteMatrix squares, int x, int y) {
    return x >= 0
        && y >= 0
        && x < squares.getWidth()
        && y < squares.getHeight()
        && squares.get(x, y) == 1;
  }

  private static Path outline(Corner start, Map<Corner, Deque<Corner>> sides, double square) {
    List<Corner> corners = new ArrayList<>(List.of(start));
    Corner here = start;
    do {
      Corner next = sides.get(here).remove();
      int size = corners.size();
      // A side that goes on straight lengthens the one before.
      if (size > 1 && isStraight(corners.get(size - 2), here, next)) {
        corners.set(size - 1, next);
      } else {
        corners.add(next);
      }
      here = next;
    } while (!here.equals(start));
    return Path.polyline(
        corners.stream()
            .map(corner -> new Point((corner.x + MARGIN) * square, (corner.y + MARGIN) * square))
            .toList());
  }

  private static boolean isStraight(Corner first, Corner second, Corner third) {
    return first.x == second.x && second.x == third.x || first.y == second.y && second.y == third.y;
  }
}
