package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.LineObstacles;

/** Names beside marks that lie elsewhere in other sizes. */
record MarkNames(NamePlaces places) {
  /** How near another size's line makes a notch need a name, in millimetres. */
  private static final double NOTCH_NEAR = 2.5;

  private static final double NOTCH_PAIR = 8;
  private static final double PAIR = 2;

  /** Between a name and its mark, in millimetres. */
  private static final double APART = 0.9;

  void write(NestedLines piece) {
    List<NestedLines.Mark> named = new ArrayList<>();
    for (NestedLines.Mark mark : piece.marks()) {
      boolean notch = mark.role().startsWith("notch");
      Point centre = mark.path().bounds().centre();
      boolean known =
          named.stream()
              .anyMatch(
                  other ->
                      other.owners().equals(mark.owners())
                          && other.path().bounds().centre().distance(centre)
                              < (notch ? NOTCH_PAIR : PAIR));
      if (!known && !mark.role().startsWith("on-fold") && !(notch && isPlain(mark, piece))) {
        named.add(mark);
        write(mark, notch);
      }
    }
  }

  /** Whether a notch stands on a line of its own sizes, with no other near. */
  private static boolean isPlain(NestedLines.Mark notch, NestedLines piece) {
    Point foot = notch.path().start();
    return piece.cutting().stream()
        .filter(line -> line.path().bounds().expanded(NOTCH_NEAR).contains(foot))
        .filter(line -> line.path().distance(foot) <= NOTCH_NEAR)
        .allMatch(line -> line.owners().equals(notch.owners()));
  }

  private void write(NestedLines.Mark mark, boolean notch) {
    String text = places.phrase(mark.owners());
    String role = NamePlaces.ROLES.get(notch ? 2 : 1);
    double halfLength = places.width(text, role) / 2;
    double halfHeight = places.halfHeight(text, role);
    for (Point place : around(mark, notch, halfLength, halfHeight)) {
      Cell cell = places.cell(place);
      LineObstacles.Slot slot =
          new LineObstacles.Slot(place, new Point(1, 0), halfLength, halfHeight);
      if (cell != null && places.isRoom(slot, cell)) {
        places.write(cell, mark.owners(), slot, role);
        return;
      }
    }
  }

  /** Where the middle of a mark's name may stand, the best place first. */
  private static List<Point> around(
      NestedLines.Mark mark, boolean notch, double halfLength, double halfHeight) {
    Box bounds = mark.path().bounds();
    Point middle = mark.path().atLength(mark.path().length() / 2);
    Point tangent = mark.path().tangentAtLength(mark.path().length() / 2);
    Point normal = tangent.quarterTurn();
    double beside = bounds.width() / 2 + halfLength + APART;
    double above = bounds.height() / 2 + halfHeight + APART;
    List<Point> around = new ArrayList<>();
    if (notch) {
      around.add(mark.path().end().plus(tangent.times(reach(tangent, halfLength, halfHeight))));
    }
    around.add(middle.plus(normal.times(reach(normal, halfLength, halfHeight))));
    around.add(middle.minus(normal.times(reach(normal, halfLength, halfHeight))));
    around.add(bounds.centre().plus(new Point(beside, 0)));
    around.add(bounds.centre().minus(new Point(beside, 0)));
    around.add(bounds.centre().minus(new Point(0, above)));
    around.add(bounds.centre().plus(new Point(0, above)));
    return around;
  }

  /** How far an upright word's middle has to be off a line that it is pushed away from. */
  private static double reach(Point away, double halfLength, double halfHeight) {
    return Math.min(
            Math.abs(away.x()) < 1e-9 ? 1e9 : halfLength / Math.abs(away.x()),
            Math.abs(away.y()) < 1e-9 ? 1e9 : halfHeight / Math.abs(away.y()))
        + APART;
  }
}
