package org.lapmark.packing;

import java.util.Arrays;

/** Runs of a row of cells that are taken: starts and (exclusive) ends in turn, ascending. */
final class Runs {
  static final int[] NONE = {};

  private Runs() {}

  /** The longest stretch before an end that no run takes. */
  static int longestFree(int[] runs, int end) {
    int longest = 0;
    int from = 0;
    for (int i = 0; i < runs.length; i += 2) {
      longest = Math.max(longest, runs[i] - from);
      from = runs[i + 1];
    }
    return Math.max(longest, end - from);
  }

  /** Runs and others that are moved, in one. */
  static int[] together(int[] before, int[] runs, int shift) {
    int[] merged = new int[before.length + runs.length];
    int size = 0;
    int i = 0;
    int k = 0;
    while (i < before.length || k < runs.length) {
      boolean old = k >= runs.length || (i < before.length && before[i] <= runs[k] + shift);
      int from = old ? before[i] : runs[k] + shift;
      int to = old ? before[i + 1] : runs[k + 1] + shift;
      if (old) {
        i += 2;
      } else {
        k += 2;
      }
      if (size > 0 && from <= merged[size - 1]) {
        merged[size - 1] = Math.max(merged[size - 1], to);
      } else {
        merged[size++] = from;
        merged[size++] = to;
      }
    }
    return Arrays.copyOf(merged, size);
  }
}
