package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;

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
    Sorted sorted = new Sorted(panel);
    panel.marks().forEach(mark -> mark.read(sorted));
    return sorted.lines;
  }

  /** What is drawn how; notches and the grainline are drawn when they are asked for. */
  private static final class Sorted implements Mark.Reader<Void> {
    private final Panel panel;
    private final MarkLines lines =
        new MarkLines(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());

    Sorted(Panel panel) {
      this.panel = panel;
    }

    @Override
    public Void notch(Mark.Notch notch) {
      return null;
    }

    @Override
    public Void grainline(Mark.Grainline grain) {
      return null;
    }

    @Override
    public Void styleLine(LineMark.StyleLine style) {
      return null;
    }

    @Override
    public Void dart(Intake.Dart dart) {
      Path edge = panel.line(dart.edge());
      lines.dashed.add(
          Path.polyline(
              List.of(edge.atLength(dart.from()), dart.apex(), edge.atLength(dart.to()))));
      return null;
    }

    @Override
    public Void pleat(Intake.Pleat pleat) {
      for (int i = 0; i < pleat.lines().size(); i++) {
        boolean fold =
            pleat.kind() == Intake.PleatKind.KNIFE ? pleat.onwards() == (i == 0) : i != 1;
        (fold ? lines.solid : lines.dashed).add(new Path(List.of(pleat.lines().get(i))));
      }
      return null;
    }

    @Override
    public Void buttonhole(PointMark.Buttonhole hole) {
      lines.solid.add(line(hole.from(), hole.to()));
      Point bar = hole.to().minus(hole.from()).times(0.12).quarterTurn();
      lines.solid.add(line(hole.from().minus(bar), hole.from().plus(bar)));
      lines.solid.add(line(hole.to().minus(bar), hole.to().plus(bar)));
      return null;
    }

    @Override
    public Void placement(LineMark.Placement placement) {
      lines.dashed.add(placement.path());
      return null;
    }

    @Override
    public Void foldLine(LineMark.FoldLine fold) {
      lines.dashed.add(fold.path());
      return null;
    }

    @Override
    public Void drillPoint(PointMark.DrillPoint drill) {
      lines.drills.add(drill.point());
      return null;
    }

    @Override
    public Void matchPoint(PointMark.MatchPoint match) {
      lines.matches.add(match.point());
      return null;
    }
  }

  private static Path line(Point from, Point to) {
    return new Path(List.of(new Line(from, to)));
  }
}
