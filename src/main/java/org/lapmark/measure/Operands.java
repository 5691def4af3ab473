package org.lapmark.measure;

/**
 * Two parts of a formula with a sign between them.
 *
 * @param left the part before the sign
 * @param right the part behind it
 * @param signStart index of the sign's first unit
 * @param signEnd index behind its last unit
 */
record Operands(Node left, Node right, int signStart, int signEnd) {
  /** Two parts that are treated alike although no sign stands between them. */
  public static Operands of(Node left, Node right, Node place) {
    return new Operands(left, right, place.start(), place.end());
  }
}
