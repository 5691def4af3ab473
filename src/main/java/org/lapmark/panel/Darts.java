package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Darts and pleats laid out on a panel's edges. */
public final class Darts {
  /** How far the ends of a drawn dart or pleat may lie off the outline, in millimetres. */
  public static final double OFF_OUTLINE = 0.05;

  /** How much the legs of a drawn dart may differ, in millimetres. */
  public static final double LEGS = 0.5;

  /** How far, in millimetres, a line may reach over another that it only touches. */
  private static final double TOUCH = 0.1;

  private Darts() {}

  /**
   * A dart stated by numbers. Its axis stands square to the line through the feet of its legs.
   *
   * @param panel the panel
   * @param name the dart's name
   * @param line the edge's or chain's name
   * @param at where its axis meets the edge, in millimetres from the line's start along the
   *     stitching line as drawn
   * @param width what it takes up of the stitching line, in millimetres, above 0
   * @param length from the line through the feet to the apex, in millimetres, above 0
   * @param press to which side it is pressed
   * @return the dart
   * @throws PanelException when it reaches beyond its edge, or its apex lies outside the panel
   */
  public static Intake.Dart stated(
      Panel panel,
      String name,
      String line,
      double at,
      double width,
      double length,
      Intake.Press press) {
    Stretch stretch = stretch(panel, name, line, at - width / 2, at + width / 2);
    Point apex = stretch.middle().plus(stretch.inwards().times(length));
    return checked(
        panel, new Intake.Dart(name, stretch.edge.name(), stretch.from, stretch.to, apex, press));
  }

  /**
   * A dart as drawn: from the outline to the apex and back to the outline.
   *
   * @param panel the panel
   * @param name the dart's name
   * @param one the foot of one leg
   * @param drawnApex the apex; moved onto the axis where the legs differ a little
   * @param other the foot of the other leg
   * @param press to which side it is pressed
   * @return the dart
   * @throws PanelException when a foot is off the outline, the feet stand on two edges, the legs
   *     differ by more than 0.5 mm, or the apex lies outside the panel
   */
  public static Intake.Dart drawn(
      Panel panel, String name, Point one, Point drawnApex, Point other, Intake.Press press) {
    Foot first = foot(panel, name, one);
    Foot last = foot(panel, name, other);
    // A foot on a corner belongs to both edges that meet there.
    Edge edge = first.edge;
    if (edge != last.edge) {
      Foot moved = last.on(first.edge);
      if (moved == null) {
        moved = first.on(last.edge);
        edge = last.edge;
        first = moved;
      } else {
        last = moved;
      }
      if (moved == null) {
        throw PanelCode.INTAKE_ON_TWO_EDGES.exception("panel", panel.name(), "mark", name);
      }
    }
    double from = Math.min(first.at, last.at);
    double to = Math.max(first.at, last.at);
    Stretch stretch = stretch(panel, name, edge.name(), from, to);
    double legs =
        drawnApex.distance(edge.path().atLength(from))
            - drawnApex.distance(edge.path().atLength(to));
    if (Math.abs(legs) > LEGS) {
      throw PanelCode.DART_LEGS_DIFFER.exception(
          "panel", panel.name(), "mark", name, "difference", Math.abs(legs));
    }
    double length = drawnApex.minus(stretch.middle()).dot(stretch.inwards());
    Point apex = stretch.middle().plus(stretch.inwards().times(length));
    return checked(panel, new Intake.Dart(name, edge.name(), from, to, apex, press));
  }

  /**
   * A pleat stated by numbers. Its lines run side by side, square to the line through the ends of
   * what it takes up.
   *
   * @param panel the panel
   * @param name the pleat's name
   * @param line the edge's or chain's name
   * @param at where the fold of a knife pleat, or the middle of another, stands: millimetres from
   *     the line's start along the stitching line as drawn
   * @param takeUp what it takes up of the stitching line, in millimetres, above 0
   * @param length how far its lines run inwards, in millimetres, above 0
   * @param kind how it is folded
   * @param onwards whether a knife pleat's fold is laid towards the line's end
   * @return the pleat
   * @throws PanelException when it reaches beyond its edge or a line ends outside the panel
   */
  public static Intake.Pleat pleat(
      Panel panel,
      String name,
      String line,
      double at,
      double takeUp,
      double length,
      Intake.PleatKind kind,
      boolean onwards) {
    boolean knife = kind == Intake.PleatKind.KNIFE;
    double from = knife ? onwards ? at : at - takeUp : at - takeUp / 2;
    Stretch stretch = stretch(panel, name, line, from, from + takeUp);
    List<Double> places = new ArrayList<>(List.of(stretch.from));
    if (!knife) {
      places.add((stretch.from + stretch.to) / 2);
    }
    places.add(stretch.to);
    Point inwards = stretch.inwards().times(length);
    List<Line> lines = new ArrayList<>();
    Path outline = panel.outline();
    for (double place : places) {
      Point start = stretch.edge.path().atLength(place);
      Point end = start.plus(inwards);
      if (!outline.encloses(end)) {
        throw PanelCode.MARK_OUTSIDE.exception(
            "panel", panel.name(), "mark", name, "x", end.x(), "y", end.y());
      }
      lines.add(new Line(start, end));
    }
    return new Intake.Pleat(
        name,
        stretch.edge.name(),
        stretch.from,
        stretch.to,
        kind,
        onwards,
        Collections.unmodifiableList(lines));
  }

