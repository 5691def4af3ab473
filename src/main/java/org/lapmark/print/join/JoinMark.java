package org.lapmark.print.join;

import java.util.List;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Join;

/**
 * A mark split across a join: one half on either tile.
 *
 * @param join the join
 * @param along how far its middle lies from the join's left or upper end, in millimetres
 * @param form its outline
 */
record JoinMark(Join join, double along, Form form) {
  /** Half the width of a mark, in millimetres. */
  static final double RADIUS = 6;

  /** How far from the join a number stands, as a share of the radius. */
  private static final double NUMBER_AT = 0.45;

  /** Half the room of a number of two digits, in millimetres. */
  private static final double NUMBER_HALF = 1.8;

  /** The outlines that marks have. */
  enum Form {
    DISC,
    DIAMOND,
    SQUARE
  }

  Point at() {
    return join.from().towards(join.to(), along / join.length());
  }

  Box box() {
    return new Box(at().x(), at().y(), at().x(), at().y()).expanded(RADIUS);
  }

  /** Where the middle of the number in a half stands. */
  Point numberAt(boolean first) {
    double side = (first ? -1 : 1) * NUMBER_AT * RADIUS;
    return at().plus(join.sideways() ? new Point(side, 0) : new Point(0, side));
  }

  /** The room of the number in a half. */
  Box number(boolean first) {
    Point at = numberAt(first);
    return new Box(at.x(), at.y(), at.x(), at.y()).expanded(NUMBER_HALF);
  }

  /** The half on the left or upper tile, or that on the other; it begins and ends on the join. */
  Path half(boolean first) {
    double start = (join.sideways() ? Math.PI / 2 : Math.PI) + (first ? 0 : Math.PI);
    if (form == Form.DISC) {
      return new Path(List.of(Arc.ofCircle(at(), RADIUS, start, Math.PI)));
    }
    Point along = join.sideways() ? new Point(0, RADIUS) : new Point(RADIUS, 0);
    Point out = (join.sideways() ? new Point(RADIUS, 0) : new Point(0, RADIUS));
    out = first ? out.times(-1) : out;
    Point begin = at().minus(along);
    Point end = at().plus(along);
    return Path.polyline(
        form == Form.DIAMOND
            ? List.of(begin, at().plus(out), end)
            : List.of(begin, begin.plus(out), end.plus(out), end));
  }
}
