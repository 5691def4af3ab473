package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.print.line.LineObstacles;

/**
 * Names of lines that run too close to each other for gaps: a hairline across them ends in their
 * names, in the order in which it crosses them; a name stands beside a line that is alone.
 */
final class HairNames {
  /** A hairline looks so far for neighbours, and takes those that lie so close to each other. */
  private static final double REACH = 9;

  private static final double CLOSE = 2.6;
  private static final double INSIDE = 0.8;
  private static final double OUTSIDE = 1.6;
  private static final double GAP = 0.6;

  /** A hairline speaks for its lines so far to both sides. */
  private static final double SPEAKS = 30;

  /** Shorter stretches, in millimetres, are left to the names around them. */
  private static final double SHORT = 8;

  private static final String ROLE = NamePlaces.ROLES.get(1);

  private final NamePlaces places;
  private final Map<Integer, List<Point>> flat = new LinkedHashMap<>();

  /** A line crossed by a hairline. */
  private record Crossing(double offset, NestedLines.Cutting line) {}

  /** Where a hairline is, and the sizes that it names. */
  private record Told(Point point, List<Integer> owners) {}

  HairNames(NamePlaces places) {
    this.places = places;
  }

  /** Gets to know a line. */
  void add(NestedLines.Cutting line) {
    flat.put(line.number(), line.path().flattened(0.02));
  }

  /** Names the stretches of a piece's lines that have no room for gaps. */
  void write(List<Stretch> left, NestedLines piece) {
    List<Told> told = new ArrayList<>();
    List<Stretch> longestFirst = new ArrayList<>(left);
    longestFirst.sort(
        Comparator.<Stretch>comparingDouble(stretch -> stretch.from() - stretch.to())
            .thenComparingInt(stretch -> stretch.line().number()));
    for (Stretch stretch : longestFirst) {
      Point centre = stretch.line().path().atLength(stretch.middle());
      boolean said =
          told.stream()
              .anyMatch(
                  one ->
                      one.point().distance(centre) < SPEAKS
                          && one.owners().containsAll(stretch.line().owners()));
      if (said || stretch.length() < SHORT) {
        continue;
      }
      Told made = hairline(stretch, piece);
      if (made != null) {
        told.add(made);
      } else {
        writeBeside(stretch);
      }
    }
  }

  /** A hairline as near to the middle of a stretch as there is room; null where there is none. */
  private Told hairline(Stretch stretch, NestedLines piece) {
    for (double away = 0; away <= stretch.length() / 2; away += 1.5) {
      for (double sign : away == 0 ? new double[] {1} : new double[] {1, -1}) {
        for (boolean outside : new boolean[] {true, false}) {
          Told made = hairline(stretch, piece, stretch.middle() + sign * away, outside);
          if (made != null) {
            return made;
          }
        }
      }
    }
    return null;
  }

  private Told hairline(Stretch stretch, NestedLines piece, double at, boolean outside) {
    Point point = stretch.line().path().atLength(at);
    Point tangent = stretch.line().path().tangentAtLength(at);
    Point across = tangent.quarterTurn().times(outside ? -1 : 1);
    List<Crossing> bunch = bunch(crossings(piece, point, across));
    if (bunch.isEmpty()) {
      return null;
    }
    double last = bunch.get(bunch.size() - 1).offset();
    double space = places.width("n", ROLE);
    List<String> texts = bunch.stream().map(one -> places.phrase(one.line().owners())).toList();
    List<Double> widths = texts.stream().map(text -> places.width(text, ROLE)).toList();
    double width =
        widths.stream().mapToDouble(Double::doubleValue).sum() + space * (bunch.size() - 1);
    double start = last + OUTSIDE + GAP;
    double halfHeight = places.halfHeight(String.join("", texts), ROLE);
    Point along = NamePlaces.upright(across);
    LineObstacles.Slot words =
        new LineObstacles.Slot(
            point.plus(across.times(start + width / 2)), along, width / 2, halfHeight);
    LineObstacles.Slot hair =
        new LineObstacles.Slot(
            point.plus(across.times(last + 0.6 + (OUTSIDE - 0.6) / 2)),
            along,
            (OUTSIDE - 0.6) / 2,
            0.2);
    if (!places.isRoom(words, stretch.cell()) || places.free(hair) < 0.2) {
      return null;
    }
    List<Integer> owners =
        bunch.stream().flatMap(one -> one.line().owners().stream()).distinct().sorted().toList();
    places.hairline(
        stretch.cell(),
        owners,
        point.plus(across.times(bunch.get(0).offset() - INSIDE)),
        point.plus(across.times(last + OUTSIDE)));
    double place = start;
    for (int i = 0; i < bunch.size(); i++) {
      places.write(
          stretch.cell(),
          bunch.get(i).line().owners(),
          new LineObstacles.Slot(
              point.plus(across.times(place + widths.get(i) / 2)),
              along,
              widths.get(i) / 2,
              halfHeight),
          ROLE);
      place += widths.get(i) + space;
    }
    return new Told(point, owners);
  }

