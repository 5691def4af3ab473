package org.lapmark.packing.strip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Fills a strip with shapes one after the other, each at the place nearest to the beginning, and
 * there nearest to the side where y is 0.
 */
final class StripFilling {
  private static final double TOUCH = 1e-9;
  private static final double[] FREE = {};

  private final List<List<Pose>> poses;
  private final int[] kinds;
  private final double width;
  private final double column;
  private long work;

  /** Where a shape came to lie. */
  record Put(int shape, Pose pose, double x, double y) {}

  /** The columns of the strip as far as shapes reach, each with the stretches that are taken. */
  private static final class Taken {
    private double[][] columns = new double[256][];
    private int size;

    /** Adds free columns up to one. */
    void reach(int index) {
      if (index >= columns.length) {
        columns = Arrays.copyOf(columns, 2 * index);
      }
      while (size <= index) {
        columns[size++] = FREE;
      }
    }
  }

  /**
   * A filled strip.
   *
   * @param puts in the order placed
   * @param length how far the shapes reach
   * @param spread how far they reach on the whole, weighted by their size: the tie breaker
   */
  record Filled(List<Put> puts, double length, double spread) {
    boolean betterThan(Filled other) {
      return length < other.length - TOUCH
          || (length <= other.length + TOUCH && spread <= other.spread);
    }
  }

  /**
   * Prepares filling.
   *
   * @param poses per shape its poses, all of which fit across
   * @param kinds per shape the index of the first shape that equals it
   * @param width the strip's width
   * @param column the width of a column
   */
  StripFilling(List<List<Pose>> poses, int[] kinds, double width, double column) {
    this.poses = poses;
    this.kinds = kinds;
    this.width = width;
    this.column = column;
  }

  long work() {
    return work;
  }

  /**
   * Fills the strip.
   *
   * @param order the shapes in the order in which they are placed
   * @param forced per shape the pose to take, or -1 for the one that reaches least far
   * @param limit give up beyond this length
   * @return the filled strip, or null when it would be longer
   */
  Filled fill(int[] order, int[] forced, double limit) {
    Taken taken = new Taken();
    // What has failed for a shape fails for its equals, because the strip only fills up.
    int[][] reached = new int[kinds.length][];
    List<Put> puts = new ArrayList<>();
    double length = 0;
    double spread = 0;
    for (int shape : order) {
      List<Pose> choices = poses.get(shape);
      int kind = kinds[shape];
      if (reached[kind] == null) {
        reached[kind] = new int[choices.size()];
      }
      Put best = null;
      double bestEnd = Double.POSITIVE_INFINITY;
      for (int p = 0; p < choices.size(); p++) {
        if (forced[shape] >= 0 && forced[shape] % choices.size() != p) {
          continue;
        }
        Pose pose = choices.get(p);
        double end = Math.min(limit, bestEnd) - pose.length();
        for (int at = reached[kind][p]; at * column <= end + TOUCH; at++) {
          double y = free(taken, pose, at);
          if (!Double.isNaN(y)) {
            double reach = at * column + pose.length();
            if (best == null
                || reach < bestEnd - TOUCH
                || (reach < bestEnd + TOUCH && y < best.y() - TOUCH)) {
              best = new Put(shape, pose, at * column, y);
              bestEnd = reach;
            }
            break;
          }
          reached[kind][p] = at + 1;
        }
      }
      if (best == null) {
        return null;
      }
      take(taken, best);
      puts.add(best);
      length = Math.max(length, bestEnd);
      spread += bestEnd * best.pose().area();
    }
    return new Filled(puts, length, spread);
  }

  /** The least y at which a pose is free when it begins at a column, or NaN. */
  private double free(Taken taken, Pose pose, int at) {
    double[][] spans = pose.body().spans();
    double highest = width - pose.height();
    double y = 0;
    int count = Math.min(spans.length, taken.size - at);
    boolean moved = true;
    while (moved) {
      moved = false;
      for (int i = 0; i < count; i++) {
        double[] column = taken.columns[at + i];
        double before = y;
        // Most shapes have one stretch a column, and most of the time is spent here.
        y =
            spans[i].length == 2
                ? jump(spans[i][0], spans[i][1], column, y)
                : jump(spans[i], column, y);
        if (y > highest + TOUCH) {
          work += i + 1;
          return Double.NaN;
        }
        moved |= y > before;
      }
      work += Math.max(0, count);
    }
    return Math.min(y, highest);
  }

  /** The least y from a start at which one stretch is free in a column. */
  private static double jump(double from, double to, double[] taken, double start) {
    double y = start;
    for (int t = 0; t + 1 < taken.length && taken[t] < to + y - TOUCH; t += 2) {
      if (taken[t + 1] > from + y + TOUCH) {
        y = taken[t + 1] - from;
      }
    }
    return y;
  }

  /** The least y from a start at which all stretches are free in a column. */
  private static double jump(double[] spans, double[] taken, double start) {
    double y = start;
    boolean moved = taken.length > 0;
    while (moved) {
      moved = false;
      for (int k = 0; k < spans.length; k += 2) {
        for (int t = 0; t < taken.length; t += 2) {
          if (taken[t] >= spans[k + 1] + y - TOUCH) {
            break;
          }
          if (taken[t + 1] > spans[k] + y + TOUCH) {
            y = taken[t + 1] - spans[k];
            moved = spans.length > 2;
          }
        }
      }
    }
    return y;
  }

  private void take(Taken taken, Put put) {
    Columns grown = put.pose().grown();
    int at = (int) Math.round(put.x() / column) + grown.first();
    for (int i = 0; i < grown.spans().length; i++) {
      int index = at + i;
      if (index >= 0) {
        taken.reach(index);
        taken.columns[index] = merged(taken.columns[index], grown.spans()[i], put.y());
      }
    }
  }

  private static double[] merged(double[] old, double[] added, double shift) {
    double[] all = new double[old.length + added.length];
    int size = 0;
    int i = 0;
    int k = 0;
    while (i < old.length || k < added.length) {
      boolean first = k >= added.length || (i < old.length && old[i] <= added[k] + shift);
      double from = first ? old[i] : added[k] + shift;
      double to = first ? old[i + 1] : added[k + 1] + shift;
      if (first) {
        i += 2;
      } else {
        k += 2;
      }
      if (size > 0 && from <= all[size - 1]) {
        all[size - 1] = Math.max(all[size - 1], to);
      } else {
        all[size++] = from;
        all[size++] = to;
      }
    }
    return Arrays.copyOf(all, size);
  }
}
