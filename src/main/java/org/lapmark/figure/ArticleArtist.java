package org.lapmark.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.FigureSource.Article;
import org.lapmark.figure.FigureSource.ArticleLabel;
import org.lapmark.figure.FigureSource.ArticleLength;
import org.lapmark.figure.FigureSource.ArticleStraps;
import org.lapmark.figure.FigureSource.ArticleZip;
import org.lapmark.figure.FigureSource.Side;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;

/**
 * Draws the finished article: a panel's stitching line drawn out along a third axis, seen without
 * perspective from the front, above and to one side. What faces away is left out; outlines are
 * taken to bulge outwards.
 *
 * <p>A point lies {@code across} from the left side and on the panel at {@code x} (forward) and
 * {@code y} (down).
 */
final class ArticleArtist {
  /** How far the view is turned from the front towards the right side. */
  private static final double TURN = 33;

  /** How far from above it is seen. */
  private static final double TILT = 24;

  /** Shorter stretches, in millimetres, aren't drawn. */
  private static final double GRAZING = 1e-3;

  private static final double STEP = 2;
  private static final double PIPING = 1.1;

  /** The cosine of the least turn that is drawn as an edge: 20 degrees. */
  private static final double CREASE = 0.94;

  private final Evaluation evaluation;
  private final double scale;
  private final Canvas canvas;
  private final Map<Path, List<double[]>> seen = new LinkedHashMap<>();
  private final double sinTurn = StrictMath.sin(StrictMath.toRadians(TURN));
  private final double cosTurn = StrictMath.cos(StrictMath.toRadians(TURN));
  private final double sinTilt = StrictMath.sin(StrictMath.toRadians(TILT));
  private final double cosTilt = StrictMath.cos(StrictMath.toRadians(TILT));

  ArticleArtist(
      Evaluation evaluation, StyleSheet styles, LetteringMeasure lettering, double scale) {
    this.evaluation = evaluation;
    this.scale = scale;
    this.canvas = new Canvas(styles, lettering);
  }

  /** From the panel's coordinates to paper, for a distance from the left side. */
  private Affine at(double across) {
    return Affine.scaling(scale, scale)
        .after(
            new Affine(
                -sinTurn,
                cosTurn * sinTilt,
                0,
                cosTilt,
                across * cosTurn,
                across * sinTurn * sinTilt));
  }

  private Point project(double across, Point point) {
    return at(across).apply(point);
  }

  /** How much the side of a closed clockwise outline faces the reader at a place; above 0: seen. */
  private double facing(Point tangent) {
    return tangent.y() * cosTurn * cosTilt + tangent.x() * sinTilt;
  }

  Canvas draw(Article article) {
    Panel panel = evaluation.panel(article.panel());
    Path outline = panel.outline();
    double start = 0;
    if (article.start() != null) {
      String first = evaluation.edges(panel, article.start()).get(0);
      start = outline.nearestLength(panel.line(first).start());
    }
    Path rim =
        start < 1e-9 || start > outline.length() - 1e-9
            ? outline
            : outline.part(start, outline.length()).then(outline.part(0, start));
    double length = evaluation.length(article.length(), 1, 5_000);
    Texture outside =
        evaluation
            .attempt(() -> evaluation.texture(evaluation.material(article.cloth())))
            .orElse(Texture.OTHER);
    if (article.straps() != null) {
      evaluation.run(() -> straps(article, rim, length));
    }
    body(article, rim, length, outside);
    dimensions(article, rim, length);
    article.labels().forEach(label -> evaluation.run(() -> label(label, rim, length)));
    return canvas;
  }

  private void label(ArticleLabel label, Path rim, double length) {
    Point on = rim.atLength(evaluation.along(label.rim(), rim.length(), 0));
    double across =
        label.across() == null ? length / 2 : evaluation.length(label.across(), 0, length);
    canvas.wish(evaluation.text(label.text()), List.of(project(across, on)), null);
  }

  /** The stretches of a closed outline that face the reader; ends may lie beyond its length. */
  private List<double[]> seen(Path rim) {
    return seen.computeIfAbsent(rim, this::stretches);
  }

