package org.lapmark.lay;

import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * Selvedges, grain and dimensions around the cloth.
 *
 * @param lay the layout
 * @param words the words on paper
 * @param board where the row is drawn
 * @param turned whether the cloth runs down the page
 */
record LayDimensions(Lay lay, LayWords words, Board board, boolean turned) {
  private static final String DIMENSION = "lay-dimension";
  private static final String GRAIN = "lay-grain";

  /** How far a dimension stands off the cloth, in millimetres. */
  static final double OFF = 2.2;

  /** How long the arrow of the grain is, in millimetres. */
  static final double ARROW = 11;

  private static final double GAP = 5;

  private double text() {
    return board.height(Board.LABEL);
  }

  /** Selvedges, grain and dimensions around the cloth. */
  void draw(Box cloth, double along, boolean first, LayLabels.Taken taken) {
    double topLine = cloth.minY() - taken.above() - Board.AIR - text() / 2;
    double bottomLine = cloth.maxY() + taken.below() + Board.AIR + text() / 2;
    boolean grain = lay.cloth().hasGrain();
    String selvedge = words.wording().text("lay.selvedge");
    double half = board.width(selvedge, Board.LABEL) / 2;
    String length = LengthText.atLeast(along, words.form());
    String width = words.width(lay.width());
    if (turned) {
      double left = cloth.minX() - Board.AIR - text() / 2;
      double right = cloth.maxX() + Board.AIR + text() / 2;
      if (grain) {
        board.text(selvedge, new Point(left, cloth.centre().y()), Board.UPRIGHT, Board.LABEL);
        board.text(selvedge, new Point(right, cloth.centre().y()), Board.UPRIGHT, Board.LABEL);
        grainArrow(
            new Point(cloth.minX() + 1, cloth.minY() - taken.above() - Board.AIR),
            new Point(0, -1),
            true);
        right += text() + Board.AIR;
      }
      upright(right - text() / 2 - Board.AIR, cloth.maxX(), cloth.minY(), cloth.maxY(), length, 1);
      level(cloth.maxY() + taken.below(), cloth.maxY(), cloth.minX(), cloth.maxX(), width);
      return;
    }
    if (grain) {
      board.text(selvedge, new Point(cloth.minX() + half, topLine), 0, Board.LABEL);
      board.text(selvedge, new Point(cloth.minX() + half, bottomLine), 0, Board.LABEL);
      if (first) {
        grainArrow(new Point(cloth.minX() + 2 * half + GAP, topLine), new Point(-1, 0), false);
      }
      bottomLine += text() + Board.AIR;
    }
    level(bottomLine - text() / 2 - Board.AIR, cloth.maxY(), cloth.minX(), cloth.maxX(), length);
    upright(cloth.minX(), cloth.minX(), cloth.minY(), cloth.maxY(), width, -1);
  }

  /** An arrow along the grain with its word; from its start it points up the pieces. */
  private void grainArrow(Point start, Point up, boolean standing) {
    boolean oneWay = lay.cloth().oneWay();
    Point end = standing ? start.plus(up.times(ARROW / 1.4)) : start.minus(up.times(ARROW));
    Point head = standing ? end : start;
    Point tail = standing ? start : end;
    board.line(start, end, GRAIN);
    board.arrowhead(head, up, "lay-arrow");
    if (!oneWay) {
      board.arrowhead(tail, up.times(-1), "lay-arrow");
    }
    String word = words.wording().text(oneWay ? "lay.nap" : "lay.grain");
    double x = (standing ? start.x() : end.x()) + Board.AIR + board.width(word, GRAIN) / 2;
    board.text(word, new Point(x, standing ? (start.y() + end.y()) / 2 : start.y()), 0, GRAIN);
  }

  /** A dimension below the cloth: outside a line, with witness lines from the cloth's edge. */
  private void level(double from, double edge, double x0, double x1, String value) {
    double y = from + OFF;
    for (double x : new double[] {x0, x1}) {
      board.line(new Point(x, edge + 0.5), new Point(x, y + 0.8), DIMENSION);
    }
    board.line(new Point(x0, y), new Point(x1, y), DIMENSION);
    board.arrowhead(new Point(x0, y), new Point(-1, 0), "lay-arrow");
    board.arrowhead(new Point(x1, y), new Point(1, 0), "lay-arrow");
    double half = board.width(value, DIMENSION) / 2;
    double centre = Math.max((x0 + x1) / 2, x0 + half);
    board.text(value, new Point(centre, y + Board.AIR / 2 + text() / 2), 0, DIMENSION);
  }

  /** A dimension beside the cloth; outwards is 1 to the right and -1 to the left. */
  private void upright(
      double from, double edge, double y0, double y1, String value, double outwards) {
    double x = from + outwards * OFF;
    for (double y : new double[] {y0, y1}) {
      board.line(new Point(edge + outwards * 0.5, y), new Point(x + outwards * 0.8, y), DIMENSION);
    }
    board.line(new Point(x, y0), new Point(x, y1), DIMENSION);
    board.arrowhead(new Point(x, y0), new Point(0, -1), "lay-arrow");
    board.arrowhead(new Point(x, y1), new Point(0, 1), "lay-arrow");
    double centre = x + outwards * (Board.AIR / 2 + text() / 2);
    board.text(value, new Point(centre, (y0 + y1) / 2), Board.UPRIGHT, DIMENSION);
  }
}
