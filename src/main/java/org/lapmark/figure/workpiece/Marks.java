package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;

/**
 * What is marked on a piece, in its panel's coordinates: lines and points, no words.
 *
 * @param inner whether marks inside the panel are shown
 * @param stitching stitching lines
 * @param solid full lines
 * @param dashed broken lines
 * @param drills points to be drilled or pricked through
 * @param matches points that meet others
 * @param signs notches and grain lines, in the panel's order
 */
public record Marks(
    boolean inner,
    List<Path> stitching,
    List<Path> solid,
    List<Path> dashed,
    List<Point> drills,
    List<Point> matches,
    List<Sign> signs) {
  /** A piece on which nothing is marked. */
  public static final Marks NONE =
      new Marks(false, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  /** How far a notch reaches inside the raw edge, on paper. */
  private static final double NOTCH = 2.2;

  /** Between the notches of a set, on paper. */
  private static final double APART = 1.3;

  /** The radius of a drill point's or a match point's ring. */
  private static final double POINT = 0.8;

  /** A mark whose size on paper is the same at any scale. */
  private interface Sign {
    void draw(PlacedBody laid, FlatInk ink);
  }

  public static Marks of(
      Panel panel, Set<Shown> shown, Map<String, Double> allowances, List<String> turned) {
    Marks marks =
        new Marks(
            shown.contains(Shown.MARKS),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>(),
            new ArrayList<>());
    if (shown.contains(Shown.STITCHING)) {
      List<String> edges = new ArrayList<>(panel.edges().stream().map(one -> one.name()).toList());
      edges.removeIf(edge -> !(allowances.getOrDefault(edge, 0.0) > 0));
      marks.stitching.addAll(Lines.beside(panel, allowances, edges, 0, turned));
    }
    Sorted sorted = new Sorted(panel, shown, allowances, marks);
    panel.marks().forEach(mark -> mark.read(sorted));
    return marks;
  }

  /** Adds each mark that is shown. */
  private record Sorted(Panel panel, Set<Shown> shown, Map<String, Double> allowances, Marks marks)
      implements Mark.Reader<Void> {
    private Void add(List<Path> lines, Path line) {
      if (marks.inner) {
        lines.add(line);
      }
      return null;
    }

    private Void add(List<Point> points, Point point) {
      if (marks.inner) {
        points.add(point);
      }
      return null;
    }

    @Override
    public Void notch(Mark.Notch notch) {
      if (shown.contains(Shown.NOTCHES)) {
        double allowance = allowances.getOrDefault(notch.edge(), 0.0);
        marks.signs.add(
            new Notch(
                panel.line(notch.edge()),
                notch.at(),
                notch.set().offsets(),
                notch.set().gaps().stream().mapToDouble(Double::doubleValue).min().orElse(1),
                allowance));
      }
      return null;
    }

    @Override
    public Void grainline(Mark.Grainline grain) {
      if (shown.contains(Shown.GRAIN)) {
        marks.signs.add(new Grain(grain.from(), grain.to(), grain.oneWay()));
      }
      return null;
    }

    /** Where a panel is parted doesn't show on its parts. */
    @Override
    public Void styleLine(LineMark.StyleLine style) {
      return null;
    }

    @Override
    public Void dart(Intake.Dart dart) {
      Path edge = panel.line(dart.edge());
      List<Point> legs = List.of(edge.atLength(dart.from()), dart.apex(), edge.atLength(dart.to()));
      return add(marks.dashed, Path.polyline(legs));
    }

    @Override
    public Void pleat(Intake.Pleat pleat) {
      for (int i = 0; i < pleat.lines().size(); i++) {
        boolean fold =
            pleat.kind() == Intake.PleatKind.KNIFE ? pleat.onwards() == (i == 0) : i != 1;
        add(fold ? marks.solid : marks.dashed, new Path(List.of(pleat.lines().get(i))));
      }
      return null;
    }

    @Override
    public Void buttonhole(PointMark.Buttonhole hole) {
      add(marks.solid, straight(hole.from(), hole.to()));
      Point bar = hole.to().minus(hole.from()).times(0.12).quarterTurn();
      add(marks.solid, straight(hole.from().minus(bar), hole.from().plus(bar)));
      return add(marks.solid, straight(hole.to().minus(bar), hole.to().plus(bar)));
    }

    @Override
    public Void line(LineMark line) {
      return add(marks.dashed, line.path());
    }

    @Override
    public Void drillPoint(PointMark.DrillPoint drill) {
      return add(marks.drills, drill.point());
    }

    @Override
    public Void matchPoint(PointMark.MatchPoint match) {
      return add(marks.matches, match.point());
    }
  }

  private static Path straight(Point from, Point to) {
    return new Path(List.of(new Line(from, to)));
  }

  void draw(PlacedBody laid, FlatInk ink) {
    lines(laid, stitching, "figure-stitching", ink);
    lines(laid, solid, "figure-mark", ink);
    lines(laid, dashed, "figure-mark-dashed", ink);
    drills.forEach(point -> cross(laid, point, new Point(1.5 * POINT, 0), ink));
    matches.forEach(point -> cross(laid, point, new Point(POINT, POINT).times(0.7071), ink));
    signs.forEach(sign -> sign.draw(laid, ink));
  }

  private static void lines(PlacedBody laid, List<Path> lines, String role, FlatInk ink) {
    Affine map = laid.map();
    ink.within(laid.whole(), lines.stream().map(line -> line.transformed(map)).toList(), role);
  }

  /** A ring with a cross: a drill point's reaches beyond it, upright; a match point's slants. */
  private static void cross(PlacedBody laid, Point point, Point arm, FlatInk ink) {
    Point at = laid.map().apply(point);
    if (laid.hides(at)) {
      return;
    }
    Point across = arm.quarterTurn();
    ink.canvas()
        .lines(
            List.of(
                Path.circle(at, POINT),
                Path.polyline(List.of(at.minus(arm), at.plus(arm))),
                Path.polyline(List.of(at.minus(across), at.plus(across)))),
            "figure-mark");
  }

  /**
   * A set of notches, drawn from the raw edge inwards, a little longer than they are cut and far
   * enough apart to be counted, in the proportions of the set.
   */
  private record Notch(Path edge, double at, List<Double> offsets, double least, double allowance)
      implements Sign {
    @Override
    public void draw(PlacedBody laid, FlatInk ink) {
      double apart = APART / ink.scale() / least;
      for (double offset : offsets) {
        double place = at + offset * apart;
        Point inward = edge.tangentAtLength(place).quarterTurn();
        Point raw = laid.map().apply(edge.atLength(place).minus(inward.times(allowance)));
        Point end = raw.plus(laid.map().applyVector(inward).unit().times(NOTCH));
        if (!laid.hides(raw)) {
          ink.canvas().line(Path.polyline(List.of(raw, end)), "figure-notch");
        }
      }
    }
  }

  /** A grain line, of which as much is drawn as isn't left out. */
  private record Grain(Point from, Point to, boolean oneWay) implements Sign {
    @Override
    public void draw(PlacedBody laid, FlatInk ink) {
      Point start = laid.map().apply(from);
      Point tip = laid.map().apply(to);
      for (Cut cut : laid.cuts()) {
        double a = start.minus(cut.from()).dot(cut.away());
        double b = tip.minus(cut.from()).dot(cut.away());
        if (a > 0 && b > 0) {
          return;
        }
        if (a > 0) {
          start = start.towards(tip, a / (a - b));
        } else if (b > 0) {
          tip = start.towards(tip, a / (a - b));
        }
      }
      Point a = start.towards(tip, 0.18);
      Point b = tip.towards(start, 0.18);
      if (a.distance(b) < SHORTEST && !laid.cuts().isEmpty()) {
        return; // Too little of it is left for its arrows.
      }
      ink.canvas().line(Path.polyline(List.of(a, b)), "figure-grain");
      Point along = b.minus(a).unit();
      Point side = along.quarterTurn().times(0.8);
      if (!oneWay) {
        arrow(a, along.times(2.2), side, ink);
      }
      arrow(b, along.times(-2.2), side, ink);
    }

    private static final double SHORTEST = 6;

    private static void arrow(Point tip, Point back, Point side, FlatInk ink) {
      Point one = tip.plus(back).plus(side);
      Path head = Path.polyline(List.of(tip, one, tip.plus(back).minus(side), tip));
      ink.canvas().shape(head, "figure-arrow");
    }
  }
}
