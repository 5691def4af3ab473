package org.lapmark.grade.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;

/** Tells a rectangle, and what is marked on it, by measurements from its cut edges. */
public final class Ruling {
  /** Places nearer to each other than this, in millimetres, are the same. */
  private static final double SAME = 1e-6;

  private final Panel panel;
  private final Box box;
  private final Map<RuledMark.Side, Double> allowances = new EnumMap<>(RuledMark.Side.class);

  private Ruling(Panel panel) {
    this.panel = panel;
    this.box = panel.outline().bounds();
  }

  /**
   * The cut size.
   *
   * @param panel the panel
   * @param allowances millimetres by edge
   * @param bias whether it is cut at 45 degrees to the grain
   * @return nothing if it isn't a rectangle with one allowance a side
   */
  public static Optional<StatedSize> of(Panel panel, Map<String, Double> allowances, boolean bias) {
    Ruling ruling = new Ruling(panel);
    for (Edge edge : panel.edges()) {
      Optional<RuledMark.Side> side = ruling.side(edge);
      double own = allowances.get(edge.name());
      if (side.isEmpty()
          || Math.abs(ruling.allowances.getOrDefault(side.get(), own) - own) > SAME) {
        return Optional.empty();
      }
      ruling.allowances.put(side.get(), own);
    }
    if (ruling.allowances.size() < 4) {
      return Optional.empty();
    }
    return Optional.of(
        new StatedSize(
            ruling.left() + ruling.box.width() + ruling.allowances.get(RuledMark.Side.RIGHT),
            ruling.top() + ruling.box.height() + ruling.allowances.get(RuledMark.Side.BOTTOM),
            bias,
            ruling.marks()));
  }

  /**
   * Whether all that is marked on a panel can be told by measurements. Curves can't; and what is
   * more than a line or a point, or is known by its sign, is traced more surely than ruled. A panel
   * with style lines is the draft of others, and is kept on paper.
   */
  public static boolean canTell(Panel panel) {
    return panel.marks().stream().allMatch(Mark::isMeasured);
  }

  private static boolean isStraight(Path path) {
    return path.curves().stream().allMatch(Line.class::isInstance);
  }

  private double left() {
    return allowances.get(RuledMark.Side.LEFT);
  }

  private double top() {
    return allowances.get(RuledMark.Side.TOP);
  }

  private Optional<RuledMark.Side> side(Edge edge) {
    if (!isStraight(edge.path())) {
      return Optional.empty();
    }
    Box own = edge.path().bounds();
    if (own.height() <= SAME) {
      return own.minY() - box.minY() <= SAME
          ? Optional.of(RuledMark.Side.TOP)
          : box.maxY() - own.maxY() <= SAME ? Optional.of(RuledMark.Side.BOTTOM) : Optional.empty();
    }
    if (own.width() <= SAME) {
      return own.minX() - box.minX() <= SAME
          ? Optional.of(RuledMark.Side.LEFT)
          : box.maxX() - own.maxX() <= SAME ? Optional.of(RuledMark.Side.RIGHT) : Optional.empty();
    }
    return Optional.empty();
  }

  private RuledMark.Spot spot(Point point) {
    return new RuledMark.Spot(point.x() - box.minX() + left(), point.y() - box.minY() + top());
  }

  private List<RuledMark> marks() {
    Map<RuledMark.Side, List<RuledMark.Notch>> notches = new EnumMap<>(RuledMark.Side.class);
    List<RuledMark> lines = new ArrayList<>();
    Map<String, List<RuledMark.Spot>> points = new LinkedHashMap<>();
    panel.marks(Mark.Notch.class).forEach(notch -> notch(notch, notches));
    for (LineMark line : panel.marks(LineMark.class)) {
      if (line.isDrawn() && isStraight(line.path())) {
        lines.add(line(line));
      }
    }
    for (PointMark.DrillPoint drill : panel.marks(PointMark.DrillPoint.class)) {
      points.computeIfAbsent(drill.name(), name -> new ArrayList<>()).add(spot(drill.point()));
    }
    List<RuledMark> marks = new ArrayList<>();
    notches.forEach(
        (side, list) -> {
          list.sort(Comparator.comparingDouble(RuledMark.Notch::at));
          marks.add(new RuledMark.Notches(side, list));
        });
    marks.addAll(lines);
    points.forEach((name, spots) -> marks.add(new RuledMark.Points(name, spots)));
    return marks;
  }

  private void notch(Mark.Notch notch, Map<RuledMark.Side, List<RuledMark.Notch>> notches) {
    for (Edge edge : panel.edges()) {
      if (edge.name().equals(notch.edge())) {
        RuledMark.Side side = side(edge).orElseThrow();
        RuledMark.Spot spot = spot(edge.path().atLength(notch.at()));
        double at = side.isAcross() ? spot.across() : spot.down();
        NotchSet stated = side.isForwards() ? notch.set() : notch.set().reversed();
        // Without an allowance nothing can be cut out: it is a short mark, as on paper.
        NotchSet set = allowances.get(side) > 0 ? stated : stated.cut(NotchSet.Cut.SLIT);
        List<RuledMark.Notch> all = notches.computeIfAbsent(side, key -> new ArrayList<>());
        if (all.stream().noneMatch(one -> Math.abs(one.at() - at) <= SAME)) {
          all.add(new RuledMark.Notch(at, set));
        }
      }
    }
  }

  private RuledMark line(LineMark mark) {
    RuledMark.Called called = new RuledMark.Called(mark.kindName(), mark.name());
    Path path = mark.path();
    List<RuledMark.Spot> through = new ArrayList<>();
    List<Curve> curves = path.curves();
    through.add(spot(path.start()));
    for (int i = 0; i < curves.size(); i++) {
      boolean goesOn =
          i + 1 < curves.size()
              && Math.abs(curves.get(i).tangent(1).cross(curves.get(i + 1).tangent(0))) <= SAME;
      if (!goesOn) {
        through.add(spot(curves.get(i).end()));
      }
    }
    if (through.size() == 2) {
      RuledMark.Spot one = through.get(0);
      RuledMark.Spot other = through.get(1);
      if (Math.abs(one.down() - other.down()) <= SAME) {
        double end = left() + box.width();
        return parallel(called, true, one.down(), one.across(), other.across(), left(), end);
      }
      if (Math.abs(one.across() - other.across()) <= SAME) {
        double end = top() + box.height();
        return parallel(called, false, one.across(), one.down(), other.down(), top(), end);
      }
    }
    return new RuledMark.Through(called, through);
  }

  private static RuledMark parallel(
      RuledMark.Called called,
      boolean across,
      double at,
      double one,
      double other,
      double first,
      double last) {
    double from = Math.min(one, other);
    double to = Math.max(one, other);
    boolean whole = from <= first + SAME && to >= last - SAME;
    return new RuledMark.Parallel(called, across, at, from, to, whole);
  }
}
