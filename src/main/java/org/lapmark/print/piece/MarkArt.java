package org.lapmark.print.piece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;

/** The lines of marks at true scale. */
public final class MarkArt implements Mark.Reader<List<PieceArt.Stroke>> {
  private static final double APEX = 0.9;
  private static final double ARROW = 2.6;
  private static final double ARROW_HALF = 1;
  private static final double BAR = 2;
  private static final double MATCH = 2.2;

  /** Hatching at the raw end of a pleat: strokes this far apart, over so much of its lines. */
  private static final double HATCH = 5;

  private static final double HATCHED = 30;

  private static final double DRILL_RADIUS = 1.5;
  private static final double DRILL_CROSS = 3;

  private final Panel panel;
  private final Affine map;

  private MarkArt(Panel panel, Affine map) {
    this.panel = panel;
    this.map = map;
  }

  /** The stitching line of an edge without what darts take up: it is sewn with them closed. */
  static List<Path> stitching(Panel panel, Edge edge) {
    List<Intake.Dart> darts = Darts.on(panel, edge.name());
    if (darts.isEmpty()) {
      return List.of(edge.path());
    }
    List<Path> parts = new ArrayList<>();
    double at = 0;
    for (Intake.Dart dart : darts) {
      if (dart.from() - at > Path.JOIN_TOLERANCE) {
        parts.add(edge.path().part(at, dart.from()));
      }
      at = dart.to();
    }
    double length = edge.path().length();
    if (length - at > Path.JOIN_TOLERANCE) {
      parts.add(edge.path().part(at, length));
    }
    return parts;
  }

  /** The lines of a mark; none for notches, which a piece has drawn, and for style lines. */
  static List<PieceArt.Stroke> strokes(Panel panel, Mark mark, Affine map) {
    return mark.read(new MarkArt(panel, map));
  }

  private List<PieceArt.Stroke> onSheet(List<PieceArt.Stroke> strokes) {
    return strokes.stream()
        .map(stroke -> new PieceArt.Stroke(stroke.path().transformed(map), stroke.role()))
        .toList();
  }

  @Override
  public List<PieceArt.Stroke> notch(Mark.Notch notch) {
    return List.of();
  }

  @Override
  public List<PieceArt.Stroke> grainline(Mark.Grainline grain) {
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    Point from = map.apply(grain.from());
    Point to = map.apply(grain.to());
    line(strokes, from, to, "grainline");
    add(strokes, PieceArt.arrow(from, to), "grainline");
    if (!grain.oneWay()) {
      add(strokes, PieceArt.arrow(to, from), "grainline");
    }
    return strokes;
  }

  /** A ring with a cross that is upright on paper. */
  @Override
  public List<PieceArt.Stroke> drillPoint(PointMark.DrillPoint drill) {
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    Point at = map.apply(drill.point());
    add(strokes, Path.circle(at, DRILL_RADIUS), "drill-point");
    for (Point arm : List.of(new Point(DRILL_CROSS, 0), new Point(0, DRILL_CROSS))) {
      line(strokes, at.minus(arm), at.plus(arm), "drill-point");
    }
    return strokes;
  }

  @Override
  public List<PieceArt.Stroke> matchPoint(PointMark.MatchPoint match) {
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    add(strokes, Path.circle(match.point(), MATCH), "match-point");
    Point arm = new Point(MATCH * 0.7071, MATCH * 0.7071);
    Point across = new Point(arm.x(), -arm.y());
    line(strokes, match.point().minus(arm), match.point().plus(arm), "match-point");
    line(strokes, match.point().minus(across), match.point().plus(across), "match-point");
    return onSheet(strokes);
  }

  @Override
  public List<PieceArt.Stroke> line(LineMark line) {
    return onSheet(List.of(new PieceArt.Stroke(line.path(), line.kindName() + "-line")));
  }

  @Override
  public List<PieceArt.Stroke> styleLine(LineMark.StyleLine style) {
    return List.of();
  }

