package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/** The slash lines of a panel, held to its outline and to each other. */
final class Cuts {
  /** How far off the outline, in millimetres, a line's end may lie; also how near is the same. */
  static final double SNAP = 0.05;

  private static final double CHORD = 1e-3;

  /** At how many places of each curve is looked how wide a part is. */
  private static final int SAMPLES = 16;

  private final Panel panel;
  private final Path outline;
  private final double length;
  private final List<Double> starts = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();

  /**
   * Places slash lines on a panel.
   *
   * @throws PanelException when a line doesn't lead across the panel, or lines cross
   */
  Cuts(Panel panel, List<Slash> slashes) {
    this.panel = panel;
    this.outline = panel.outline();
    this.length = outline.length();
    double at = 0;
    for (Edge edge : panel.edges()) {
      starts.add(at);
      at += edge.path().length();
    }
    slashes.forEach(this::cut);
    checkApart();
    cuts.removeIf(cut -> cut.slash().open() == 0);
  }

  /** The lines that open or overlap. */
  List<Cut> all() {
    return cuts;
  }

  Path outline() {
    return outline;
  }

  double length() {
    return length;
  }

  /** Where each edge begins, in arc length of the outline. */
  List<Double> starts() {
    return starts;
  }

  private void cut(Slash slash) {
    Path line = slash.line();
    List<Meeting> apart = new ArrayList<>();
    for (Meeting meeting : meetings(line)) {
      if (apart.stream().noneMatch(other -> apart(other.at, meeting.at) <= 1.2 * SNAP)) {
        apart.add(meeting);
      }
    }
    if (apart.size() != 2) {
      throw notAcross(slash, apart.size());
    }
    Meeting first = apart.get(0);
    Meeting last = apart.get(1);
    double from = snapped(first.at);
    double to = snapped(last.at);
    List<Point> points = new ArrayList<>();
    points.add(outline.atLength(from));
    if (last.along - first.along > Path.JOIN_TOLERANCE) {
      List<Point> between = line.part(first.along, last.along).flattened(CHORD);
      points.addAll(between.subList(1, between.size() - 1));
    }
    points.add(outline.atLength(to));
    Path across = Path.polyline(points);
    Point inside = across.atLength(across.length() / 2);
    if (!outline.encloses(inside) || outline.distance(inside) < SNAP) {
      throw notAcross(slash, 0);
    }
    double chord = across.start().distance(across.end());
    if (Math.abs(slash.open()) > chord && slash.hinge() != Slash.Hinge.NONE) {
      throw PanelCode.SLASH_TOO_WIDE.exception(
          "panel",
          panel.name(),
          "slash",
          slash.name(),
          "open",
          Math.abs(slash.open()),
          "length",
          chord);
    }
    Path side = outline.around(from, to).then(across.reversed());
    cuts.add(new Cut(slash, from, to, across, side));
  }

  private PanelException notAcross(Slash slash, int count) {
    return PanelCode.SLASH_NOT_ACROSS.exception(
        "panel", panel.name(), "slash", slash.name(), "count", count);
  }

  /** Where a line meets the outline: arc lengths along it, and of the outline. */
  private record Meeting(double along, double at) {}

  private List<Meeting> meetings(Path line) {
    List<Meeting> meetings = new ArrayList<>();
    if (outline.distance(line.start()) <= SNAP) {
      meetings.add(new Meeting(0, outline.nearestLength(line.start())));
    }
    for (Crossings.OfPaths crossing : Crossings.of(line, outline)) {
      meetings.add(
          new Meeting(line.lengthTo(crossing.first()), outline.lengthTo(crossing.second())));
    }
    if (outline.distance(line.end()) <= SNAP) {
      meetings.add(new Meeting(line.length(), outline.nearestLength(line.end())));
    }
    meetings.sort(Comparator.comparingDouble(Meeting::along));
    return meetings;
  }

  /** How far two places of the outline are apart, the shorter way round. */
  private double apart(double one, double other) {
    double apart = Math.abs(one - other);
    return Math.min(apart, length - apart);
  }

