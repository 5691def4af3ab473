package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.PointMark;

/** The marks of two panels on the one that they become. */
final class MarksMerged implements Mark.Placing<Void> {
  /** How near to each other, in millimetres, notches of one edge are one. */
  private static final double SAME = Merged.TOLERANCE / 10;

  private final Function<String, Optional<Start>> starts;
  private final boolean withGrain;
  private final List<Mark.Notch> notches;
  private final List<Mark> inside;
  private final List<Mark> onEdges;

  /**
   * Where the edge of a panel begins on the whole.
   *
   * @param edge the whole's edge
   * @param shift millimetres from that edge's start
   */
  record Start(String edge, double shift) {}

  private MarksMerged(
      Function<String, Optional<Start>> starts,
      boolean withGrain,
      List<Mark.Notch> notches,
      List<Mark> inside,
      List<Mark> onEdges) {
    this.starts = starts;
    this.withGrain = withGrain;
    this.notches = notches;
    this.inside = inside;
    this.onEdges = onEdges;
  }

  /**
   * The marks of the whole.
   *
   * @param first the marks of the panel that stays
   * @param firstStarts where its edges begin; nothing for the one that is gone
   * @param second the other's marks where it is laid, whose grainline counts if the first has none
   * @param secondStarts where its edges begin
   * @return the first's, then the second's, last those on the second's edges; notches that both had
   *     at one place are one
   */
  static List<Mark> of(
      List<Mark> first,
      Function<String, Optional<Start>> firstStarts,
      List<Mark> second,
      Function<String, Optional<Start>> secondStarts) {
    List<Mark.Notch> notches = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    MarksMerged mine = new MarksMerged(firstStarts, true, notches, marks, marks);
    first.forEach(mark -> mark.place(mine));
    boolean grained = marks.stream().anyMatch(Mark.Grainline.class::isInstance);
    List<Mark> onEdges = new ArrayList<>();
    MarksMerged theirs = new MarksMerged(secondStarts, !grained, notches, marks, onEdges);
    second.forEach(mark -> mark.place(theirs));
    marks.addAll(onEdges);
    return marks;
  }

  @Override
  public Void notch(Mark.Notch notch) {
    starts
        .apply(notch.edge())
        .map(start -> notch.on(start.edge(), start.shift()))
        .filter(moved -> notches.stream().noneMatch(other -> isSame(moved, other)))
        .ifPresent(
            moved -> {
              notches.add(moved);
              onEdges.add(moved);
            });
    return null;
  }

  private static boolean isSame(Mark.Notch one, Mark.Notch other) {
    return one.edge().equals(other.edge()) && Math.abs(one.at() - other.at()) < SAME;
  }

  @Override
  public Void intake(Intake intake) {
    starts
        .apply(intake.edge())
        .ifPresent(start -> onEdges.add(intake.on(start.edge(), start.shift())));
    return null;
  }

  @Override
  public Void point(PointMark point) {
    inside.add(point);
    return null;
  }

  @Override
  public Void line(LineMark line) {
    inside.add(line);
    return null;
  }

  @Override
  public Void grainline(Mark.Grainline grain) {
    if (withGrain) {
      inside.add(grain);
    }
    return null;
  }
}
