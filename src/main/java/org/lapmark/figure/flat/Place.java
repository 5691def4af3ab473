package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.measure.Formula;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;

/**
 * A place on a piece: at an edge, at a mark, where an attachment ends, or by coordinates. Of these
 * four one is there, the others are null.
 *
 * @param edge the edge
 * @param mark a mark of the panel
 * @param holder an attachment
 * @param at how far right and down from the panel's top left corner
 * @param along where on an edge or a line: a length from its start, or a plain number: a fraction
 *     of it; null for its middle
 * @param notch which of the edge's notches, counted from its start; 0 for none
 * @param inside how far inside the raw edge, or from a line; null for none
 */
record Place(
    SourceText edge,
    SourceText mark,
    SourceText holder,
    List<Formula> at,
    Formula along,
    int notch,
    Formula inside) {
  static final Key<SourceText> EDGE = Key.of("edge", FigureForms.EDGE);
  static final Key<Formula> ALONG = Key.of("along", FigureForms.PLACE).unless("1/2");
  static final Key<Integer> NOTCH = Key.of("notch", FigureForms.count(99));
  static final Key<Formula> INSIDE = Key.of("inside", FigureForms.LENGTH).unless("0 mm");
  static final Key<SourceText> MARK = Key.of("mark", FigureForms.NAME);
  static final Key<SourceText> HELD_BY = Key.of("held_by", FigureForms.NAME);
  static final Key<Entries<Formula>> AT = Key.of("at", FigureForms.PAIR);

  /** All keys of places. */
  static final List<Key<?>> KEYS = List.of(EDGE, MARK, HELD_BY, AT, ALONG, NOTCH, INSIDE);

  /** The ways to state one. */
  static final Choice WAYS = Choice.among(List.of(EDGE, MARK, HELD_BY, AT));

  private static final List<Key<?>> WAY_KEYS = List.of(EDGE, MARK, HELD_BY, AT);

  static Place read(Keys keys) {
    List<Key<?>> there = WAY_KEYS.stream().<Key<?>>filter(keys::has).toList();
    if (there.isEmpty()) {
      keys.need(EDGE);
    } else if (there.size() > 1) {
      keys.together(there.get(0), there.get(1));
    } else if (there.get(0) == HELD_BY || there.get(0) == AT) {
      for (Key<?> key : List.of(ALONG, NOTCH, INSIDE)) {
        keys.idle(there.get(0), key, "what is there, and how it is shown");
      }
    }
    if (keys.has(NOTCH) && keys.has(EDGE) && keys.has(ALONG)) {
      keys.together(ALONG, NOTCH);
    } else if (keys.has(MARK)) {
      keys.idle(MARK, NOTCH, "along, inside, and what is there");
    }
    List<Formula> at = keys.has(AT) ? keys.all(AT) : null;
    return new Place(
        keys.get(EDGE),
        keys.has(MARK) ? keys.get(MARK) : null,
        keys.has(HELD_BY) ? keys.get(HELD_BY) : null,
        at,
        keys.get(ALONG),
        keys.or(NOTCH, 0),
        keys.get(INSIDE));
  }

  /**
   * The place in the panel's coordinates.
   *
   * @param point the point
   * @param inward the direction into the panel, of length 1
   */
  record Spot(Point point, Point inward) {}

  /** Where it is stated. */
  Position position() {
    if (at != null) {
      return at.get(0).text().position();
    }
    return (edge != null ? edge : mark != null ? mark : holder).position();
  }

  Spot stage(Staging staging, Subject on) {
    if (mark != null) {
      return marked(staging, on);
    }
    if (holder != null) {
      return held(staging, on);
    }
    return at == null ? atEdge(staging, on) : atPoint(staging, on);
  }

  private Spot atEdge(Staging staging, Subject on) {
    Path line = on.line(edge);
    double from =
        notch > 0 ? notched(staging, on) : staging.along(along, line.length(), line.length() / 2);
    double allowance = on.allowance(on.edgeAt(edge, from));
    Point inward = line.tangentAtLength(from).quarterTurn();
    return new Spot(line.atLength(from).plus(inward.times(depth(staging, on) - allowance)), inward);
  }

  /** How far along the edge the notch is, or the middle of its set. */
  private double notched(Staging staging, Subject on) {
    List<Double> places = new ArrayList<>();
    double before = 0;
    for (String name : on.edges(edge)) {
      for (Mark.Notch one : on.panel().marks(Mark.Notch.class)) {
        if (one.edge().equals(name)) {
          places.add(before + one.at());
        }
      }
      before += on.panel().line(name).length();
    }
    if (notch > places.size()) {
      throw Faults.of(
          edge.position(),
          FigureCode.FIGURE_NOTCH_UNKNOWN,
          "number",
          notch,
          "edge",
          edge.text(),
          "count",
          places.size(),
          "size",
          staging.size());
    }
    return places.stream().sorted().toList().get(notch - 1);
  }

  private double depth(Staging staging, Subject on) {
    Box box = on.body().outline().bounds();
    double reach = new Point(box.width(), box.height()).norm();
    return inside == null ? 0 : staging.length(inside, -reach, reach);
  }

  private Spot atPoint(Staging staging, Subject on) {
    Box box = on.panel().outline().bounds();
    double right = staging.length(at.get(0), -box.width(), 2 * box.width());
    double down = staging.length(at.get(1), -box.height(), 2 * box.height());
    return new Spot(new Point(box.minX() + right, box.minY() + down), new Point(0, 1));
  }

  private Spot marked(Staging staging, Subject on) {
    Panel panel = on.panel();
    Set<String> known = new LinkedHashSet<>();
    for (LineMark line : panel.marks(LineMark.class)) {
      if (line.isDrawn() && line.name().equals(mark.text())) {
        double length = line.path().length();
        double from = staging.along(along, length, length / 2);
        Point inward = line.path().tangentAtLength(from).quarterTurn();
        Point to = line.path().atLength(from).plus(inward.times(depth(staging, on)));
        return new Spot(to, inward);
      }
      if (line.isDrawn()) {
        known.add(line.name());
      }
    }
    for (PointMark point : panel.marks(PointMark.class)) {
      if (point.name().equals(mark.text())) {
        if (along != null) {
          staging.notice(
              along.text().position(),
              FigureCode.FIGURE_KEY_IDLE,
              "name",
              ALONG.name(),
              "with",
              MARK.name(),
              "known",
              INSIDE.name());
        }
        return new Spot(point.middle().plus(new Point(0, depth(staging, on))), new Point(0, 1));
      }
      known.add(point.name());
    }
    throw on.names().unknown(FigureCode.FIGURE_MARK_UNKNOWN, mark, known);
  }

  private Spot held(Staging staging, Subject on) {
    Attached attached = on.attached(holder);
    return new Spot(
        attached.end().plus(AttachedThing.shift(staging, on, attached)), attached.direction());
  }

  /** A placement line or fold line of the panel that it names. */
  Optional<Path> line(Subject on) {
    return on.panel().marks(LineMark.class).stream()
        .filter(line -> mark != null && line.isDrawn() && line.name().equals(mark.text()))
        .map(LineMark::path)
        .findFirst();
  }

  /** The ends of a mark's line, where it has two. */
  static Optional<List<Point>> ends(Subject on, SourceText mark) {
    return on.panel().marks(PointMark.class).stream()
        .filter(point -> mark != null && point.name().equals(mark.text()))
        .map(PointMark::points)
        .filter(points -> points.size() == 2)
        .findFirst();
  }
}
