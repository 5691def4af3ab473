package org.lapmark.lay;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;

/**
 * The rows into which a long cloth is broken.
 *
 * @param breaks where they begin along the cloth, and where the last one ends, in millimetres
 */
record LayRows(List<Double> breaks) {
  /** Where rows end: near equal parts, where the fewest pieces are cut by it. */
  static LayRows of(Lay lay, int rows) {
    List<Double> breaks = new ArrayList<>();
    breaks.add(0.0);
    double part = lay.length() / rows;
    List<Box> boxes =
        lay.placements().stream().map(placement -> placement.outline().bounds()).toList();
    for (int i = 1; i < rows; i++) {
      double ideal = i * part;
      double best = ideal;
      long fewest = Long.MAX_VALUE;
      for (int step = 0; step <= 20; step++) {
        double at = ideal + (step % 2 == 0 ? 1 : -1) * ((step + 1) / 2) * part / 80;
        long cut = boxes.stream().filter(box -> box.minX() < at && box.maxX() > at).count();
        if (cut < fewest) {
          fewest = cut;
          best = at;
        }
      }
      breaks.add(best);
    }
    breaks.add(lay.length());
    return new LayRows(breaks);
  }

  /** A cloth in one row. */
  static LayRows one(Lay lay) {
    return new LayRows(List.of(0.0, lay.length()));
  }

  int count() {
    return breaks.size() - 1;
  }

  double from(int row) {
    return breaks.get(row);
  }

  double length(int row) {
    return breaks.get(row + 1) - breaks.get(row);
  }

  double longest() {
    double longest = 0;
    for (int row = 0; row < count(); row++) {
      longest = Math.max(longest, length(row));
    }
    return longest;
  }

  /** Whether so much of a piece lies in a row that its name belongs there. */
  boolean isMain(Placement placement, int row) {
    if (isWhole(placement, row)) {
      return true;
    }
    int main = 0;
    for (int i = 1; i < count(); i++) {
      if (share(placement, i) > share(placement, main) + 1e-9) {
        main = i;
      }
    }
    return main == row;
  }

  private boolean isWhole(Placement placement, int row) {
    return count() == 1 || share(placement, row) > 0.999;
  }

  private double share(Placement placement, int row) {
    Box box = placement.outline().bounds();
    double from = Math.max(box.minX(), breaks.get(row));
    double to = Math.min(box.maxX(), breaks.get(row + 1));
    return Math.max(0, to - from) / box.width();
  }
}
