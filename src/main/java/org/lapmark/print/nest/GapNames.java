package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.LineObstacles;

/** Names in gaps of the cutting lines. */
final class GapNames {
  /** A line of a page is named about once in so many millimetres. */
  private static final double OFTEN = 55;

  private static final double OFTEN_PROJECTED = 250;

  /** The line is interrupted so far before and after a name, in millimetres. */
  private static final double PAD = 0.7;

  /** How far names keep from corners and from the ends of a stretch, in millimetres. */
  private static final double FROM_CORNER = 3;

  private static final double FROM_END = 1;

  /** The cosine of the least bend that is a corner. */
  private static final double BEND = 0.985;

  /** The reach of the marks across joins, which names avoid where they can. */
  private static final double JOIN_MARKS = 8;

  private final NamePlaces places;
  private final double often;
  private final Map<Integer, List<Gap>> gaps = new LinkedHashMap<>();
  private final Map<Integer, List<Double>> corners = new LinkedHashMap<>();

  private record Gap(double from, double to) {}

  GapNames(NamePlaces places, boolean projected) {
    this.places = places;
    this.often = projected ? OFTEN_PROJECTED : OFTEN;
  }

  /** Gets to know a line. */
  void add(NestedLines.Cutting line) {
    gaps.put(line.number(), new ArrayList<>());
    corners.put(line.number(), corners(line.path()));
  }

  private static List<Double> corners(Path path) {
    List<Double> corners = new ArrayList<>();
    List<Curve> curves = path.curves();
    double length = curves.get(0).length();
    for (int i = 1; i < curves.size(); i++) {
      if (isBend(curves.get(i - 1), curves.get(i))) {
        corners.add(length);
      }
      length += curves.get(i).length();
    }
    if (path.isClosed() && isBend(curves.get(curves.size() - 1), curves.get(0))) {
      corners.add(0.0);
      corners.add(length);
    }
    return corners;
  }

  private static boolean isBend(Curve first, Curve second) {
    return first.tangent(1).dot(second.tangent(0)) < BEND;
  }

  /** A line without its gaps; dashes begin anew at each name. */
  List<Path> parts(NestedLines.Cutting line) {
    List<Gap> cuts = new ArrayList<>(gaps.get(line.number()));
    if (cuts.isEmpty()) {
      return List.of(line.path());
    }
    cuts.sort(Comparator.comparingDouble(Gap::from));
    List<Path> parts = new ArrayList<>();
    double from = 0;
    for (Gap cut : cuts) {
      if (cut.from() > from + 1e-6) {
        parts.add(line.path().part(from, cut.from()));
      }
      from = cut.to();
    }
    double length = line.path().length();
    if (from < length - 1e-6) {
      Path last = line.path().part(from, length);
      boolean around = line.path().isClosed() && cuts.get(0).from() > 1e-6;
      if (around) {
        parts.set(0, last.then(parts.get(0)));
      } else {
        parts.add(last);
      }
    }
    return parts;
  }

  /** The stretches of a line, each on one tile, that are to have a name each. */
  List<Stretch> stretches(NestedLines.Cutting line) {
    List<Stretch> stretches = new ArrayList<>();
    double length = line.path().length();
    int steps = (int) Math.max(1, Math.ceil(length / NamePlaces.STEP));
    Cell cell = null;
    double from = 0;
    for (int i = 0; i <= steps + 1; i++) {
      double at = Math.min(length, length * i / steps);
      Cell here = i > steps ? null : places.cell(line.path().atLength(at));
      if (here != cell) {
        double to = i > steps ? length : length * (i - 1) / steps;
        if (cell != null && to > from) {
          int count = (int) Math.max(1, Math.round((to - from) / often));
          for (int k = 0; k < count; k++) {
            double step = (to - from) / count;
            stretches.add(new Stretch(line, cell, from + k * step, from + (k + 1) * step));
          }
        }
        cell = here;
        from = at;
      }
    }
    return stretches;
  }

  /** Writes a name into a stretch of line; false where there is no room. */
  boolean write(Stretch stretch) {
    List<Integer> owners = stretch.line().owners();
    String text = places.phrase(owners);
    for (String role : NamePlaces.ROLES) {
      double width = places.width(text, role) + 2 * PAD;
      double halfHeight = places.halfHeight(text, role);
      LineObstacles.Slot best = null;
      double bestAt = 0;
      double bestScore = Double.NEGATIVE_INFINITY;
      for (double at = stretch.from() + width / 2;
          at <= stretch.to() - width / 2;
          at += NamePlaces.STEP) {
        double score = NamePlaces.AMPLE - 0.02 * Math.abs(at - stretch.middle());
        if (score <= bestScore || !isAmidst(stretch.line(), at - width / 2, at + width / 2)) {
          continue;
        }
        LineObstacles.Slot slot = stretch.slot(at, width, halfHeight, places.em(role));
        if (slot == null || !places.isInside(slot, stretch.cell())) {
          continue;
        }
        double clear = places.free(slot, stretch.line(), at);
        if (!isOffJoins(stretch.cell(), slot.centre())) {
          score -= 1;
        }
        if (clear >= NamePlaces.LEAST && clear - NamePlaces.AMPLE + score > bestScore) {
          best = slot;
          bestAt = at;
          bestScore = clear - NamePlaces.AMPLE + score;
        }
      }
      if (best != null) {
        gaps.get(stretch.line().number()).add(new Gap(bestAt - width / 2, bestAt + width / 2));
        places.write(stretch.cell(), owners, best, role);
        return true;
      }
    }
    return false;
  }

  /** Whether a gap hides neither a corner nor an end of the line. */
  private boolean isAmidst(NestedLines.Cutting line, double from, double to) {
    return from >= FROM_END
        && to <= line.path().length() - FROM_END
        && corners.get(line.number()).stream()
            .noneMatch(corner -> corner > from - FROM_CORNER && corner < to + FROM_CORNER);
  }

  private static boolean isOffJoins(Cell cell, Point point) {
    return cell.core().expanded(-JOIN_MARKS).contains(point);
  }
}