  /**
   * Checks that no two darts or pleats of an edge take up the same stretch, and that no notch
   * stands in one.
   *
   * @param panel the panel with its marks
   * @throws PanelException when they do
   */
  public static void check(Panel panel) {
    List<Intake> intakes = intakes(panel);
    for (int i = 0; i < intakes.size(); i++) {
      Intake one = intakes.get(i);
      for (Intake other : intakes.subList(i + 1, intakes.size())) {
        if (one.edge().equals(other.edge())
            && one.from() < other.to() - Path.JOIN_TOLERANCE
            && other.from() < one.to() - Path.JOIN_TOLERANCE) {
          throw PanelCode.INTAKES_OVERLAP.exception(
              "panel",
              panel.name(),
              "first",
              one.name(),
              "second",
              other.name(),
              "edge",
              one.edge());
        }
      }
      for (Intake other : intakes.subList(i + 1, intakes.size())) {
        boolean apart = one.standsAlone() || other.standsAlone();
        if (apart && cross(lines(panel, one), lines(panel, other))) {
          throw PanelCode.DARTS_CROSS.exception(
              "panel", panel.name(), "first", one.name(), "second", other.name());
        }
      }
      for (Mark.Notch notch : panel.marks(Mark.Notch.class)) {
        if (notch.edge().equals(one.edge())
            && notch.at() > one.from() + Path.JOIN_TOLERANCE
            && notch.at() < one.to() - Path.JOIN_TOLERANCE) {
          throw PanelCode.NOTCH_IN_INTAKE.exception(
              "panel", panel.name(), "mark", one.name(), "edge", one.edge(), "at", notch.at());
        }
      }
    }
  }

  private static List<Line> lines(Panel panel, Intake intake) {
    return intake.lines(panel.line(intake.edge()));
  }

  /** Whether some of the lines cross; they may touch with their ends. */
  private static boolean cross(List<Line> some, List<Line> others) {
    for (Line one : some) {
      for (Line other : others) {
        Point along = one.end().minus(one.start());
        Point across = other.end().minus(other.start());
        double area = along.cross(across);
        if (Math.abs(area) <= 1e-9) {
          continue;
        }
        Point between = other.start().minus(one.start());
        double here = between.cross(across) / area * along.norm();
        double there = between.cross(along) / area * across.norm();
        if (isWithin(here, along.norm()) && isWithin(there, across.norm())) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isWithin(double at, double length) {
    return at > TOUCH && at < length - TOUCH;
  }

  /**
   * The darts and pleats of a panel, as stated.
   *
   * @param panel the panel
   * @return them in the order of its marks
   */
  public static List<Intake> intakes(Panel panel) {
    return panel.marks(Intake.class);
  }

  /**
   * The darts of an edge.
   *
   * @param panel the panel
   * @param edge the edge's name
   * @return its darts, clockwise
   */
  public static List<Intake.Dart> on(Panel panel, String edge) {
    return panel.marks(Intake.Dart.class).stream()
        .filter(dart -> dart.edge().equals(edge))
        .sorted(Comparator.comparingDouble(Intake.Dart::from))
        .toList();
  }

  private static Intake.Dart checked(Panel panel, Intake.Dart dart) {
    if (!panel.outline().encloses(dart.apex())) {
      throw PanelCode.MARK_OUTSIDE.exception(
          "panel", panel.name(), "mark", dart.name(), "x", dart.apex().x(), "y", dart.apex().y());
    }
    return dart;
  }

  /** A stretch of one edge. */
  private record Stretch(Edge edge, double from, double to) {
    Point middle() {
      return edge.path().atLength(from).towards(edge.path().atLength(to), 0.5);
    }

    /** Square to the line through its ends, into the panel. */
    Point inwards() {
      return edge.path().atLength(to).minus(edge.path().atLength(from)).unit().quarterTurn();
    }
  }

  private static Stretch stretch(Panel panel, String name, String line, double from, double to) {
    double before = 0;
    for (String member : panel.chains().getOrDefault(line, List.of(line))) {
      for (Edge edge : panel.edges()) {
        if (edge.name().equals(member)) {
          double length = edge.path().length();
          if (from >= before - Path.JOIN_TOLERANCE
              && to <= before + length + Path.JOIN_TOLERANCE
              && to > from) {
            return new Stretch(edge, Math.max(0, from - before), Math.min(length, to - before));
          }
          before += length;
        }
      }
    }
    throw PanelCode.INTAKE_OFF_EDGE.exception(
        "panel",
        panel.name(),
        "mark",
        name,
        "edge",
        line,
        "from",
        from,
        "to",
        to,
        "length",
        before);
  }

  private record Foot(Panel panel, Edge edge, double at) {
    /** The same point on an edge that meets this one there, or null. */
    Foot on(Edge other) {
      Point here = edge.path().atLength(at);
      double there = other.path().nearestLength(here);
      return other.path().atLength(there).distance(here) <= OFF_OUTLINE
          ? new Foot(panel, other, there)
          : null;
    }
  }

  private static Foot foot(Panel panel, String name, Point point) {
    Foot best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : panel.edges()) {
      double at = edge.path().nearestLength(point);
      double distance = edge.path().atLength(at).distance(point);
      if (distance < least - 1e-9) {
        least = distance;
        best = new Foot(panel, edge, at);
      }
    }
    if (best == null || !(least <= OFF_OUTLINE)) {
      throw PanelCode.INTAKE_OFF_OUTLINE.exception(
          "panel", panel.name(), "mark", name, "distance", least);
    }
    return best;
  }

  /**
   * Where a drawn line begins on the outline.
   *
   * @param panel the panel
   * @param name the mark's name
   * @param point the point
   * @return the edge and the millimetres from its start
   * @throws PanelException when the point lies more than 0.05 mm off the outline
   */
  public static Mark.Notch onOutline(Panel panel, String name, Point point) {
    Foot foot = foot(panel, name, point);
    return new Mark.Notch(foot.edge.name(), foot.at, 1);
  }
}