  /** Where a line across meets the piece's cutting lines, from the inside outwards. */
  private List<Crossing> crossings(NestedLines piece, Point point, Point across) {
    List<Crossing> crossings = new ArrayList<>();
    Box near = new Box(point.x(), point.y(), point.x(), point.y()).expanded(REACH);
    for (NestedLines.Cutting line : piece.cutting()) {
      List<Point> points = flat.get(line.number());
      for (int i = 1; i < points.size(); i++) {
        Point a = points.get(i - 1).minus(point);
        Point b = points.get(i).minus(point);
        double sideA = across.cross(a);
        double sideB = across.cross(b);
        if ((sideA < 0) == (sideB < 0)) {
          continue;
        }
        Point hit = a.towards(b, sideA / (sideA - sideB));
        double offset = hit.dot(across);
        if (Math.abs(offset) <= REACH && near.contains(hit.plus(point))) {
          crossings.add(new Crossing(offset, line));
        }
      }
    }
    crossings.sort(Comparator.comparingDouble(Crossing::offset));
    return crossings;
  }

  /** The crossings around the middle that lie close to each other; none if there are no two. */
  private static List<Crossing> bunch(List<Crossing> all) {
    int own = -1;
    for (int i = 0; i < all.size(); i++) {
      if (own < 0 || Math.abs(all.get(i).offset()) < Math.abs(all.get(own).offset())) {
        own = i;
      }
    }
    int from = own;
    int to = own;
    while (from > 0 && all.get(from).offset() - all.get(from - 1).offset() <= CLOSE) {
      from--;
    }
    while (to >= 0
        && to + 1 < all.size()
        && all.get(to + 1).offset() - all.get(to).offset() <= CLOSE) {
      to++;
    }
    return own < 0 || to == from ? List.of() : all.subList(from, to + 1);
  }

  /** Writes a name beside a line that runs too close to the paper's edge, on its inside at best. */
  private void writeBeside(Stretch stretch) {
    List<Integer> owners = stretch.line().owners();
    String text = places.phrase(owners);
    double width = places.width(text, ROLE);
    double halfHeight = places.halfHeight(text, ROLE);
    double middle = stretch.middle();
    double reach = (stretch.to() - stretch.from() - width) / 2;
    for (double away = 0; away <= reach; away += NamePlaces.STEP) {
      for (double at :
          away == 0 ? new double[] {middle} : new double[] {middle - away, middle + away}) {
        LineObstacles.Slot on = stretch.slot(at, width, halfHeight, places.em(ROLE));
        if (on == null) {
          continue;
        }
        for (int side : new int[] {1, -1}) {
          Point inwards = stretch.line().path().tangentAtLength(at).quarterTurn();
          LineObstacles.Slot slot =
              new LineObstacles.Slot(
                  on.centre().plus(inwards.times(side * (on.halfHeight() + 0.7))),
                  on.along(),
                  on.halfLength(),
                  on.halfHeight());
          if (places.isRoom(slot, stretch.cell())) {
            places.write(stretch.cell(), owners, slot, ROLE);
            return;
          }
        }
      }
    }
  }
}
