package org.lapmark.geometry.offset;

/** What counts as the same place or direction beside an outline. */
final class Tolerances {
  /** Neighbours whose ends are nearer than this are joined by bending their ends together. */
  static final double NUDGE = 2e-3;

  /** A neighbour's line that ends a strip by less than this is met by bending. */
  static final double STUB = NUDGE / 2;

  /** A corner closes when it turns by more than this; less is a smooth join with rounding. */
  static final double CLOSING = 1e-6;

  /** A fold runs on smoothly into its neighbour when it turns by less, as drawn curves do. */
  static final double SMOOTH = 1e-2;

  private Tolerances() {}
}
