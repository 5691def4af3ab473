package org.lapmark.packing;

import java.util.Arrays;

/** Looks through rows of cells for places where a shape can begin, and counts the work. */
final class RowScan {
  private final Work work;
  private long[] blocked = new long[8];
  private int[] narrow = new int[512];

  RowScan(Work work) {
    this.work = work;
  }

  /** Whether a shape has room at a place. */
  boolean isFree(Board board, Turned turned, int x, int y) {
    int[][] body = turned.body().rows();
    int top = y + turned.body().top();
    work.add(body.length / 2);
    for (int i = 0; i < body.length; i++) {
      int[] taken = board.row(top + i);
      int[] own = body[i];
      int a = 0;
      for (int k = 0; k < own.length; k += 2) {
        while (a < taken.length && taken[a + 1] <= own[k] + x) {
          a += 2;
        }
        if (a < taken.length && taken[a] < own[k + 1] + x) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * Marks at which rows a shape can't begin because a row of the board lacks a free stretch as long
   * as the shape needs there: counts of reasons that begin and end.
   */
  void mark(Board board, Turned turned, int down) {
    if (narrow.length < down + 2) {
      narrow = new int[down + 64];
    }
    Arrays.fill(narrow, 0, down + 2, 0);
    int top = turned.body().top();
    int end = Math.min(board.lastRow(), down + top + turned.body().height());
    for (int row = 0; row < end; row++) {
      int gap = board.gap(row);
      if (gap < turned.wide()) {
        int[] rows = turned.wideRows()[(gap + Turned.STEP - 1) / Turned.STEP];
        int from = Math.max(0, row - top - rows[1]);
        int to = Math.min(down, row - top - rows[0]);
        if (from <= to) {
          narrow[from]++;
          narrow[to + 1]--;
        }
      }
    }
    for (int y = 1; y <= down; y++) {
      narrow[y] += narrow[y - 1];
    }
    work.add((end + down) / 4);
  }

  /** Whether no row of the board is known to be too narrow for a shape that begins at a row. */
  boolean isWide(int y) {
    return narrow[y] == 0;
  }

  /** The first place of the row that was looked through at which a shape can begin. */
  int firstFree(int across) {
    for (int i = 0; i <= across >> 6; i++) {
      if (blocked[i] != -1) {
        return (i << 6) + Long.numberOfTrailingZeros(~blocked[i]);
      }
    }
    throw new IllegalStateException("no free place");
  }

  /** Marks where a shape can't begin in a row of cells; false when it can't anywhere. */
  boolean isOpen(Board board, Turned turned, int[] order, int y, int left, int across) {
    int words = (across >> 6) + 1;
    if (blocked.length < words) {
      blocked = new long[words + 8];
    }
    for (int i = 0; i < words; i++) {
      blocked[i] = 0;
    }
    long last = (across & 63) == 63 ? 0 : -1L << ((across & 63) + 1);
    int top = y + turned.body().top();
    int[][] body = turned.body().rows();
    for (int at = 0; at < order.length; at++) {
      int i = order[at];
      int[] taken = board.row(top + i);
      if (taken.length == 0) {
        continue;
      }
      int[] own = body[i];
      for (int k = 0; k < own.length; k += 2) {
        block(taken, own[k] + left, own[k + 1] + left, across);
      }
      work.add(taken.length + words);
      long all = -1;
      for (int w = 0; w < words - 1; w++) {
        all &= blocked[w];
      }
      if ((all & (blocked[words - 1] | last)) == -1) {
        // What closed this row of cells is likely to close the next one.
        order[at] = order[at / 2];
        order[at / 2] = i;
        return false;
      }
    }
    return true;
  }

  /** Blocks every x up to a limit at which a run, moved by x, meets a taken one. */
  private void block(int[] taken, int start, int end, int limit) {
    for (int a = 0; a < taken.length; a += 2) {
      int from = Math.max(0, taken[a] - end + 1);
      int to = Math.min(limit, taken[a + 1] - start - 1);
      if (from <= to) {
        int low = from >> 6;
        int high = to >> 6;
        long first = -1L << (from & 63);
        long last = -1L >>> (63 - (to & 63));
        if (low == high) {
          blocked[low] |= first & last;
        } else {
          blocked[low] |= first;
          for (int i = low + 1; i < high; i++) {
            blocked[i] = -1;
          }
          blocked[high] |= last;
        }
      }
    }
  }
}
