package org.lapmark.figure.symbol;

/** How thick bars and wires usually are. */
final class Wire {
  private Wire() {}

  /** Of a ring that is so wide inside. */
  static double usual(double inner) {
    return Math.max(1.2, inner * 0.14);
  }
}
