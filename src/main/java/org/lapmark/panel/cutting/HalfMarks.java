package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;

/** The marks that paper shows of a piece that is cut on folded cloth. */
final class HalfMarks implements Mark.Placing<List<Mark>> {
  /** How often a line is looked at, in millimetres. */
  private static final double STEP = 2;

  /** A grainline beside the fold begins and ends this share of the half's length from its ends. */
  private static final double GRAIN_MARGIN = 0.2;

  private final Panel panel;
  private final Line fold;
  private final Point from;
  private final Point along;
  private final Affine mirror;

  private HalfMarks(Panel panel, Line fold, Affine mirror) {
    this.panel = panel;
    this.fold = fold;
    this.from = fold.start();
    this.along = fold.end().minus(from).unit();
    this.mirror = mirror;
  }

  /**
   * The marks of the half.
   *
   * @param panel the whole
   * @param fold the fold
   * @param mirror the map that lays the halves on each other
   * @throws PanelException when a mark lies in one half alone
   */
  static List<Mark> of(Panel panel, Line fold, Affine mirror) {
    HalfMarks half = new HalfMarks(panel, fold, mirror);
    List<Mark> kept = new ArrayList<>();
    panel.marks().forEach(mark -> kept.addAll(mark.place(half)));
    return Collections.unmodifiableList(kept);
  }

  /** How far a point lies to the side of the fold on which the half lies, clockwise. */
  static double aside(Point point, Point from, Point along) {
    return point.minus(from).cross(along);
  }

  /**
   * What is said of a mark without a partner in the other half.
   *
   * @param name what it is called, or the edge of a notch
   */
  static PanelException alone(Panel panel, String kind, String name, Point at) {
    return PanelCode.FOLD_MARK_ALONE.exception(
        "panel", panel.name(), "kind", kind, "name", name, "x", at.x(), "y", at.y());
  }

  private boolean isInHalf(Point point) {
    return aside(point, from, along) >= -FoldedHalf.ON_FOLD;
  }

  /** Notches are drawn from the cutting line ({@link HalfNotches}). */
  @Override
  public List<Mark> notch(Mark.Notch notch) {
    return List.of();
  }

  @Override
  public List<Mark> intake(Intake intake) {
    return whole(intake);
  }

  @Override
  public List<Mark> point(PointMark mark) {
    return whole(mark);
  }

  /** A mark that is kept as a whole, if it lies in the half. */
  private List<Mark> whole(Mark mark) {
    Point place = place(mark);
    Point image = mirror.apply(place);
    boolean paired =
        panel.marks().stream()
            .filter(other -> other.kindName().equals(mark.kindName()))
            .anyMatch(other -> place(other).distance(image) <= FoldedHalf.TOLERANCE);
    if (!paired) {
      throw alone(panel, mark.kindName(), mark.name(), place);
    }
    return isInHalf(place) ? List.of(mark) : List.of();
  }

  private static Point place(Mark mark) {
    return mark.knownBy(edge -> null).orElseThrow();
  }

  @Override
  public List<Mark> line(LineMark mark) {
    if (!mark.isDrawn()) {
      return List.of();
    }
    Path path = mark.path();
    List<LineMark> all = panel.marks(LineMark.class).stream().filter(LineMark::isDrawn).toList();
    double length = path.length();
    int steps = Math.max(16, (int) Math.ceil(length / STEP));
    double first = -1;
    double last = -1;
    for (int i = 0; i <= steps; i++) {
      double here = length * i / steps;
      Point at = path.atLength(here);
      Point image = mirror.apply(at);
      if (all.stream().noneMatch(one -> one.path().distance(image) <= FoldedHalf.TOLERANCE)) {
        throw alone(panel, mark.kindName(), mark.name(), at);
      }
      if (isInHalf(at)) {
        first = first < 0 ? here : first;
        last = here;
      }
    }
    if (first < 0 || last - first < FoldedHalf.ON_FOLD) {
      return List.of();
    }
    // Where the line crosses the fold, exactly there.
    for (Crossings.OnStraight crossing : Crossings.straight(path, from, along)) {
      double at = path.lengthTo(crossing.place());
      if (at < first && at > first - length / steps) {
        first = at;
      } else if (at > last && at < last + length / steps) {
        last = at;
      }
    }
    return List.of(mark.along(path.part(first, last)));
  }

  /** The grainline, moved into the half where it isn't whole in it. */
  @Override
  public List<Mark> grainline(Mark.Grainline grain) {
    double sideOfFrom = aside(grain.from(), fold.start(), along);
    double sideOfTo = aside(grain.to(), fold.start(), along);
    double room = fold.start().distance(fold.end()) * GRAIN_MARGIN;
    if (Math.min(sideOfFrom, sideOfTo) > Math.min(room, 10)) {
      return List.of(grain);
    }
    Point direction = grain.to().minus(grain.from()).unit();
    Point inwards = along.quarterTurn();
    if (aside(fold.start().plus(inwards), fold.start(), along) < 0) {
      inwards = inwards.times(-1);
    }
    double length = fold.start().distance(fold.end()) * (1 - 2 * GRAIN_MARGIN);
    double leaning = Math.abs(direction.dot(inwards)) * length / 2;
    Point middle =
        fold.start()
            .plus(fold.end())
            .times(0.5)
            .plus(inwards.times(leaning + Math.max(18, Math.min(30, length / 4))));
    Point half = direction.times(length / 2);
    Mark.Grainline moved = grain.between(middle.minus(half), middle.plus(half));
    Path outline = panel.outline();
    boolean fits = outline.encloses(moved.from()) && outline.encloses(moved.to());
    return List.of(fits ? moved : grain);
  }
}