  @Override
  public List<PieceArt.Stroke> dart(Intake.Dart dart) {
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    Path edge = panel.line(dart.edge());
    Point first = edge.atLength(dart.from());
    Point last = edge.atLength(dart.to());
    line(strokes, first, dart.apex(), "dart-leg");
    line(strokes, last, dart.apex(), "dart-leg");
    add(strokes, Path.circle(dart.apex(), APEX), "dart-apex");
    if (dart.press() == Intake.Press.NONE) {
      return onSheet(strokes);
    }
    // Across the dart where there is room for an arrow, but not on the seam.
    Point from = dart.press() == Intake.Press.ONWARDS ? first : last;
    Point to = dart.press() == Intake.Press.ONWARDS ? last : first;
    double share = 0.25;
    arrow(
        strokes,
        from.towards(dart.apex(), share).towards(to.towards(dart.apex(), share), 0.12),
        to.towards(dart.apex(), share).towards(from.towards(dart.apex(), share), 0.12),
        "pleat-arrow");
    return onSheet(strokes);
  }

  @Override
  public List<PieceArt.Stroke> pleat(Intake.Pleat pleat) {
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    List<Line> lines = pleat.lines();
    int last = lines.size() - 1;
    for (int i = 0; i <= last; i++) {
      boolean fold =
          switch (pleat.kind()) {
            case KNIFE -> i == (pleat.onwards() ? 0 : last);
            default -> i != 1;
          };
      add(strokes, new Path(List.of(lines.get(i))), fold ? "pleat-fold" : "pleat-line");
    }
    for (int i = 0; i < last; i++) {
      Line one = lines.get(i);
      Line other = lines.get(i + 1);
      hatch(one, other, strokes);
      boolean forth =
          switch (pleat.kind()) {
            case KNIFE -> pleat.onwards();
            case INVERTED -> i == 0;
            case BOX -> i != 0;
          };
      Point from = forth ? one.at(0.6) : other.at(0.6);
      Point to = forth ? other.at(0.6) : one.at(0.6);
      arrow(strokes, from.towards(to, 0.08), to.towards(from, 0.08), "pleat-arrow");
    }
    return onSheet(strokes);
  }

  /** Slanting strokes near the raw end, where a pleat is folded before anything is sewn. */
  private static void hatch(Line one, Line other, List<PieceArt.Stroke> strokes) {
    double length = one.length();
    double end = Math.min(HATCHED, length / 2);
    for (double at = HATCH; at <= end; at += HATCH) {
      line(strokes, one.at(at / length), other.at((at - HATCH) / length), "pleat-hatch");
    }
  }

  @Override
  public List<PieceArt.Stroke> buttonhole(PointMark.Buttonhole hole) {
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    line(strokes, hole.from(), hole.to(), "buttonhole");
    Point across = hole.to().minus(hole.from()).unit().quarterTurn().times(BAR);
    for (Point end : List.of(hole.from(), hole.to())) {
      line(strokes, end.minus(across), end.plus(across), "buttonhole");
    }
    return onSheet(strokes);
  }

  private static void arrow(List<PieceArt.Stroke> strokes, Point from, Point to, String role) {
    double length = from.distance(to);
    if (length < 1) {
      return;
    }
    line(strokes, from, to, role);
    double size = Math.min(1, length / (1.5 * ARROW));
    Point along = to.minus(from).unit();
    Point across = along.quarterTurn().times(ARROW_HALF * size);
    Point back = to.minus(along.times(ARROW * size));
    add(strokes, Path.polyline(List.of(back.plus(across), to, back.minus(across))), role);
  }

  private static void line(List<PieceArt.Stroke> strokes, Point from, Point to, String role) {
    add(strokes, new Path(List.of(new Line(from, to))), role);
  }

  private static void add(List<PieceArt.Stroke> strokes, Path path, String role) {
    strokes.add(new PieceArt.Stroke(path, role));
  }
}
