package org.lapmark.figure.ink;

import java.util.Arrays;

/**
 * Places by their cost: the cheapest is taken first, of equals the one that was added first. A
 * place is known by its number, counted from 0 as they are added.
 */
final class Cheapest {
  private double[] costs = new double[256];
  private long[] places = new long[256];
  private double least = Double.POSITIVE_INFINITY;
  private int count;
  private int[] heap;
  private int waiting;

  /** Adds a place; not after one has been taken. */
  void add(double cost, int survey, int column, int row, int anchor) {
    if (count == costs.length) {
      costs = Arrays.copyOf(costs, 2 * count);
      places = Arrays.copyOf(places, 2 * count);
    }
    least = Math.min(least, cost);
    costs[count] = cost;
    places[count] =
        (long) survey << 56 | (long) column << 36 | (long) row << 16 | anchor + 1 & 0xffff;
    count++;
  }

  /** What the cheapest of all that were added costs; infinitely much if none was. */
  double least() {
    return least;
  }

  boolean isEmpty() {
    order();
    return waiting == 0;
  }

  /** Takes the cheapest. */
  int take() {
    order();
    int first = heap[0];
    waiting--;
    heap[0] = heap[waiting];
    sink(0);
    return first;
  }

  double cost(int place) {
    return costs[place];
  }

  int survey(int place) {
    return (int) (places[place] >>> 56);
  }

  int column(int place) {
    return (int) (places[place] >>> 36 & 0xfffff);
  }

  int row(int place) {
    return (int) (places[place] >>> 16 & 0xfffff);
  }

  int anchor(int place) {
    return (int) (places[place] & 0xffff) - 1;
  }

  private void order() {
    if (heap == null) {
      heap = new int[count];
      Arrays.setAll(heap, i -> i);
      waiting = count;
      for (int i = count / 2 - 1; i >= 0; i--) {
        sink(i);
      }
    }
  }

  private void sink(int from) {
    int at = from;
    while (true) {
      int least = 2 * at + 1;
      if (least >= waiting) {
        return;
      }
      if (least + 1 < waiting && isLess(heap[least + 1], heap[least])) {
        least++;
      }
      if (!isLess(heap[least], heap[at])) {
        return;
      }
      int other = heap[at];
      heap[at] = heap[least];
      heap[least] = other;
      at = least;
    }
  }

  private boolean isLess(int one, int other) {
    return costs[one] < costs[other] || costs[one] == costs[other] && one < other;
  }
}
