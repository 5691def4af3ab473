package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;

/**
 * A panel's inner marks as a figure shows them, in panel coordinates: lines and points, no words.
 *
 * @param solid full lines
 * @param dashed broken lines
 * @param drills points to be drilled or pricked through
 * @param matches points that meet others
 */
record MarkLines(List<Path> solid, List<Path> dashed, List<Point> drills, List<Point> matches) {
  static MarkLines of(Panel panel) {
    List<Path> solid = new ArrayList<>();
    List<Path> dashed = new ArrayList<>();
    List<Point> drills = new ArrayList<>();
    List<Point> matches = new ArrayList<>();
    for (Mark mark : panel.marks()) {
      if (mark instanceof Mark.Dart dart) {
        Path edge = panel.line(dart.edge());
        dashed.add(
            Path.polyline(
                List.of(edge.atLength(dart.from()), dart.apex(), edge.atLength(dart.to()))));
      } else if (mark instanceof Mark.Pleat pleat) {
        for (int i = 0; i < pleat.lines().size(); i++) {
          boolean fold =
              pleat.kind() == Mark.PleatKind.KNIFE ? pleat.onwards() == (i == 0) : i != 1;
          (fold ? solid : dashed).add(new Path(List.of(pleat.lines().get(i))));
        }
      } else if (mark instanceof Mark.Buttonhole hole) {
        solid.add(line(hole.from(), hole.to()));
        Point bar = hole.to().minus(hole.from()).times(0.12).quarterTurn();
        solid.add(line(hole.from().minus(bar), hole.from().plus(bar)));
        solid.add(line(hole.to().minus(bar), hole.to().plus(bar)));
      } else if (mark instanceof Mark.Placement placement) {
        dashed.add(placement.path());
      } else if (mark instanceof Mark.FoldLine fold) {
        dashed.add(fold.path());
      } else if (mark instanceof Mark.DrillPoint drill) {
        drills.add(drill.point());
      } else if (mark instanceof Mark.MatchPoint match) {
        matches.add(match.point());
      }
    }
    return new MarkLines(solid, dashed, drills, matches);
  }

  private static Path line(Point from, Point to) {
    return new Path(List.of(new Line(from, to)));
  }
}
