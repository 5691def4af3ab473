package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Inside;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchFit;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * How marks follow from a panel to one derived from it. Whatever knows the kinds of marks one by
 * one stands here.
 */
final class Following {
  /** A mark this near to the new outline, in millimetres, still lies on the panel. */
  private static final double MARGIN = 1e-3;

  /** Stretches of a line shorter than this aren't worth drawing. */
  private static final double LEAST = 0.5;

  /** How far a notch may lie from the edge it has moved with. */
  private static final double OFF_EDGE = 0.05;

  /** A grainline shorter than this is drawn anew where there is more room. */
  private static final double SHORT_GRAIN = 40;

  private static final int RAYS = 15;

  /** How far a mark of one half may lie from the image of the other's, in millimetres. */
  private static final double OFF_IMAGE = 1;

  private Following() {}

  /** A line that is a mark; null for marks of other kinds. */
  static Path line(Mark mark) {
    if (mark instanceof Mark.Placement placement) {
      return placement.path();
    }
    if (mark instanceof Mark.StyleLine line) {
      return line.path();
    }
    return mark instanceof Mark.FoldLine fold ? fold.path() : null;
  }

  /** The name of a line that is a mark. */
  static String name(Mark mark) {
    if (mark instanceof Mark.Placement placement) {
      return placement.name();
    }
    return mark instanceof Mark.StyleLine line ? line.name() : ((Mark.FoldLine) mark).name();
  }

  /** The same kind of line elsewhere. */
  static Mark withLine(Mark mark, Path path) {
    if (mark instanceof Mark.Placement placement) {
      return new Mark.Placement(placement.name(), path);
    }
    return mark instanceof Mark.StyleLine line
        ? new Mark.StyleLine(line.name(), path)
        : new Mark.FoldLine(((Mark.FoldLine) mark).name(), path);
  }

  /** Whether a mark stands by itself, on no edge. */
  static boolean isPoint(Mark mark) {
    return mark instanceof Mark.Buttonhole || mark instanceof Mark.MatchPoint;
  }

  /** The same notch elsewhere. */
  static Mark.Notch withPlace(Mark.Notch notch, String edge, double at) {
    return new Mark.Notch(edge, at, notch.set());
  }

  /** Whether a mark's place is stated along an edge. */
  static boolean isOnEdge(Mark mark) {
    return mark instanceof Mark.Notch || mark instanceof Mark.Dart || mark instanceof Mark.Pleat;
  }

  /** Every mark that isn't stated along an edge, under a map that keeps lengths. */
  static List<Mark> moved(List<Mark> marks, Affine map) {
    List<Mark> moved = new ArrayList<>();
    for (Mark mark : marks) {
      if (!isOnEdge(mark)) {
        moved.add(mark.transformed(map, edge -> 0));
      }
    }
    return moved;
  }

  /**
   * The marks of a panel that lie on a part of it.
   *
   * @param panel the panel
   * @param edges the part's edges, which keep the names of those that they are stretches of
   * @param cut the name of the line along which it was cut, which isn't a mark any more
   * @param notices told of darts, pleats, buttonholes and sets of notches that the line cuts
   *     through
   */
  static List<Mark> onPart(
      Panel panel, List<Edge> edges, String cut, Consumer<PanelException> notices) {
    List<Mark> kept = new ArrayList<>();
    Path outline = outline(edges);
    Inside inside = new Inside(outline, MARGIN);
    FollowingIntakes intakes = new FollowingIntakes(edges, 0);
    for (Mark mark : panel.marks()) {
      if (mark instanceof Mark.Notch notch) {
        Path old = Ring.edge(panel, notch.edge()).path();
        Point foot = old.atLength(notch.at());
        if (!add(panel.name(), notch, old, foot, MARGIN, edges, kept)) {
          notices.accept(leftOut(panel, notch).at(foot));
        }
      } else if (mark instanceof Mark.Intake intake) {
        Path old = Ring.edge(panel, intake.edge()).path();
        Optional<Mark.Intake> moved = intakes.moved(intake, old);
        moved.ifPresent(kept::add);
        if (moved.isEmpty() && standsOn(edges, intake, old)) {
          notices.accept(leftOut(panel, intake));
        }
      } else if (line(mark) == null || !name(mark).equals(cut)) {
        clipped(mark, inside, kept);
        if (mark instanceof Mark.Buttonhole hole
            && inside.has(hole.from()) != inside.has(hole.to())) {
          notices.accept(leftOut(panel, hole));
        }
      }
    }
    return grained(kept, panel, outline);
  }

