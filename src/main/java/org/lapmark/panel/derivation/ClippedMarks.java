package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Path;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.PointMark;

/** The marks inside a panel as far as they lie in an outline. */
final class ClippedMarks {
  /** A mark this near to the outline, in millimetres, still lies in it. */
  static final double MARGIN = 1e-3;

  /** Stretches of a line shorter than this aren't worth drawing. */
  private static final double LEAST = 0.5;

  private final Inside inside;

  ClippedMarks(Path outline) {
    this.inside = new Inside(outline, MARGIN);
  }

  /** The mark, if it lies inside as a whole. */
  List<Mark> point(PointMark mark) {
    return mark.points().stream().allMatch(inside::has) ? List.of(mark) : List.of();
  }

  /** Whether only a part of a mark lies inside. */
  boolean parts(PointMark mark) {
    return mark.points().stream().map(inside::has).distinct().count() > 1;
  }

  /** The parts of a line that lie inside. */
  List<Mark> line(LineMark mark) {
    List<Mark> kept = new ArrayList<>();
    double least = Math.min(LEAST, mark.path().length() / 2);
    for (Inside.Stretch stretch : inside.stretches(mark.path())) {
      if (stretch.path().length() > least) {
        kept.add(mark.along(stretch.path()));
      }
    }
    return kept;
  }
}
