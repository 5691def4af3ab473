package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.Ring;

/** The marks of a panel that lie on a part of it. */
final class MarksOnPart implements Mark.Placing<List<Mark>> {
  private final Panel panel;
  private final List<Edge> edges;
  private final String cut;
  private final Consumer<PanelException> notices;
  private final ClippedMarks clip;
  private final FollowingNotches notches;
  private final FollowingIntakes intakes;

  private MarksOnPart(Panel panel, List<Edge> edges, String cut, Consumer<PanelException> notices) {
    this.panel = panel;
    this.edges = edges;
    this.cut = cut;
    this.notices = notices;
    this.clip = new ClippedMarks(Ring.outline(edges));
    this.notches = new FollowingNotches(panel.name(), edges);
    this.intakes = new FollowingIntakes(edges, 0);
  }

  /**
   * The marks.
   *
   * @param panel the panel
   * @param edges the part's edges, which keep the names of those that they are stretches of
   * @param cut the name of the line along which it was cut, which isn't a mark any more
   * @param notices told of darts, pleats, buttonholes and sets of notches that the line cuts
   *     through
   */
  static List<Mark> of(
      Panel panel, List<Edge> edges, String cut, Consumer<PanelException> notices) {
    MarksOnPart part = new MarksOnPart(panel, edges, cut, notices);
    List<Mark> kept = new ArrayList<>();
    panel.marks().forEach(mark -> kept.addAll(mark.place(part)));
    return kept;
  }

  @Override
  public List<Mark> notch(Mark.Notch notch) {
    Path old = Ring.edge(panel, notch.edge()).path();
    Point foot = old.atLength(notch.at());
    FollowingNotches.Moved moved = notches.moved(notch, old, foot, ClippedMarks.MARGIN);
    if (moved.cutThrough()) {
      notices.accept(LeftOut.of(panel, notch, false).at(foot));
    }
    return moved.kept();
  }

  @Override
  public List<Mark> intake(Intake intake) {
    Path old = Ring.edge(panel, intake.edge()).path();
    List<Mark> moved = intakes.moved(intake, old);
    if (moved.isEmpty() && standsOn(intake, old)) {
      notices.accept(LeftOut.of(panel, intake, false));
    }
    return moved;
  }

  /** Whether the part has the stretch that a dart or pleat takes up, or some of it. */
  private boolean standsOn(Intake intake, Path old) {
    for (double at : new double[] {intake.from(), intake.to()}) {
      Point foot = old.atLength(at);
      for (Edge edge : edges) {
        if (FollowingIntakes.isFrom(edge, intake.edge())
            && edge.path().distance(foot) <= ClippedMarks.MARGIN) {
          return true;
        }
      }
    }
    return false;
  }

  @Override
  public List<Mark> point(PointMark mark) {
    if (clip.parts(mark)) {
      notices.accept(LeftOut.of(panel, mark, false));
    }
    return clip.point(mark);
  }

  @Override
  public List<Mark> line(LineMark line) {
    return line.name().equals(cut) ? List.of() : clip.line(line);
  }

  @Override
  public List<Mark> grainline(Mark.Grainline grain) {
    return List.of(GrainRoom.grainline(grain, Ring.outline(edges)));
  }
}
