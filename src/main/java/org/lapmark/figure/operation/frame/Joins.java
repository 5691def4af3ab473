package org.lapmark.figure.operation.frame;

import static org.lapmark.figure.operation.frame.Cut.BEYOND;
import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.TURN;
import static org.lapmark.figure.operation.frame.Cut.at;

import org.lapmark.figure.ink.Side;

/** How layers lie at a seam, at distance 0, with its raw edges or its allowances. */
public final class Joins {
  private Joins() {}

  /** Two layers, right sides together, the raw edges level on the right. */
  public static Cut together(Cut cut, Material lower, Material upper, double allowance) {
    return cut.layer(upper, Side.WRONG, at(-allowance, 0, -BEYOND), at(allowance, 0))
        .layer(lower, Side.RIGHT, at(-allowance, NEXT, -BEYOND), at(allowance, NEXT));
  }

  /** What lies left of a seam, its allowance turned back under it at a level. */
  public static Cut left(Cut cut, Material cloth, double allowance, double level) {
    return cut.layer(
        cloth,
        Side.RIGHT,
        at(-allowance, 0, -BEYOND),
        at(0, 0, -TURN),
        at(0, level, -TURN),
        at(-allowance, level));
  }

  /** What lies right of a seam, its allowance turned back under it at a level. */
  public static Cut right(Cut cut, Material cloth, double allowance, double level) {
    return cut.layer(
        cloth,
        Side.RIGHT,
        at(allowance, 0, BEYOND),
        at(0, 0, TURN),
        at(0, level, TURN),
        at(allowance, level));
  }

  /** What lies right of a seam, its allowance going on to the left at a level. */
  public static Cut over(Cut cut, Material cloth, double allowance, double level) {
    return cut.layer(
        cloth,
        Side.RIGHT,
        at(-allowance, level),
        at(0, level, 0.6),
        at(0, 0, 4.2),
        at(allowance, 0, BEYOND));
  }

  /** A seam sewn from right sides together and opened out. */
  public static Cut open(Cut cut, Material left, Material right, double allowance) {
    right(left(cut, left, allowance, NEXT), right, allowance, NEXT);
    return cut.before(at(0, NEXT / 2, -TURN), at(0, NEXT / 2, TURN));
  }

  /** A seam whose allowances lie to the left. */
  public static Cut aside(Cut cut, Material left, Material right, double allowance) {
    over(left(cut, left, allowance, NEXT), right, allowance, 2 * NEXT);
    return cut.before(at(0, NEXT, -2.6), at(0, 2 * NEXT, -2.6));
  }
}
