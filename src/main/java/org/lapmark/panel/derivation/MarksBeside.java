package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.Ring;

/** The marks of a panel on one whose edges lie beside its own. */
final class MarksBeside implements Mark.Placing<List<Mark>> {
  private final Panel panel;
  private final List<Edge> edges;
  private final Map<String, Double> moves;
  private final Beside.Marks which;
  private final Consumer<PanelException> notices;
  private final ClippedMarks clip;
  private final double farthest;
  private int left;
  private int followed;

  /**
   * Prepares them.
   *
   * @param panel the panel
   * @param edges the other's edges
   * @param moves how far each edge has moved outwards, in millimetres
   * @param which which marks follow besides the grainline and style lines
   * @param notices told what is left out
   */
  MarksBeside(
      Panel panel,
      List<Edge> edges,
      Map<String, Double> moves,
      Beside.Marks which,
      Consumer<PanelException> notices) {
    this.panel = panel;
    this.edges = edges;
    this.moves = moves;
    this.which = which;
    this.notices = notices;
    this.clip = new ClippedMarks(Ring.outline(edges));
    this.farthest = moves.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  List<Mark> marks() {
    boolean still = moves.values().stream().allMatch(move -> move == 0);
    if (still && which != Beside.Marks.NONE) {
      return panel.marks();
    }
    List<Mark> kept = new ArrayList<>();
    panel.marks().forEach(mark -> kept.addAll(mark.place(this)));
    if (which == Beside.Marks.OF_UNMOVED_EDGES && left > 0) {
      notices.accept(
          PanelCode.MARKS_NOT_STATED.exception(
              "panel", panel.name(), "left", left, "kept", followed));
    }
    return kept;
  }

  /** The mark on the new panel, if marks like it follow; counted either way. */
  private List<Mark> counted(
      Mark mark, boolean follows, Optional<Point> place, Supplier<List<Mark>> moved) {
    if (!follows) {
      left++;
      return List.of();
    }
    List<Mark> kept = moved.get();
    if (kept.isEmpty()) {
      PanelException notice = LeftOut.of(panel, mark, false);
      notices.accept(place.map(notice::at).orElse(notice));
    } else {
      followed++;
    }
    return kept;
  }

  private boolean follows(Mark.OnEdge mark) {
    return which == Beside.Marks.ALL
        || which == Beside.Marks.OF_UNMOVED_EDGES && moves.get(mark.edge()) == 0;
  }

  @Override
  public List<Mark> notch(Mark.Notch notch) {
    Path path = Ring.edge(panel, notch.edge()).path();
    Point outwards = path.tangentAtLength(notch.at()).quarterTurn().times(-1);
    Point foot = path.atLength(notch.at()).plus(outwards.times(moves.get(notch.edge())));
    FollowingNotches notches = new FollowingNotches(panel.name(), edges);
    return counted(
        notch,
        follows(notch),
        Optional.of(foot),
        () -> notches.moved(notch, path, foot, FollowingNotches.OFF_EDGE).kept());
  }

  @Override
  public List<Mark> intake(Intake intake) {
    Path path = Ring.edge(panel, intake.edge()).path();
    FollowingIntakes intakes = new FollowingIntakes(edges, farthest);
    return counted(intake, follows(intake), Optional.empty(), () -> intakes.moved(intake, path));
  }

  @Override
  public List<Mark> point(PointMark mark) {
    boolean follows = which == Beside.Marks.ALL;
    return counted(mark, follows, Optional.empty(), () -> clip.point(mark));
  }

  @Override
  public List<Mark> line(LineMark line) {
    if (!line.isDrawn()) {
      return List.of(farthest > 0 ? line.along(longer(line.path(), 4 * farthest)) : line);
    }
    boolean follows = which == Beside.Marks.ALL;
    return counted(line, follows, Optional.empty(), () -> clip.line(line));
  }

  @Override
  public List<Mark> grainline(Mark.Grainline grain) {
    return List.of(GrainRoom.grainline(grain, Ring.outline(edges)));
  }

  /** A line that goes on straight at both ends, to meet an outline that has moved outwards. */
  private static Path longer(Path path, double by) {
    Curve first = path.curves().get(0);
    Curve last = path.curves().get(path.curves().size() - 1);
    List<Curve> curves = new ArrayList<>();
    curves.add(new Line(path.start().minus(first.tangent(0).times(by)), path.start()));
    curves.addAll(path.curves());
    curves.add(new Line(path.end(), path.end().plus(last.tangent(1).times(by))));
    return new Path(curves);
  }
}