  /** Whether a part has the stretch that a dart or pleat takes up, or some of it. */
  private static boolean standsOn(List<Edge> edges, Mark.Intake intake, Path old) {
    for (double at : new double[] {intake.from(), intake.to()}) {
      Point foot = old.atLength(at);
      for (Edge edge : edges) {
        if (FollowingIntakes.isFrom(edge, intake.edge()) && edge.path().distance(foot) <= MARGIN) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * The marks of a panel on one whose edges lie beside its own.
   *
   * @param panel the panel
   * @param edges the other's edges
   * @param distances how far each edge has moved outwards, in millimetres
   * @param which which marks follow besides the grainline and style lines
   * @param notices told what is left out
   */
  static List<Mark> beside(
      Panel panel,
      List<Edge> edges,
      Map<String, Double> distances,
      PanelDerivation.Marks which,
      Consumer<PanelException> notices) {
    boolean still = distances.values().stream().allMatch(distance -> distance == 0);
    if (still && which != PanelDerivation.Marks.NONE) {
      return panel.marks();
    }
    List<Mark> kept = new ArrayList<>();
    Path outline = outline(edges);
    Inside inside = new Inside(outline, MARGIN);
    double farthest = distances.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    FollowingIntakes intakes = new FollowingIntakes(edges, farthest);
    int left = 0;
    int followed = 0;
    for (Mark mark : panel.marks()) {
      int before = kept.size();
      Point place = null;
      boolean unmoved = isOnEdge(mark) && distances.get(edge(mark)) == 0;
      boolean all =
          which == PanelDerivation.Marks.ALL
              || which == PanelDerivation.Marks.OF_UNMOVED_EDGES && unmoved;
      if (mark instanceof Mark.Notch notch && all) {
        Path path = Ring.edge(panel, notch.edge()).path();
        Point outwards = path.tangentAtLength(notch.at()).quarterTurn().times(-1);
        Point foot = path.atLength(notch.at()).plus(outwards.times(distances.get(notch.edge())));
        add(panel.name(), notch, path, foot, OFF_EDGE, edges, kept);
        place = foot;
      } else if (mark instanceof Mark.Intake intake && all) {
        intakes.moved(intake, Ring.edge(panel, intake.edge()).path()).ifPresent(kept::add);
      } else if (mark instanceof Mark.StyleLine style) {
        kept.add(farthest > 0 ? longer(style, 4 * farthest) : style);
      } else if (mark instanceof Mark.Grainline || all) {
        clipped(mark, inside, kept);
      }
      if (mark instanceof Mark.Grainline || mark instanceof Mark.StyleLine) {
        continue;
      }
      if (!all) {
        left++;
      } else if (kept.size() == before) {
        PanelException notice = leftOut(panel, mark);
        notices.accept(place == null ? notice : notice.at(place));
      } else {
        followed++;
      }
    }
    if (which == PanelDerivation.Marks.OF_UNMOVED_EDGES && left > 0) {
      notices.accept(
          PanelCode.MARKS_NOT_STATED.exception(
              "panel", panel.name(), "left", left, "kept", followed));
    }
    return grained(kept, panel, outline);
  }

  private static String edge(Mark mark) {
    return mark instanceof Mark.Notch notch ? notch.edge() : ((Mark.Intake) mark).edge();
  }

  /** What is said of a mark that a derived panel doesn't have. */
  static PanelException leftOut(Panel panel, Mark mark) {
    return leftOut(panel, mark, false);
  }

  /** The same of a mark whose edge the derived panel doesn't have either, if so. */
  static PanelException leftOut(Panel panel, Mark mark, boolean withEdge) {
    if (mark instanceof Mark.Intake intake) {
      return PanelCode.INTAKE_LEFT_OUT.exception(
          "panel",
          panel.name(),
          "mark",
          intake.name(),
          "edge",
          intake.edge(),
          "gone",
          withEdge ? "yes" : "no",
          "width",
          intake.width());
    }
    String kind = "line";
    String name = "";
    if (mark instanceof Mark.Notch notch) {
      kind = "notch";
      name = notch.edge();
    } else if (mark instanceof Mark.DrillPoint drill) {
      kind = "drill";
      name = drill.name();
    } else if (mark instanceof Mark.Buttonhole hole) {
      kind = "buttonhole";
      name = hole.name();
    } else if (mark instanceof Mark.MatchPoint match) {
      kind = "match";
      name = match.name();
    } else if (line(mark) != null) {
      name = name(mark);
    }
    return PanelCode.MARK_LEFT_OUT.exception("panel", panel.name(), "kind", kind, "name", name);
  }

  /**
   * A style line that goes on straight at both ends, to meet an outline that has moved outwards.
   */
  private static Mark longer(Mark.StyleLine style, double by) {
    Path path = style.path();
    Curve first = path.curves().get(0);
    Curve last = path.curves().get(path.curves().size() - 1);
    List<Curve> curves = new ArrayList<>();
    curves.add(new Line(path.start().minus(first.tangent(0).times(by)), path.start()));
    curves.addAll(path.curves());
    curves.add(new Line(path.end(), path.end().plus(last.tangent(1).times(by))));
    return new Mark.StyleLine(style.name(), new Path(curves));
  }

  private static boolean isAtEnd(double at, Path path) {
    return at <= OFF_EDGE || at >= path.length() - OFF_EDGE;
  }

  /** Adds a notch where it belongs; says no if it belongs there and only part of its set fits. */
  private static boolean add(
      String panel,
      Mark.Notch notch,
      Path old,
      Point foot,
      double most,
      List<Edge> edges,
      List<Mark> kept) {
    Edge best = null;
    double least = most;
    for (Edge edge : edges) {
      boolean own = FollowingIntakes.isFrom(edge, notch.edge());
      double distance = own ? edge.path().distance(foot) : Double.POSITIVE_INFINITY;
      if (distance < least) {
        least = distance;
        best = edge;
      }
    }
    if (best == null) {
      return true;
    }
    double at = best.path().nearestLength(foot);
    if (isAtEnd(at, best.path()) && !isAtEnd(notch.at(), old)) {
      // Where an edge is cut its new end is seen anyway.
      return true;
    }
    Mark.Notch moved = withPlace(notch, best.name(), at);
    try {
      NotchFit.check(panel, edges, best, moved);
      kept.add(moved);
      return true;
    } catch (PanelException e) {
      // Half of a double notch lies beyond the cut: a notch there would say nothing.
      return false;
    }
  }

  private static void clipped(Mark mark, Inside inside, List<Mark> kept) {
    if (mark instanceof Mark.DrillPoint drill) {
      if (inside.has(drill.point())) {
        kept.add(mark);
      }
    } else if (mark instanceof Mark.MatchPoint match) {
      if (inside.has(match.point())) {
        kept.add(mark);
      }
    } else if (mark instanceof Mark.Buttonhole hole) {
      if (inside.has(hole.from()) && inside.has(hole.to())) {
        kept.add(mark);
      }
    } else if (mark instanceof Mark.Grainline grain) {
      kept.add(grain);
    } else if (line(mark) != null) {
      Path path = line(mark);
      for (Inside.Stretch stretch : inside.stretches(path)) {
        Path part = stretch.of(path);
        if (part != null && part.length() > Math.min(LEAST, path.length() / 2)) {
          kept.add(withLine(mark, part));
        }
      }
    }
  }

  /**
   * The marks of one half of a panel that the other half, when it is folded onto it, doesn't have.
   *
   * @param panel the whole
   * @param kept the marks of the half that is kept
   * @param half its edges
   * @param other the other half's edges
   * @param cut the name of the line between them
   * @param mirror the map that lays the other half on the half
   */
  static List<Mark> alone(
      Panel panel, List<Mark> kept, List<Edge> half, List<Edge> other, String cut, Affine mirror) {
    List<Mark> alone = new ArrayList<>();
    for (Mark mark : onPart(panel, other, cut, notice -> {})) {
      Point place = place(mark, other);
      if (place != null) {
        Point image = mirror.apply(place);
        boolean paired = false;
        for (Mark one : kept) {
          paired |= one.getClass() == mark.getClass() && distance(one, half, image) <= OFF_IMAGE;
        }
        if (!paired) {
          alone.add(mark);
        }
      }
    }
    return alone;
  }

  private static double distance(Mark mark, List<Edge> edges, Point point) {
    return line(mark) == null ? place(mark, edges).distance(point) : line(mark).distance(point);
  }

  /** The place by which a mark is known; null for a grainline, which has none. */
  private static Point place(Mark mark, List<Edge> edges) {
    if (mark instanceof Mark.Notch notch) {
      for (Edge edge : edges) {
        if (edge.name().equals(notch.edge())) {
          return edge.path().atLength(notch.at());
        }
      }
    }
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
    Path path = line(mark);
    return path == null || mark instanceof Mark.StyleLine ? null : path.atLength(path.length() / 2);
  }

  /** Marks whose grainline lies inside an outline. */
  private static List<Mark> grained(List<Mark> marks, Panel panel, Path outline) {
    List<Mark> grained = new ArrayList<>();
    for (Mark mark : marks) {
      grained.add(mark instanceof Mark.Grainline grain ? grainline(grain, outline) : mark);
    }
    return grained;
  }

  /**
   * A grainline of the same direction inside an outline: itself, or as much of it as lies inside,
   * or one where there is more room.
   */
  static Mark.Grainline grainline(Mark.Grainline grain, Path outline) {
    Inside inside = new Inside(outline, 0);
    Line own = inside.longest(grain.from(), grain.to()).orElse(null);
    double length = grain.from().distance(grain.to());
    if (own != null && own.length() >= length - 2 * MARGIN || isAlong(outline, grain)) {
      return grain;
    }
    if (own != null && own.length() >= Math.min(SHORT_GRAIN, length / 2)) {
      return between(own, 0.05);
    }
    Point along = grain.to().minus(grain.from()).unit();
    Point aside = along.quarterTurn();
    Box box = outline.bounds();
    Point middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    double reach = box.width() + box.height();
    Line best = null;
    for (int i = 0; i < RAYS; i++) {
      // From the middle outwards, so that the middle is taken where several are alike.
      int step = (i + 1) / 2 * (i % 2 == 0 ? 1 : -1);
      Point at = middle.plus(aside.times(reach / 2 * step / (RAYS / 2 + 1)));
      Line here =
          inside.longest(at.minus(along.times(reach)), at.plus(along.times(reach))).orElse(null);
      if (here != null && (best == null || here.length() > 1.02 * best.length())) {
        best = here;
      }
    }
    return best == null ? grain : between(best, 0.15);
  }

  /** Whether a grainline lies on the outline, as one on a fold does. */
  private static boolean isAlong(Path outline, Mark.Grainline grain) {
    return outline.distance(grain.from()) <= MARGIN
        && outline.distance(grain.to()) <= MARGIN
        && outline.distance(grain.from().towards(grain.to(), 0.5)) <= MARGIN;
  }

  private static Mark.Grainline between(Line line, double margin) {
    return new Mark.Grainline(
        line.start().towards(line.end(), margin), line.end().towards(line.start(), margin));
  }

  static Path outline(List<Edge> edges) {
    List<Curve> curves = new ArrayList<>();
    edges.forEach(edge -> curves.addAll(edge.path().curves()));
    return new Path(curves);
  }
}
