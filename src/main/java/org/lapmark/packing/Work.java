package org.lapmark.packing;

/**
 * Counts the work that searching takes, by which it is bounded: a clock would tell another tale.
 */
final class Work {
  private long done;

  void add(long steps) {
    done += steps;
  }

  long done() {
    return done;
  }
}