  /** A place that is that of a corner, a join of curves or another line's end if one is near. */
  private double snapped(double at) {
    List<Double> known = new ArrayList<>(starts);
    cuts.forEach(cut -> known.addAll(List.of(cut.from(), cut.to())));
    double join = 0;
    for (Curve curve : outline.curves()) {
      known.add(join);
      join += curve.length();
    }
    for (double place : known) {
      if (apart(place, at) <= SNAP) {
        return place;
      }
    }
    return at;
  }

  private void checkApart() {
    for (int i = 0; i < cuts.size(); i++) {
      for (Cut other : cuts.subList(i + 1, cuts.size())) {
        Cut one = cuts.get(i);
        if (isCrossed(one, other)) {
          throw PanelCode.SLASHES_CROSS.exception(
              "panel", panel.name(), "slash", other.slash().name(), "other", one.slash().name());
        }
      }
    }
  }

  /**
   * Refuses overlaps of parts that are narrower, which would come to lie beyond what they lie on.
   *
   * @throws PanelException at the first
   */
  void checkOverlaps() {
    for (int i = 0; i < cuts.size(); i++) {
      Cut cut = cuts.get(i);
      double overlap = -cut.slash().open();
      double narrowest =
          overlap > 0 ? Math.min(width(i, true), width(i, false)) : Double.POSITIVE_INFINITY;
      if (overlap >= narrowest - Path.JOIN_TOLERANCE) {
        throw PanelCode.SLASH_OVERLAPS_PART.exception(
            "panel",
            panel.name(),
            "slash",
            cut.slash().name(),
            "open",
            overlap,
            "width",
            narrowest);
      }
    }
  }

  /** How far the part on one side of a cut reaches from it, square to the line between its ends. */
  private double width(int index, boolean after) {
    Cut cut = cuts.get(index);
    Point along = cut.end().minus(cut.start()).unit();
    List<Boolean> part = new ArrayList<>(sides(cut.line().atLength(cut.line().length() / 2)));
    part.set(index, after);
    double farthest = 0;
    double join = 0;
    List<Double> places = new ArrayList<>();
    for (Curve curve : outline.curves()) {
      for (int i = 0; i < SAMPLES; i++) {
        places.add(join + curve.length() * i / SAMPLES);
      }
      join += curve.length();
    }
    for (double place : places) {
      if (sides(place).equals(part)) {
        double beyond = Math.abs(along.cross(outline.atLength(place).minus(cut.start())));
        farthest = Math.max(farthest, beyond);
      }
    }
    for (Cut other : cuts) {
      // The part ends at the next cut, where that one is on its border.
      List<Boolean> beside = new ArrayList<>(sides(other.from()));
      int own = cuts.indexOf(other);
      beside.set(own, part.get(own));
      if (other != cut && beside.equals(part)) {
        for (Point end : List.of(other.start(), other.end())) {
          farthest = Math.max(farthest, Math.abs(along.cross(end.minus(cut.start()))));
        }
      }
    }
    return farthest;
  }

  private boolean isCrossed(Cut one, Cut other) {
    boolean sameFrom = other.from() == one.from() || other.from() == one.to();
    boolean sameTo = other.to() == one.from() || other.to() == one.to();
    if (sameFrom && sameTo) {
      return true;
    }
    if (!sameFrom && !sameTo && isAfter(one, other.from()) != isAfter(one, other.to())) {
      return true;
    }
    return Crossings.of(one.line(), other.line()).stream()
        .anyMatch(crossing -> outline.distance(crossing.point()) > SNAP);
  }

  /** Whether a place lies between a line's ends, clockwise from where it begins. */
  private boolean isAfter(Cut cut, double at) {
    return clockwise(cut.from(), at) < clockwise(cut.from(), cut.to());
  }

  /** How far it is from one place of the outline to another, clockwise. */
  double clockwise(double from, double to) {
    return to >= from ? to - from : to - from + length;
  }

  /** Which side of each line: true for the side clockwise from where the line begins. */
  List<Boolean> sides(double at) {
    return cuts.stream().map(cut -> isAfter(cut, at)).toList();
  }

  List<Boolean> sides(Point point) {
    return cuts.stream().map(cut -> cut.side().encloses(point)).toList();
  }

  /** The line that is opened most. */
  Cut widest() {
    return cuts.stream()
        .max(Comparator.comparingDouble(cut -> Math.abs(cut.slash().open())))
        .orElseThrow();
  }
}
