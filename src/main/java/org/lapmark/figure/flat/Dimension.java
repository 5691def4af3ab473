package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.PrintedLength;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.Measure;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * A dimension of a piece or a zip.
 *
 * @param measured what
 * @param raw for width and height: whether allowances are included
 * @param edge the edge, for distances along it and for the allowance
 * @param from where it begins along the edge, or null for the start
 * @param to where it ends along the edge, or null for the end
 * @param depth for the allowance: how far from the raw edge, or null for the allowance itself
 * @param beside where it stands
 * @param place where it is stated
 */
record Dimension(
    Measured measured,
    boolean raw,
    SourceText edge,
    Formula from,
    Formula to,
    Formula depth,
    Beside beside,
    Position place) {
  private static final Form<String> CUT = FigureForms.words("cut", "stitched");
  private static final Key<String> WIDTH = Key.of("width", CUT);
  private static final Key<String> HEIGHT = Key.of("height", CUT);
  private static final Key<SourceText> ALONG = Key.of("along", FigureForms.EDGE);
  private static final Key<SourceText> ALLOWANCE = Key.of("allowance", FigureForms.EDGE);
  private static final Key<Formula> FROM = Key.of("from", FigureForms.PLACE);
  private static final Key<Formula> TO = Key.of("to", FigureForms.PLACE);
  private static final Key<Formula> DEPTH = Key.of("depth", FigureForms.LENGTH);
  private static final Key<Beside> BESIDE =
      Key.of("beside", FigureForms.constant(Beside.class)).unless("below");
  private static final Table TABLE =
      Table.of("dimension", WIDTH, HEIGHT, ALONG, ALLOWANCE, FROM, TO, DEPTH, BESIDE)
          .oneOf(Choice.among(List.of(WIDTH, HEIGHT, ALONG, ALLOWANCE)));

  /** Stated in a list. */
  static final Form<Entries<Dimension>> LIST = FigureForms.list(TABLE, Dimension::read);

  /** What differs by less, in millimetres of cloth or as a share, is as long as it looks. */
  private static final double LEVEL = 0.3;

  private static final double LEVEL_SHARE = 0.01;

  /** Between a piece and the lines that lead to a dimension, and half a stroke at its end. */
  private static final double WITNESS = 0.8;

  private static final double TICK = 0.9;

  /** What is measured. */
  enum Measured {
    WIDTH(Dimension.WIDTH, List.of(FROM, TO, DEPTH), List.of(BESIDE)),
    HEIGHT(Dimension.HEIGHT, List.of(FROM, TO, DEPTH), List.of(BESIDE)),
    ALONG(Dimension.ALONG, List.of(DEPTH), List.of(FROM, TO, BESIDE)),
    ALLOWANCE(Dimension.ALLOWANCE, List.of(FROM, TO), List.of(DEPTH, BESIDE));

    private final Key<?> key;
    private final List<Key<?>> idle;
    private final List<Key<?>> known;

    Measured(Key<?> key, List<Key<?>> idle, List<Key<?>> known) {
      this.key = key;
      this.idle = idle;
      this.known = known;
    }

    private boolean isOverall() {
      return this == WIDTH || this == HEIGHT;
    }
  }

  private static Dimension read(Keys keys) {
    Measured measured = Measured.valueOf(keys.one().toUpperCase(Locale.ROOT));
    keys.idle(measured.key, measured.idle, measured.known);
    Beside usual = measured == Measured.HEIGHT ? Beside.LEFT : Beside.BELOW;
    String cut = keys.or(WIDTH, keys.or(HEIGHT, "cut"));
    SourceText edge = measured == Measured.ALONG ? keys.get(ALONG) : keys.get(ALLOWANCE);
    return keys.whole(
        new Dimension(
            measured,
            cut.equals("cut"),
            edge,
            keys.get(FROM),
            keys.get(TO),
            keys.get(DEPTH),
            keys.or(BESIDE, usual),
            keys.position()));
  }

  Measure stage(Staging staging, Subject on, PlacedBody laid) {
    if (measured.isOverall()) {
      return overall(staging, on, laid);
    }
    if (on.isZip()) {
      throw Faults.of(place, FigureCode.FIGURE_KEY_MISSING, "name", "piece");
    }
    return measured == Measured.ALONG ? along(staging, on, laid) : allowance(staging, on, laid);
  }

  private Measure overall(Staging staging, Subject on, PlacedBody laid) {
    Optional<Path> stitched =
        raw || on.isZip() ? Optional.empty() : Optional.of(on.panel().outline());
    boolean wide = measured == Measured.WIDTH;
    Box full = on.body().whole().transformed(laid.map()).bounds();
    Box seen = laid.outline().bounds();
    double missing = wide ? full.width() - seen.width() : full.height() - seen.height();
    if (missing > 1e-6 && !laid.cuts().isEmpty()) {
      throw on.leftOut(place, laid.cuts().get(0));
    }
    Path outline = stitched.orElse(on.body().outline());
    Box box = outline.transformed(laid.lying().pose()).bounds();
    double length = wide ? box.width() : box.height();
    return new Overall(stitched, wide, beside, staging.dimension(place, length));
  }

  private Measure along(Staging staging, Subject on, PlacedBody laid) {
    Path line = on.line(edge);
    double first = staging.along(from, line.length(), 0);
    double last = staging.along(to, line.length(), line.length());
    double allowance = on.allowance(on.edgeAt(edge, first));
    Point outward = line.tangentAtLength((first + last) / 2).quarterTurn().times(-allowance);
    Point a = line.atLength(first).plus(outward);
    Point b = line.atLength(last).plus(outward);
    on.checkSeen(laid, edge.position(), List.of(laid.map().apply(a)));
    on.checkSeen(laid, edge.position(), List.of(laid.map().apply(b)));
    PrintedLength told = staging.dimension(place, Math.abs(last - first));
    return isLevel(laid, a, b, beside, Math.abs(last - first))
        ? new Span(a, b, beside, told)
        : new Along(line.part(first, last), allowance, beside, told);
  }

  /** The length of a stretch of a line, on whichever side of the picture it lies. */
  static Measure along(
      Staging staging,
      Subject on,
      PlacedBody laid,
      Position place,
      Path line,
      SourceText edge,
      Extent.Stretch stretch) {
    double allowance =
        on.placement(edge).isPresent() ? 0 : on.allowance(on.edgeAt(edge, stretch.from()));
    Point left = line.tangentAtLength(stretch.middle()).quarterTurn().times(-1);
    Point a = line.atLength(stretch.from()).plus(left.times(allowance));
    Point b = line.atLength(stretch.to()).plus(left.times(allowance));
    Point outward = laid.map().applyVector(left);
    Beside beside =
        Math.abs(outward.x()) > Math.abs(outward.y())
            ? outward.x() > 0 ? Beside.RIGHT : Beside.LEFT
            : outward.y() > 0 ? Beside.BELOW : Beside.ABOVE;
    PrintedLength told = staging.dimension(place, stretch.length());
    return isLevel(laid, a, b, beside, stretch.length())
        ? new Span(a, b, beside, told)
        : new Along(line.part(stretch.from(), stretch.to()), allowance, beside, told);
  }

  /** Whether a distance is as long as it looks from where its dimension stands. */
  private static boolean isLevel(PlacedBody laid, Point a, Point b, Beside beside, double length) {
    double scale = Math.sqrt(Math.abs(laid.map().determinant()));
    Point seen = laid.map().applyVector(b.minus(a));
    double level = Math.abs(beside.isLevel() ? seen.x() : seen.y()) / scale;
    // Of a dimension whose ends lie on each other it is told that it stands on the wrong side.
    return level * scale < FlatInk.SHORTEST_DIMENSION
        || Math.abs(level - length) < Math.max(LEVEL, LEVEL_SHARE * length);
  }

  private Measure allowance(Staging staging, Subject on, PlacedBody laid) {
    Path line = on.line(edge);
    double allowance = on.allowance(on.edges(edge).get(0));
    double deep = depth == null ? allowance : staging.length(depth, 0, allowance);
    Point start = laid.map().apply(line.start());
    Point end = laid.map().apply(line.end());
    on.checkSeen(laid, edge.position(), List.of(start, end));
    return new Depth(
        depthAt(line, 0, allowance, deep),
        depthAt(line, line.length(), allowance, deep),
        beside,
        staging.dimension(place, deep));
  }

  private static DepthAt depthAt(Path line, double at, double allowance, double deep) {
    Point inward = line.tangentAtLength(Math.min(at, line.length() - 1e-3)).quarterTurn();
    Point raw = line.atLength(at).minus(inward.times(allowance));
    return new DepthAt(line.atLength(at), raw, raw.plus(inward.times(deep)));
  }

  /** From one side of the stitching line, or of all that is seen, to the other. */
  private record Overall(Optional<Path> stitched, boolean wide, Beside beside, PrintedLength length)
      implements Measure {
    @Override
    public String words() {
      return length.text();
    }

    @Override
    public void draw(PlacedBody laid, Box shape, FlatInk ink) {
      Box box = stitched.map(line -> line.transformed(laid.map())).orElse(laid.outline()).bounds();
      double x = beside == Beside.RIGHT ? box.maxX() : box.minX();
      double y = beside == Beside.ABOVE ? box.minY() : box.maxY();
      Point a = wide ? new Point(box.minX(), y) : new Point(x, box.minY());
      Point b = wide ? new Point(box.maxX(), y) : new Point(x, box.maxY());
      ink.dimension(length, beside, a, b, shape);
    }
  }

  /** From one point to another. */
  private record Span(Point a, Point b, Beside beside, PrintedLength length) implements Measure {
    @Override
    public String words() {
      return length.text();
    }

    @Override
    public void draw(PlacedBody laid, Box shape, FlatInk ink) {
      ink.dimension(length, beside, laid.map().apply(a), laid.map().apply(b), shape);
    }
  }

  /** Along a line that isn't level, round its corners: the dimension follows it. */
  private record Along(Path line, double allowance, Beside beside, PrintedLength length)
      implements Measure {
    @Override
    public String words() {
      return length.text();
    }

    @Override
    public void draw(PlacedBody laid, Box shape, FlatInk ink) {
      double away = allowance + Canvas.dimensionAt(0) / ink.scale();
      Path drawn = Lines.outsideOf(line, away).orElse(line).transformed(laid.map());
      ink.canvas().line(drawn, "figure-dimension");
      end(line.start(), line.tangentAtLength(0), drawn.start(), laid, ink);
      end(line.end(), line.tangentAtLength(line.length()), drawn.end(), laid, ink);
      List<Point> anchors = new ArrayList<>();
      for (int tenth : new int[] {5, 4, 6, 3, 7, 2, 8}) {
        anchors.add(drawn.atLength(drawn.length() * tenth / 10));
      }
      ink.canvas().wish(length.text(), anchors, null);
    }

    private void end(Point on, Point along, Point end, PlacedBody laid, FlatInk ink) {
      Point raw = laid.map().apply(on.minus(along.quarterTurn().times(allowance)));
      Point out = end.minus(raw).unit();
      ink.canvas()
          .line(
              Path.polyline(List.of(raw.plus(out.times(WITNESS)), end.plus(out))),
              "figure-dimension");
      Point stroke = out.plus(out.quarterTurn()).unit().times(TICK);
      ink.canvas().line(Path.polyline(List.of(end.minus(stroke), end.plus(stroke))), "figure-tick");
    }
  }

  /** How far inside the raw edge, at one end of an edge. */
  private record DepthAt(Point end, Point raw, Point inside) {}

  /** How far inside the raw edge, at the end of the edge nearer to where it stands. */
  private record Depth(DepthAt first, DepthAt last, Beside beside, PrintedLength length)
      implements Measure {
    @Override
    public String words() {
      return length.text();
    }

    @Override
    public void draw(PlacedBody laid, Box shape, FlatInk ink) {
      DepthAt best = first;
      double least = Double.POSITIVE_INFINITY;
      for (DepthAt one : List.of(first, last)) {
        Point point = laid.map().apply(one.end);
        double distance = beside.reach(shape, point);
        if (!laid.hides(point) && distance < least) {
          least = distance;
          best = one;
        }
      }
      Point raw = laid.map().apply(best.raw);
      ink.dimension(length, beside, raw, laid.map().apply(best.inside), shape);
    }
  }
}