  private List<double[]> stretches(Path rim) {
    double whole = rim.length();
    int count = (int) Math.max(60, Math.ceil(whole / STEP));
    boolean[] faces = new boolean[count];
    for (int i = 0; i < count; i++) {
      faces[i] = facing(rim.tangentAtLength(whole * (i + 0.5) / count)) > 0;
    }
    List<double[]> stretches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (faces[i] && !faces[(i + count - 1) % count]) {
        int j = i;
        while (faces[(j + 1) % count] && j - i < count) {
          j++;
        }
        double from = turning(rim, i, count);
        double to = turning(rim, j + 1, count);
        // An outline that only grazes the line of sight shows nothing there.
        if (to - from > GRAZING) {
          stretches.add(new double[] {from, to});
        }
      }
    }
    return stretches;
  }

  /** Where between two samples the outline turns away. */
  private double turning(Path rim, int sample, int count) {
    double whole = rim.length();
    double from = whole * (sample - 0.5) / count;
    double to = whole * (sample + 0.5) / count;
    boolean before = facing(tangent(rim, from)) > 0;
    for (int i = 0; i < 40; i++) {
      double middle = (from + to) / 2;
      if (facing(tangent(rim, middle)) > 0 == before) {
        from = middle;
      } else {
        to = middle;
      }
    }
    return to;
  }

  private static Point tangent(Path rim, double at) {
    double whole = rim.length();
    return rim.tangentAtLength(at - whole * Math.floor(at / whole));
  }

  private static Path part(Path rim, double from, double to) {
    double whole = rim.length();
    double shift = whole * Math.floor(from / whole);
    double a = from - shift;
    double b = to - shift;
    if (b <= whole) {
      return rim.part(a, b);
    }
    if (whole - a < GRAZING) {
      return rim.part(0, b - whole);
    }
    if (b - whole < GRAZING) {
      return rim.part(a, whole);
    }
    return rim.part(a, whole).then(rim.part(0, b - whole));
  }

  private static Path ring(Path far, Path near) {
    return far.then(Path.polyline(List.of(far.end(), near.end())))
        .then(near.reversed())
        .then(Path.polyline(List.of(near.start(), far.start())));
  }

  /** The curved surface between two distances, without lines. */
  private void surface(Path rim, double from, double to, Texture texture, Side side) {
    for (double[] stretch : seen(rim)) {
      Path part = part(rim, stretch[0], stretch[1]);
      canvas.cloth(ring(part.transformed(at(from)), part.transformed(at(to))), texture, side, 0);
    }
  }

  /** Its outlines: the far edge where it is seen, and where the surface turns away. */
  private void contours(Path rim, double from, double to, boolean farEdge) {
    for (double[] stretch : seen(rim)) {
      Path part = part(rim, stretch[0], stretch[1]);
      if (farEdge) {
        canvas.line(part.transformed(at(from)), "figure-outline");
      }
      for (Point crease : creases(part)) {
        canvas.line(
            Path.polyline(List.of(project(from, crease), project(to, crease))), "figure-seam");
      }
      for (Point end : List.of(part.start(), part.end())) {
        canvas.line(Path.polyline(List.of(project(from, end), project(to, end))), "figure-outline");
      }
    }
  }

  /** Where an outline turns sharply between two curves. */
  private static List<Point> creases(Path part) {
    List<Point> creases = new ArrayList<>();
    for (int i = 1; i < part.curves().size(); i++) {
      Point before = part.curves().get(i - 1).tangent(1);
      Point after = part.curves().get(i).tangent(0);
      if (before.dot(after) < CREASE) {
        creases.add(part.curves().get(i).start());
      }
    }
    return creases;
  }

  private void body(Article article, Path rim, double length, Texture outside) {
    surface(rim, 0, length, outside, Side.RIGHT);
    for (double[] stretch : seen(rim)) {
      for (org.lapmark.measure.Formula seam : article.seams()) {
        evaluation.run(
            () -> {
              double at = evaluation.along(seam, rim.length(), 0);
              if (inside(stretch, at, rim.length())) {
                Point point = rim.atLength(at);
                canvas.line(
                    Path.polyline(List.of(project(0, point), project(length, point))),
                    "figure-seam");
              }
            });
      }
      if (article.piped()) {
        Path part = part(rim, stretch[0], stretch[1]);
        canvas.line(part.transformed(at(PIPING / scale)), "figure-seam");
      }
    }
    if (article.zip() != null) {
      evaluation.run(() -> zip(article.zip(), rim, length));
    }
    contours(rim, 0, length, true);
    Path near = rim.transformed(at(length));
    if (article.open()) {
      Texture inside =
          article.lining() == null
              ? outside
              : evaluation
                  .attempt(() -> evaluation.texture(evaluation.material(article.lining())))
                  .orElse(Texture.OTHER);
      canvas.cloth(near, inside, Side.RIGHT, 0);
      Path far = rim.transformed(at(0));
      canvas.within(near, List.of(far), "figure-opening");
    } else {
      canvas.cloth(near, outside, Side.RIGHT, 0);
    }
    canvas.line(near, "figure-outline");
    if (article.piped()) {
      inner(near, PIPING);
    }
    if (article.baste() != null) {
      evaluation.run(() -> baste(article, rim, length));
    }
  }

  private void baste(Article article, Path rim, double length) {
    double distance = evaluation.length(article.baste(), 0, length / 2);
    for (double[] stretch : seen(rim)) {
      Path part = part(rim, stretch[0], stretch[1]);
      canvas.line(part.transformed(at(distance)), "figure-baste-now");
      canvas.line(part.transformed(at(length - distance)), "figure-baste-now");
    }
  }

  private void inner(Path near, double distance) {
    List<org.lapmark.geometry.offset.Side> sides =
        List.of(
            new org.lapmark.geometry.offset.Side(
                near.signedArea() < 0 ? near.reversed() : near, -distance));
    List<List<org.lapmark.geometry.offset.Part>> loops = Lines.loops(sides);
    if (!loops.isEmpty()) {
      canvas.line(
          new Path(loops.get(0).stream().map(org.lapmark.geometry.offset.Part::curve).toList()),
          "figure-seam");
    }
  }

  private static boolean inside(double[] stretch, double at, double whole) {
    return at > stretch[0] && at < stretch[1] || at + whole > stretch[0] && at + whole < stretch[1];
  }

  private void zip(ArticleZip zip, Path rim, double length) {
    double from = evaluation.along(zip.from(), rim.length(), 0);
    double to = evaluation.along(zip.to(), rim.length(), 0);
    double stops = evaluation.length(zip.length(), 1, length);
    if (Math.abs(to - from) < GRAZING) {
      throw evaluation.empty(zip.to(), "zip");
    }
    if (facing(rim.tangentAtLength((from + to) / 2)) <= 0) {
      return;
    }
    Path across = rim.part(Math.min(from, to), Math.max(from, to));
    canvas.shape(ring(across.transformed(at(0)), across.transformed(at(length))), "figure-tape");
    Point middle = rim.atLength((from + to) / 2);
    double first = (length - stops) / 2;
    double last = first + stops;
    double slider = last - stops * zip.open();
    Point rear = rim.atLength(from);
    Point front = rim.atLength(to);
    for (Point edge : List.of(rear, front)) {
      canvas.line(
          Path.polyline(List.of(project(0, edge), project(length, edge))), "figure-outline");
    }
    canvas.line(
        Path.polyline(List.of(project(first, middle), project(slider, middle))), "figure-coil");
    if (zip.open() > 0) {
      double wide = 0.42;
      Point a = middle.towards(rear, 2 * wide);
      Point b = middle.towards(front, 2 * wide);
      double throat = slider + Math.min(stops * 0.12, 18);
      Path gap =
          Path.polyline(
              List.of(
                  project(slider, middle),
                  project(throat, a),
                  project(last, a),
                  project(last, b),
                  project(throat, b),
                  project(slider, middle)));
      canvas.shape(gap, "figure-gap");
      canvas.line(gap, "figure-layer");
    }
    double half = 0.3;
    for (double stop : new double[] {first, last}) {
      canvas.line(
          Path.polyline(
              List.of(
                  project(stop, middle.towards(rear, half * 2)),
                  project(stop, middle.towards(front, half * 2)))),
          "figure-stop");
    }
    double at = zip.open() > 0 ? slider : last - 5;
    Path body = quad(at - 4, at + 4, middle.towards(rear, 0.6), middle.towards(front, 0.6));
    canvas.shape(body, "figure-slider");
    Path pull = quad(at - 18, at - 3, middle.towards(rear, 0.3), middle.towards(front, 0.3));
    canvas.shape(pull, "figure-slider");
  }

  private Path quad(double from, double to, Point a, Point b) {
    return Path.polyline(
        List.of(
            project(from, a), project(to, a), project(to, b), project(from, b), project(from, a)));
  }

  /** Straps as loops round a bar, which lies behind and above. */
  private void straps(Article article, Path rim, double length) {
    ArticleStraps straps = article.straps();
    double diameter = article.bar() == null ? 0 : evaluation.length(article.bar(), 1, 200);
    double width = evaluation.length(straps.width(), 1, 500);
    Texture texture = evaluation.texture(evaluation.material(straps.cloth()));
    Point caught = rim.atLength(evaluation.along(straps.at(), rim.length(), 0));
    double radius = Math.max(4, diameter / 2) + 1.5;
    Point centre = new Point(caught.x() - radius - 6, caught.y() - radius - 22);
    Path loop = loop(caught, centre, radius);
    Path bar = Path.circle(centre, Math.max(1, diameter / 2));
    double reach = 34;
    List<Double> places = new ArrayList<>();
    straps.places().forEach(place -> places.add(evaluation.length(place, 0, length)));
    places.sort(Double::compare);
    double done = -reach;
    boolean first = true;
    for (double place : places) {
      double from = place - width / 2;
      double to = place + width / 2;
      // Straps may lie side by side, or over each other.
      if (diameter > 0 && from - done > GRAZING) {
        surface(bar, done, from, Texture.MAIN, Side.WRONG);
        barLines(bar, done, from, first);
        first = false;
      }
      surface(loop, from, to, texture, Side.RIGHT);
      contours(loop, from, to, true);
      Path near = loop.transformed(at(to));
      canvas.shape(near, "figure-tape");
      canvas.line(near, "figure-outline");
      done = to;
    }
    if (diameter > 0) {
      surface(bar, done, length + reach, Texture.MAIN, Side.WRONG);
      barLines(bar, done, length + reach, false);
      Path end = bar.transformed(at(length + reach));
      canvas.shape(end, "figure-tape");
      canvas.line(end, "figure-outline");
    }
  }

  private void barLines(Path bar, double from, double to, boolean farEdge) {
    contours(bar, from, to, farEdge);
  }

  /** The line round a circle and a point outside it, clockwise. */
  private static Path loop(Point caught, Point centre, double radius) {
    Point away = caught.minus(centre);
    double distance = away.norm();
    double half = StrictMath.toDegrees(StrictMath.acos(Math.min(1, radius / distance)));
    List<Point> points = new ArrayList<>();
    points.add(caught);
    double sweep = 360 - 2 * half;
    int steps = 60;
    Point arm = away.unit().times(radius);
    for (int i = 0; i <= steps; i++) {
      points.add(centre.plus(Affine.rotation(half + sweep * i / steps).applyVector(arm)));
    }
    points.add(caught);
    return Path.polyline(points);
  }

  private void dimensions(Article article, Path rim, double length) {
    Box box = rim.bounds();
    double off = 7 / scale;
    if (article.measured().contains(ArticleLength.LENGTH)) {
      // Below the front, parallel to the length.
      Point front = lowest(rim);
      Point down = new Point(0, off);
      along(
          project(0, front),
          project(length, front),
          project(0, front.plus(down)),
          project(length, front.plus(down)),
          evaluation.printed(length));
    }
    if (article.measured().contains(ArticleLength.HEIGHT)) {
      Point top = new Point(box.minX(), box.minY());
      Point bottom = new Point(box.minX(), box.maxY());
      Point back = new Point(-off, 0);
      along(
          project(length, highest(rim, true)),
          project(length, highest(rim, false)),
          project(length, top.plus(back)),
          project(length, bottom.plus(back)),
          evaluation.printed(box.height()));
    }
    if (article.measured().contains(ArticleLength.DEPTH)) {
      Point rear = new Point(box.minX(), box.maxY());
      Point front = new Point(box.maxX(), box.maxY());
      Point down = new Point(0, off);
      along(
          project(length, rear),
          project(length, front),
          project(length, rear.plus(down)),
          project(length, front.plus(down)),
          evaluation.printed(box.width()));
    }
  }

  /** The point that bounds the article at its front, below. */
  private Point lowest(Path rim) {
    Affine map = at(0);
    Point best = rim.start();
    for (Point point : rim.flattened(0.05)) {
      if (map.apply(point).x() < map.apply(best).x()) {
        best = point;
      }
    }
    Box box = rim.bounds();
    return new Point(best.x(), box.maxY());
  }

  private static Point highest(Path rim, boolean top) {
    Point best = rim.start();
    for (Point point : rim.flattened(0.05)) {
      double gain = top ? best.y() - point.y() : point.y() - best.y();
      if (gain > 1e-6 || Math.abs(gain) <= 1e-6 && point.x() < best.x()) {
        best = point;
      }
    }
    return best;
  }

  private void along(Point a, Point b, Point from, Point to, String words) {
    for (Point[] witness : new Point[][] {{a, from}, {b, to}}) {
      if (witness[0].distance(witness[1]) > 1) {
        Point out = witness[1].minus(witness[0]).unit();
        canvas.line(
            Path.polyline(List.of(witness[0].plus(out.times(0.8)), witness[1].plus(out.times(1)))),
            "figure-dimension");
      }
    }
    canvas.line(Path.polyline(List.of(from, to)), "figure-dimension");
    Point along = to.minus(from).unit();
    for (Point end : List.of(from, to)) {
      Point tick = Affine.rotation(-45).applyVector(along).times(1.2);
      canvas.line(Path.polyline(List.of(end.minus(tick), end.plus(tick))), "figure-tick");
    }
    Point middle = from.towards(to, 0.5);
    Point across = middle.minus(a.towards(b, 0.5)).unit();
    // The lettering keeps clear of the line whatever its direction.
    double width = canvas.width(words) / 2 + 0.8;
    double height = canvas.lineHeight() / 2 + 0.6;
    Point normal = along.quarterTurn();
    if (normal.dot(across) < 0) {
      normal = normal.times(-1);
    }
    double need = Math.abs(normal.x()) * width + Math.abs(normal.y()) * height;
    canvas.fixed(words, middle.plus(normal.times(need)));
  }
}
