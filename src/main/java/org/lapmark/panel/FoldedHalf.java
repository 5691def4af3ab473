package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * The half of a symmetrical piece that paper shows when the piece is cut on folded cloth. The piece
 * itself stays whole everywhere else: in seams, measures, figures and layouts.
 *
 * <p>All paths are in the panel's coordinates. The half is the one that a walk clockwise on paper
 * meets after the fold's first end.
 *
 * @param fold the fold, from the cutting line to the cutting line, by the first end
 * @param cuttingLine the cutting line of the half, open, from the fold's first end to its last
 * @param stitching the stitching line's stretches in this half, by the edge each belongs to, where
 *     the edge has an allowance
 * @param marks the marks in this half; a grainline that lies on the fold is moved beside it
 * @param notches notches as drawn in this half
 */
public record FoldedHalf(
    Line fold, Path cuttingLine, List<Path> stitching, List<Mark> marks, List<Path> notches) {
  /** How far the two halves may be from lying on each other, in millimetres. */
  public static final double TOLERANCE = 0.1;

  private static final double STEP = 2;

  /** How many stretches of a curve are looked at for a crossing of the fold. */
  private static final int SAMPLES = 12;

  /** Halves are compared at places so far from each other, in millimetres. */
  private static final double COARSE = 6;

  private static final double ON_FOLD = 0.01;

  /** A grainline beside the fold begins and ends this share of the half's length from its ends. */
  private static final double GRAIN_MARGIN = 0.2;

  /** Copies the lists. */
  public FoldedHalf {
    stitching = List.copyOf(stitching);
    marks = List.copyOf(marks);
    notches = List.copyOf(notches);
  }

  /**
   * Folds a piece's shape.
   *
   * @param shape the whole piece
   * @param first where the fold begins: an edge or chain, which is folded in its middle, or the
   *     corner with which an edge begins
   * @param last where it ends, alike
   * @return its half
   * @throws PanelException when there is no such place, when the halves don't lie on each other, or
   *     when a mark lies in one half alone
   */
  public static FoldedHalf of(PieceShape shape, String first, String last) {
    Panel panel = shape.panel();
    Point from = place(panel, first);
    Point to = place(panel, last);
    if (first.equals(last) || from.distance(to) < 1) {
      throw PanelCode.FOLD_WITHOUT_LENGTH.exception("panel", panel.name(), "place", last);
    }
    Point along = to.minus(from).unit();
    Path cutting = shape.cuttingLine().path();
    double start = crossing(cutting, from, along.times(-1));
    double end = crossing(cutting, to, along);
    double between = Math.abs(end - start);
    if (Math.min(between, cutting.length() - between) < ON_FOLD) {
      double apart = apart(cutting, cutting, Opening.mirror(from, along));
      throw PanelCode.FOLD_HALVES_DIFFER.exception("panel", panel.name(), "apart", apart);
    }
    Path half = around(cutting, start, end);
    Path other = around(cutting, end, start);
    Affine mirror = Opening.mirror(from, along);
    double apart = Math.max(apart(half, other, mirror), apart(other, half, mirror));
    if (apart > TOLERANCE) {
      throw PanelCode.FOLD_HALVES_DIFFER.exception("panel", panel.name(), "apart", apart);
    }
    Line fold = new Line(half.start(), half.end());
    return new FoldedHalf(
        fold,
        half,
        stitching(shape, from, to),
        marks(panel, fold, mirror),
        notches(shape, from, along, mirror));
  }

  /**
   * The half's whole border.
   *
   * @return a closed path: the cutting line, then the fold back to its start
   */
  public Path outline() {
    return cuttingLine.then(new Path(List.of(new Line(fold.end(), fold.start()))));
  }

  /** The middle of an edge or chain, or the corner with which an edge begins. */
  static Point place(Panel panel, String name) {
    if (!panel.isOneLine(name)) {
      throw panel.inParts(name);
    }
    Path line = panel.line(name);
    if (line != null) {
      return line.atLength(line.length() / 2);
    }
    for (Edge edge : panel.edges()) {
      if (edge.from().equals(name)) {
        return edge.path().start();
      }
    }
    List<String> known = new ArrayList<>(panel.chains().keySet());
    panel.edges().forEach(edge -> known.add(edge.name()));
    panel.edges().forEach(edge -> known.add(edge.from()));
    throw PanelCode.FOLD_PLACE_UNKNOWN.exception(
        "panel", panel.name(), "place", name, "places", Known.listed(known));
  }

  /** How far a point lies to the side of the fold on which the half lies, clockwise. */
  private static double aside(Point point, Point from, Point along) {
    return point.minus(from).cross(along);
  }

  /**
   * The arc length at which a closed line crosses the fold, where it is nearest to an end and not
   * before it: a wide allowance beyond the fold's other end may be nearer.
   */
  private static double crossing(Path line, Point end, Point along) {
    double best = line.nearestLength(end);
    if (line.atLength(best).distance(end) < ON_FOLD) {
      return best;
    }
    double distance = Double.POSITIVE_INFINITY;
    double before = 0;
    for (Curve curve : line.curves()) {
      for (int i = 0; i < SAMPLES; i++) {
        double low = (double) i / SAMPLES;
        double high = (i + 1.0) / SAMPLES;
        if (aside(curve.at(low), end, along) <= 0 != aside(curve.at(high), end, along) <= 0) {
          double t = root(curve::at, low, high, end, along);
          Point there = curve.at(t);
          double far = there.distance(end);
          if (far < distance && there.minus(end).dot(along) > -ON_FOLD) {
            distance = far;
            best = before + curve.lengthTo(t);
          }
        }
      }
      before += curve.length();
    }
    return best;
  }

  private static double root(
      DoubleFunction<Point> line, double low, double high, Point at, Point along) {
    boolean negative = aside(line.apply(low), at, along) <= 0;
    double a = low;
    double b = high;
    for (int i = 0; i < 60; i++) {
      double middle = (a + b) / 2;
      if (aside(line.apply(middle), at, along) <= 0 == negative) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return (a + b) / 2;
  }

  private static Path around(Path closed, double from, double to) {
    if (from < to) {
      return closed.part(from, to);
    }
    double length = closed.length();
    if (length - from < ON_FOLD) {
      return closed.part(0, to);
    }
    return to < ON_FOLD
        ? closed.part(from, length)
        : closed.part(from, length).then(closed.part(0, to));
  }

  /** How far the two halves are from lying on each other, as far as they are looked at. */
  private static double apart(Path half, Path other, Affine mirror) {
    double length = half.length();
    double across = other.length();
    int steps = Math.max(32, (int) Math.ceil(length / COARSE));
    double most = 0;
    for (int i = 0; i <= steps; i++) {
      Point point = mirror.apply(half.atLength(length * i / steps));
      // The other half is travelled the other way. Where it isn't at the same length, it may still
      // be there: what is nearest takes longer to find.
      double apart = other.atLength(across * (steps - i) / steps).distance(point);
      most = Math.max(most, apart <= TOLERANCE / 2 ? apart : other.distance(point));
    }
    return most;
  }

  private static List<Path> stitching(PieceShape shape, Point from, Point to) {
    Path outline = shape.panel().outline();
    double length = outline.length();
    double start = outline.nearestLength(from);
    double end = outline.nearestLength(to);
    if (end <= start) {
      end += length;
    }
    List<Path> parts = new ArrayList<>();
    double before = 0;
    for (int round = 0; round < 2; round++) {
      for (Edge edge : shape.panel().edges()) {
        double own = edge.path().length();
        double low = Math.max(start, before) - before;
        double high = Math.min(end, before + own) - before;
        if (high - low > ON_FOLD && shape.allowances().getOrDefault(edge.name(), 0.0) > 0) {
          for (double[] part : sewn(shape.panel(), edge, low, high)) {
            parts.add(edge.path().part(part[0], part[1]));
          }
        }
        before += own;
      }
    }
    return parts;
  }

  /** What of a stretch of an edge isn't taken up by darts. */
  private static List<double[]> sewn(Panel panel, Edge edge, double low, double high) {
    List<double[]> parts = new ArrayList<>();
    double at = low;
    for (Mark.Dart dart : Darts.on(panel, edge.name())) {
      if (Math.min(high, dart.from()) - at > ON_FOLD) {
        parts.add(new double[] {at, Math.min(high, dart.from())});
      }
      at = Math.max(at, dart.to());
    }
    if (high - at > ON_FOLD) {
      parts.add(new double[] {at, high});
    }
    return parts;
  }

  private static List<Path> notches(PieceShape shape, Point from, Point along, Affine mirror) {
    List<Path> kept = new ArrayList<>();
    for (Path notch : shape.notches()) {
      Point mirrored = mirror.apply(inner(notch));
      if (shape.notches().stream()
          .noneMatch(other -> inner(other).distance(mirrored) <= 5 * TOLERANCE)) {
        throw alone(shape.panel(), "notch", edgeOf(shape.panel(), inner(notch)), notch.start());
      }
      if (aside(inner(notch), from, along) >= -ON_FOLD) {
        kept.add(inHalf(shape, notch, from, along));
      }
    }
    return kept;
  }

  /** A wedge on the fold is cut by it; a slit on it becomes one. */
  private static Path inHalf(PieceShape shape, Path notch, Point from, Point along) {
    if (notch.curves().size() == 1) {
      boolean onFold =
          Math.abs(aside(notch.start(), from, along)) <= ON_FOLD
              && Math.abs(aside(notch.end(), from, along)) <= ON_FOLD;
      Path line = shape.cuttingLine().path();
      boolean inAllowance = line.distance(notch.start()) <= ON_FOLD;
      return onFold && inAllowance
          ? Notches.besideFold(line, notch.start(), notch.end(), along.quarterTurn().times(-1))
          : notch;
    }
    boolean first = aside(notch.start(), from, along) >= -ON_FOLD;
    boolean last = aside(notch.end(), from, along) >= -ON_FOLD;
    return first && last ? notch : new Path(List.of(notch.curves().get(first ? 0 : 1)));
  }

  /** The inner end of a slit, the tip of a wedge: the same seen from both sides. */
  private static Point inner(Path notch) {
    return notch.curves().get(0).end();
  }

  /** The edge on which a notch is. */
  private static String edgeOf(Panel panel, Point notch) {
    return panel.edges().stream()
        .min(Comparator.comparingDouble(edge -> edge.path().distance(notch)))
        .map(Edge::name)
        .orElse("");
  }

  /**
   * A mark that lies in one half alone.
   *
   * @param name what it is called, or the edge of a notch
   */
  private static PanelException alone(Panel panel, String kind, String name, Point at) {
    return PanelCode.FOLD_MARK_ALONE.exception(
        "panel", panel.name(), "kind", kind, "name", name, "x", at.x(), "y", at.y());
  }

  private static String kind(Mark mark) {
    if (mark instanceof Mark.DrillPoint) {
      return "drill";
    } else if (mark instanceof Mark.MatchPoint) {
      return "match";
    } else if (mark instanceof Mark.Buttonhole) {
      return "buttonhole";
    } else if (mark instanceof Mark.Dart) {
      return "dart";
    } else if (mark instanceof Mark.Pleat) {
      return "pleat";
    }
    return mark instanceof Mark.FoldLine ? "fold" : "placement";
  }

  private static String name(Mark mark) {
    if (mark instanceof Mark.DrillPoint drill) {
      return drill.name();
    } else if (mark instanceof Mark.MatchPoint match) {
      return match.name();
    } else if (mark instanceof Mark.Buttonhole hole) {
      return hole.name();
    } else if (mark instanceof Mark.Intake intake) {
      return intake.name();
    } else if (mark instanceof Mark.FoldLine line) {
      return line.name();
    }
    return mark instanceof Mark.Placement line ? line.name() : "";
  }

  private static List<Mark> marks(Panel panel, Line fold, Affine mirror) {
    Point from = fold.start();
    Point along = fold.end().minus(from).unit();
    List<Mark> kept = new ArrayList<>();
    for (Mark mark : panel.marks()) {
      if (mark instanceof Mark.Grainline grain) {
        kept.add(beside(grain, panel, fold, along));
      } else if (centre(mark) != null) {
        Point mirrored = mirror.apply(centre(mark));
        boolean paired =
            panel.marks().stream()
                .anyMatch(
                    other ->
                        other.getClass() == mark.getClass()
                            && centre(other).distance(mirrored) <= TOLERANCE);
        if (!paired) {
          throw alone(panel, kind(mark), name(mark), centre(mark));
        }
        if (aside(centre(mark), from, along) >= -ON_FOLD) {
          kept.add(mark);
        }
      } else if (!(mark instanceof Mark.Notch)) {
        Optional<Mark> part = line(mark, panel, from, along, mirror);
        part.ifPresent(kept::add);
      }
    }
    return Collections.unmodifiableList(kept);
  }

  /** The place by which a mark that is kept whole is known; null for a line. */
  private static Point centre(Mark mark) {
    if (mark instanceof Mark.DrillPoint drill) {
      return drill.point();
    }
    if (mark instanceof Mark.MatchPoint match) {
      return match.point();
    }
    if (mark instanceof Mark.Buttonhole hole) {
      return hole.from().towards(hole.to(), 0.5);
    }
    if (mark instanceof Mark.Dart dart) {
      return dart.apex();
    }
    if (mark instanceof Mark.Pleat pleat) {
      Line last = pleat.lines().get(pleat.lines().size() - 1);
      return pleat.lines().get(0).end().towards(last.end(), 0.5);
    }
    return null;
  }

  private static Optional<Mark> line(
      Mark mark, Panel panel, Point from, Point along, Affine mirror) {
    Path path = pathOf(mark);
    if (path == null) {
      return Optional.empty();
    }
    List<Path> all =
        panel.marks().stream().map(FoldedHalf::pathOf).filter(one -> one != null).toList();
    double length = path.length();
    int steps = Math.max(16, (int) Math.ceil(length / STEP));
    double first = -1;
    double last = -1;
    for (int i = 0; i <= steps; i++) {
      double here = length * i / steps;
      Point at = path.atLength(here);
      Point mirrored = mirror.apply(at);
      if (all.stream().noneMatch(one -> one.distance(mirrored) <= TOLERANCE)) {
        throw alone(panel, kind(mark), name(mark), at);
      }
      if (aside(at, from, along) >= -ON_FOLD) {
        first = first < 0 ? here : first;
        last = here;
      }
    }
    if (first < 0 || last - first < ON_FOLD) {
      return Optional.empty();
    }
    // Where the line crosses the fold, exactly there.
    if (first > 0) {
      first = root(path::atLength, Math.max(0, first - length / steps), first, from, along);
    }
    if (last < length) {
      last = root(path::atLength, last, Math.min(length, last + length / steps), from, along);
    }
    return Optional.of(withPath(mark, path.part(first, last)));
  }

  private static Path pathOf(Mark mark) {
    if (mark instanceof Mark.Placement placement) {
      return placement.path();
    }
    return mark instanceof Mark.FoldLine line ? line.path() : null;
  }

  private static Mark withPath(Mark mark, Path path) {
    return mark instanceof Mark.Placement placement
        ? new Mark.Placement(placement.name(), path)
        : new Mark.FoldLine(((Mark.FoldLine) mark).name(), path);
  }

  /** The grainline, moved into the half where it isn't whole in it. */
  private static Mark beside(Mark.Grainline grain, Panel panel, Line fold, Point along) {
    double sideOfFrom = aside(grain.from(), fold.start(), along);
    double sideOfTo = aside(grain.to(), fold.start(), along);
    double room = fold.start().distance(fold.end()) * GRAIN_MARGIN;
    if (Math.min(sideOfFrom, sideOfTo) > Math.min(room, 10)) {
      return grain;
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
    return outline.encloses(moved.from()) && outline.encloses(moved.to()) ? moved : grain;
  }
}
