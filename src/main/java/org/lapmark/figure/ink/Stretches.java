package org.lapmark.figure.ink;

import java.util.List;
import org.lapmark.geometry.Point;

/** Drawn stretches as numbers: which of them a leader crosses is asked often. */
final class Stretches {
  /** What a leader points at isn't crossed by it, in millimetres. */
  private static final double POINTED_AT = 0.3;

  /** The width of an upright column, in millimetres: most leaders lie in a few. */
  private static final double COLUMN = 6;

  private final double[] ends;
  private final double origin;
  private final int columns;

  /** By stretch the first column that it lies in. */
  private final int[] first;

  /** By column where its stretches begin among all; one more than there are columns. */
  private final int[] starts;

  private final int[] inColumns;

  Stretches(List<Canvas.Stretch> all) {
    this.ends = new double[4 * all.size()];
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < all.size(); i++) {
      Point from = all.get(i).from();
      Point to = all.get(i).to();
      ends[4 * i] = from.x();
      ends[4 * i + 1] = from.y();
      ends[4 * i + 2] = to.x();
      ends[4 * i + 3] = to.y();
      least = Math.min(least, Math.min(from.x(), to.x()));
      most = Math.max(most, Math.max(from.x(), to.x()));
    }
    this.origin = least;
    this.columns = all.isEmpty() ? 1 : 1 + (int) ((most - least) / COLUMN);
    this.first = new int[all.size()];
    this.starts = new int[columns + 1];
    for (int i = 0; i < first.length; i++) {
      first[i] = column(Math.min(ends[4 * i], ends[4 * i + 2]));
      for (int column = first[i]; column <= last(i); column++) {
        starts[column + 1]++;
      }
    }
    for (int column = 0; column < columns; column++) {
      starts[column + 1] += starts[column];
    }
    this.inColumns = new int[starts[columns]];
    int[] next = starts.clone();
    for (int i = 0; i < first.length; i++) {
      for (int column = first[i]; column <= last(i); column++) {
        inColumns[next[column]++] = i;
      }
    }
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) ((x - origin) / COLUMN)));
  }

  private int last(int stretch) {
    return column(Math.max(ends[4 * stretch], ends[4 * stretch + 2]));
  }

  /** How many stretches a leader crosses, without those that it ends at. */
  int crossed(Point start, Point anchor) {
    double fromX = start.x();
    double fromY = start.y();
    double toX = anchor.x();
    double toY = anchor.y();
    double left = Math.min(fromX, toX);
    double right = Math.max(fromX, toX);
    double top = Math.min(fromY, toY);
    double bottom = Math.max(fromY, toY);
    int crossed = 0;
    int begin = column(left);
    int end = column(right);
    for (int column = begin; column <= end; column++) {
      for (int k = starts[column]; k < starts[column + 1]; k++) {
        int stretch = inColumns[k];
        // Each is asked in the first column that both lie in.
        if (Math.max(begin, first[stretch]) != column) {
          continue;
        }
        int i = 4 * stretch;
        boolean apart =
            ends[i] < left && ends[i + 2] < left
                || ends[i] > right && ends[i + 2] > right
                || ends[i + 1] < top && ends[i + 3] < top
                || ends[i + 1] > bottom && ends[i + 3] > bottom;
        if (!apart
            && crosses(ends[i], ends[i + 1], ends[i + 2], ends[i + 3], fromX, fromY, toX, toY)) {
          crossed++;
        }
      }
    }
    return crossed;
  }

  private static boolean crosses(
      double ax,
      double ay,
      double bx,
      double by,
      double fromX,
      double fromY,
      double toX,
      double toY) {
    return Polygons.side(fromX, fromY, toX, toY, ax, ay)
                * Polygons.side(fromX, fromY, toX, toY, bx, by)
            < 0
        && Polygons.side(ax, ay, bx, by, fromX, fromY) * Polygons.side(ax, ay, bx, by, toX, toY) < 0
        && Polygons.distance(toX, toY, ax, ay, bx, by) > POINTED_AT;
  }
}
