package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Something of which a part is rolled up and lies on the rest as a roll.
 *
 * @param flat what of it stays flat, with the line where the roll begins
 * @param crease the line
 * @param from one end of the roll's middle
 * @param to its other end
 * @param thick how thick the roll is
 * @param clips how many clips hold it
 * @param outline round all of it
 */
public record RolledBody(
    Body flat, Crease crease, Point from, Point to, double thick, int clips, Path outline)
    implements Body {
  /** What the line is called where something lies beyond it. */
  static final String KEY = "rolled";

  /** How long the ends look, as a share of the thickness. */
  private static final double END = 0.5;

  /** A clip's size on paper. */
  private static final double CLIP_WIDE = 2.4;

  private static final double CLIP_OVER = 1.6;

  /** What lies beyond a line, rolled up. */
  public static RolledBody of(Body before, Crease crease, double thick, int clips) {
    Lines.Cropped rest = crease.kept(before.outline());
    // The roll is as wide as the piece where it begins, and lies before the line.
    Point back = crease.away().times(-thick / 2);
    Point from = rest.from().plus(back);
    Point to = rest.to().plus(back);
    Path roll = band(from, to, thick);
    return new RolledBody(
        before, crease, from, to, thick, clips, Lines.round(List.of(rest.path(), roll)));
  }

  private static Path band(Point from, Point to, double thick) {
    Point half = to.minus(from).unit().quarterTurn().times(thick / 2);
    return Path.polyline(
        List.of(
            from.minus(half), to.minus(half), to.plus(half), from.plus(half), from.minus(half)));
  }

  @Override
  public Path whole() {
    return outline;
  }

  @Override
  public List<Cut> cuts() {
    List<Cut> cuts = new ArrayList<>(flat.cuts());
    Point back = crease.away().times(-thick / 2);
    cuts.add(new Cut(KEY, from.plus(back), to.plus(back), crease.away()));
    return cuts;
  }

  @Override
  public List<List<Point>> covers() {
    List<List<Point>> covers = new ArrayList<>(flat.covers());
    covers.add(band(from, to, thick).flattened(FlatInk.FLATNESS));
    return covers;
  }

  @Override
  public List<Flap> flaps() {
    return flat.flaps();
  }

  @Override
  public boolean liesUnder() {
    return false;
  }

  @Override
  public double covered() {
    return 0;
  }

  @Override
  public boolean isPeeled() {
    return flat.isPeeled();
  }

  @Override
  public void draw(PlacedBody laid, FlatInk ink) {
    flat.draw(laid.as(flat), ink);
  }

  @Override
  public Side seen(Side up) {
    return flat.seen(up);
  }

  @Override
  public void drawFolded(PlacedBody laid, Marks marks, FlatInk ink) {
    flat.drawFolded(laid.as(flat), marks, ink);
    Face face = Face.of(flat);
    Point a = laid.map().apply(from);
    Point b = laid.map().apply(to);
    Point along = b.minus(a).unit();
    Point across = along.quarterTurn();
    double radius = thick * ink.scale() / 2;
    double end = radius * END;
    List<Point> round = new ArrayList<>();
    arc(round, b.minus(along.times(end)), along.times(end), across.times(radius), -90, 90);
    arc(round, a.plus(along.times(end)), along.times(end), across.times(radius), 90, 270);
    round.add(round.get(0));
    Path roll = Path.polyline(round);
    Side back = face.side == Side.RIGHT ? Side.WRONG : Side.RIGHT;
    ink.canvas().cloth(roll, face.texture, back, face.grain + ink.turn());
    ink.canvas().line(roll, "figure-outline");
    List<Path> fine = new ArrayList<>();
    fine.add(spiral(b.minus(along.times(end)), along.times(end), across.times(radius)));
    fine.add(spiral(a.plus(along.times(end)), along.times(-end), across.times(radius)));
    for (double level : new double[] {-0.35, 0.45}) {
      Point off = across.times(radius * level);
      Point in = along.times(end * 2.4);
      fine.add(Path.polyline(List.of(a.plus(in).plus(off), b.minus(in).plus(off))));
    }
    ink.canvas().lines(fine, "figure-pucker");
    for (int i = 0; i < clips; i++) {
      Point at = a.towards(b, (i + 0.5) / clips);
      ClipSymbol.draw(at, along, CLIP_WIDE, 2 * radius + 2 * CLIP_OVER, ink.canvas());
    }
  }

  private static void arc(
      List<Point> into, Point middle, Point x, Point y, double from, double to) {
    for (int i = 0; i <= 12; i++) {
      double turn = StrictMath.toRadians(from + (to - from) * i / 12);
      into.add(middle.plus(x.times(StrictMath.cos(turn))).plus(y.times(StrictMath.sin(turn))));
    }
  }

  /** The end of a roll, seen a little from the side. */
  private static Path spiral(Point middle, Point x, Point y) {
    List<Point> points = new ArrayList<>();
    int steps = 60;
    for (int i = 0; i <= steps; i++) {
      double turn = StrictMath.toRadians(-90 + 540.0 * i / steps);
      double size = 1 - 0.8 * i / steps;
      points.add(
          middle
              .plus(x.times(StrictMath.cos(turn) * size))
              .plus(y.times(StrictMath.sin(turn) * size)));
    }
    return Path.polyline(points);
  }

  /** How the cloth of something is shown. */
  private record Face(Texture texture, Side side, double grain) {
    static Face of(Body body) {
      if (body instanceof Cloth cloth) {
        return new Face(cloth.texture(), cloth.side(), cloth.grain());
      }
      if (body instanceof FoldedCloth folded) {
        return of(folded.flat());
      }
      if (body instanceof JoinedBody joined) {
        return of(joined.base());
      }
      return body instanceof RolledBody rolled
          ? of(rolled.flat)
          : new Face(Texture.MAIN, Side.RIGHT, 0);
    }
  }
}
