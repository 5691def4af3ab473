package org.lapmark.print;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;

/** The lines of darts, pleats, buttonholes and match points at true scale. */
final class MarkArt {
  private static final double APEX = 0.9;
  private static final double ARROW = 2.6;
  private static final double ARROW_HALF = 1;
  private static final double BAR = 2;
  private static final double MATCH = 2.2;

  /** Hatching at the raw end of a pleat: strokes this far apart, over so much of its lines. */
  private static final double HATCH = 5;

  private static final double HATCHED = 30;

  private MarkArt() {}

  /** The stitching line of an edge without what darts take up: it is sewn with them closed. */
  static List<Path> stitching(Panel panel, Edge edge) {
    List<Mark.Dart> darts = Darts.on(panel, edge.name());
    if (darts.isEmpty()) {
      return List.of(edge.path());
    }
    List<Path> parts = new ArrayList<>();
    double at = 0;
    for (Mark.Dart dart : darts) {
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

  /** The lines of a mark; none for those that are drawn elsewhere. */
  static List<PieceArt.Stroke> strokes(Panel panel, Mark mark, Affine map) {
    List<PieceArt.Stroke> strokes = new ArrayList<>();
    if (mark instanceof Mark.Dart dart) {
      dart(panel, dart, strokes);
    } else if (mark instanceof Mark.Pleat pleat) {
      pleat(pleat, strokes);
    } else if (mark instanceof Mark.Buttonhole hole) {
      buttonhole(hole, strokes);
    } else if (mark instanceof Mark.MatchPoint match) {
      add(strokes, Path.circle(match.point(), MATCH), "match-point");
      Point arm = new Point(MATCH * 0.7071, MATCH * 0.7071);
      Point across = new Point(arm.x(), -arm.y());
      line(strokes, match.point().minus(arm), match.point().plus(arm), "match-point");
      line(strokes, match.point().minus(across), match.point().plus(across), "match-point");
    }
    return strokes.stream()
        .map(stroke -> new PieceArt.Stroke(stroke.path().transformed(map), stroke.role()))
        .toList();
  }

  private static void dart(Panel panel, Mark.Dart dart, List<PieceArt.Stroke> strokes) {
    Path edge = panel.line(dart.edge());
    Point first = edge.atLength(dart.from());
    Point last = edge.atLength(dart.to());
    line(strokes, first, dart.apex(), "dart-leg");
    line(strokes, last, dart.apex(), "dart-leg");
    add(strokes, Path.circle(dart.apex(), APEX), "dart-apex");
    if (dart.press() == Mark.Press.NONE) {
      return;
    }
    // Across the dart where there is room for an arrow, but not on the seam.
    Point from = dart.press() == Mark.Press.ONWARDS ? first : last;
    Point to = dart.press() == Mark.Press.ONWARDS ? last : first;
    double share = 0.25;
    arrow(
        strokes,
        from.towards(dart.apex(), share).towards(to.towards(dart.apex(), share), 0.12),
        to.towards(dart.apex(), share).towards(from.towards(dart.apex(), share), 0.12),
        "pleat-arrow");
  }

  private static void pleat(Mark.Pleat pleat, List<PieceArt.Stroke> strokes) {
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
  }

  /** Slanting strokes near the raw end, where a pleat is folded before anything is sewn. */
  private static void hatch(Line one, Line other, List<PieceArt.Stroke> strokes) {
    double length = one.length();
    double end = Math.min(HATCHED, length / 2);
    for (double at = HATCH; at <= end; at += HATCH) {
      line(strokes, one.at(at / length), other.at((at - HATCH) / length), "pleat-hatch");
    }
  }

  private static void buttonhole(Mark.Buttonhole hole, List<PieceArt.Stroke> strokes) {
    line(strokes, hole.from(), hole.to(), "buttonhole");
    Point across = hole.to().minus(hole.from()).unit().quarterTurn().times(BAR);
    for (Point end : List.of(hole.from(), hole.to())) {
      line(strokes, end.minus(across), end.plus(across), "buttonhole");
    }
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
