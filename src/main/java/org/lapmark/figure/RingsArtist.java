package org.lapmark.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.FigureSource.Hoop;
import org.lapmark.figure.FigureSource.HungCord;
import org.lapmark.figure.FigureSource.RingLabel;
import org.lapmark.figure.FigureSource.Rings;
import org.lapmark.figure.FigureSource.Side;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.stated.StatedShape;

/**
 * Draws a finished article that is made of rings, as a hat is: ovals lying level above each other,
 * with cloth stretched from each to the next, the top one closed. Seen without perspective from the
 * front and above, turned a little. Between two ovals the cloth bulges outwards everywhere, so that
 * the outline of that part is the convex hull of both.
 */
final class RingsArtist {
  /** How far the view is turned from the front. */
  private static final double TURN = 24;

  /** How far from above it is seen. */
  private static final double TILT = 22;

  private static final int AROUND = 240;
  private static final double CLASP = 9;

  private final Evaluation evaluation;
  private final double scale;
  private final Canvas canvas;
  private final double sinTurn = StrictMath.sin(StrictMath.toRadians(TURN));
  private final double cosTurn = StrictMath.cos(StrictMath.toRadians(TURN));
  private final double sinTilt = StrictMath.sin(StrictMath.toRadians(TILT));
  private final double cosTilt = StrictMath.cos(StrictMath.toRadians(TILT));

  RingsArtist(Evaluation evaluation, StyleSheet styles, LetteringMeasure lettering, double scale) {
    this.evaluation = evaluation;
    this.scale = scale;
    this.canvas = new Canvas(styles, lettering);
  }

  /** An oval: half its axes and how high it lies, in millimetres of cloth. */
  private record Oval(double across, double ahead, double level) {
    /** The oval at a share of the way from this one to another. */
    Oval towards(Oval other, double share) {
      return new Oval(
          across + (other.across - across) * share,
          ahead + (other.ahead - ahead) * share,
          level + (other.level - level) * share);
    }

    /** How long the cloth between two ovals is at the front. */
    double slope(Oval other) {
      double out = other.ahead - ahead;
      double down = other.level - level;
      return Math.sqrt(out * out + down * down);
    }
  }

  Canvas draw(Rings rings) {
    List<Oval> ovals = new ArrayList<>();
    rings.hoops().forEach(hoop -> evaluation.attempt(() -> oval(hoop)).ifPresent(ovals::add));
    Texture texture =
        evaluation
            .attempt(() -> evaluation.texture(evaluation.material(rings.cloth())))
            .orElse(Texture.OTHER);
    if (ovals.size() < rings.hoops().size()) {
      return canvas;
    }
    if (rings.cord() != null) {
      evaluation.run(() -> cord(rings.cord(), ovals));
    }
    for (int i = ovals.size() - 1; i > 0; i--) {
      Path hull = hull(ovals.get(i - 1), ovals.get(i));
      canvas.cloth(hull, texture, Side.RIGHT, 0);
      canvas.line(hull, "figure-outline");
      for (Formula row : rings.hoops().get(i).rows()) {
        Oval upper = ovals.get(i - 1);
        Oval lower = ovals.get(i);
        evaluation.run(() -> row(upper, lower, row));
      }
    }
    canvas.line(Path.polyline(around(ovals.get(0))), "figure-seam");
    rings.labels().forEach(label -> evaluation.run(() -> label(label, ovals)));
    return canvas;
  }

  private void label(RingLabel label, List<Oval> ovals) {
    Oval oval = ovals.get(label.hoop() - 1);
    if (label.down() > 0 && label.hoop() < ovals.size()) {
      oval = oval.towards(ovals.get(label.hoop()), label.down());
    }
    double at = evaluation.share(label.at(), "mark/at");
    canvas.wish(evaluation.text(label.text()), List.of(point(oval, at)), null);
  }

  private Oval oval(Hoop hoop) {
    double round = evaluation.length(hoop.round(), 1, 10_000);
    double ratio = hoop.ratio() == null ? 1 : evaluation.number(hoop.ratio(), "hoop/ratio");
    double most = 10;
    if (!(ratio >= 1 / most && ratio <= most)) {
      throw Evaluation.fault(
          hoop.ratio().text().position(),
          FigureCode.FIGURE_VALUE_KIND,
          "name",
          "ratio",
          "needed",
          "a number from 0.1 to 10",
          "example",
          Examples.of("hoop/ratio"));
    }
    Box box = StatedShape.oval(round, ratio).outline().bounds();
    return new Oval(
        box.width() / 2, box.height() / 2, evaluation.length(hoop.level(), -5_000, 5_000));
  }

  /**
   * A place of an oval on paper: a share of the way round, from the front to the reader's right.
   */
  private Point point(Oval oval, double share) {
    double angle = 2 * Math.PI * share;
    double right = oval.across * StrictMath.sin(angle);
    double front = oval.ahead * StrictMath.cos(angle);
    double near = front * cosTurn - right * sinTurn;
    double aside = right * cosTurn + front * sinTurn;
    return new Point(aside, near * sinTilt - oval.level * cosTilt).times(scale);
  }

  private List<Point> around(Oval oval) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < AROUND; i++) {
      points.add(point(oval, (double) i / AROUND));
    }
    points.add(points.get(0));
    return points;
  }

  /** The least convex line round two ovals, clockwise on paper. */
  private Path hull(Oval one, Oval other) {
    List<Point> points = new ArrayList<>(around(one));
    points.addAll(around(other));
    points.sort(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y));
    List<Point> hull = new ArrayList<>(chain(points));
    List<Point> back = new ArrayList<>(points);
    java.util.Collections.reverse(back);
    hull.addAll(chain(back).subList(1, chain(back).size()));
    return Path.polyline(hull);
  }

  /** Half of the hull of points in order. */
  private static List<Point> chain(List<Point> points) {
    List<Point> chain = new ArrayList<>();
    for (Point point : points) {
      while (chain.size() > 1
          && chain
                  .get(chain.size() - 1)
                  .minus(chain.get(chain.size() - 2))
                  .cross(point.minus(chain.get(chain.size() - 1)))
              <= 1e-9) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    return chain;
  }

  /** A row of stitches round the part above an oval, where it faces the reader. */
  private void row(Oval upper, Oval lower, Formula distance) {
    double slope = upper.slope(lower);
    if (slope < 1e-3) {
      throw evaluation.empty(distance, "rows");
    }
    Oval oval = lower.towards(upper, evaluation.length(distance, 0, slope) / slope);
    List<Point> run = new ArrayList<>();
    // From behind, so that what is seen of it is one run.
    for (int i = 0; i <= AROUND; i++) {
      double share = 0.5 + (double) i / AROUND;
      if (faces(upper, lower, oval, share)) {
        run.add(point(oval, share));
      } else {
        stitched(run);
      }
    }
    stitched(run);
  }

  private void stitched(List<Point> run) {
    if (run.size() > 1) {
      canvas.lines(List.of(Path.polyline(run)), "figure-topstitch");
    }
    run.clear();
  }

  private boolean faces(Oval upper, Oval lower, Oval oval, double share) {
    double step = 0.25 / AROUND;
    Point along = point(oval, share + step).minus(point(oval, share - step));
    Point down = point(lower, share).minus(point(upper, share));
    // At the front, going right and then down.
    return along.cross(down) > 0;
  }

  /** A cord that hangs from both sides of an oval, behind everything, with its clasp. */
  private void cord(HungCord cord, List<Oval> ovals) {
    Oval oval = ovals.get(cord.hoop() - 1);
    double drop = evaluation.length(cord.drop(), 1, 5_000);
    Point right = point(oval, 0.25);
    Point left = point(oval, 0.75);
    Point bottom = right.towards(left, 0.5).plus(new Point(0, drop * scale));
    for (Point end : List.of(left, right)) {
      Point pull = new Point(end.x(), end.y() + (bottom.y() - end.y()) * 0.7);
      List<Point> curve = new ArrayList<>();
      for (int i = 0; i <= 24; i++) {
        double t = i / 24.0;
        curve.add(end.towards(pull, t).towards(pull.towards(bottom, t), t));
      }
      canvas.lines(List.of(Path.polyline(curve)), "figure-hung-cord");
    }
    double half = CLASP * scale;
    Path clasp =
        Path.rectangle(
            new Box(
                bottom.x() - half,
                bottom.y() - half / 2,
                bottom.x() + half,
                bottom.y() + half / 2));
    canvas.shape(clasp, "figure-slider");
    canvas.line(clasp, "figure-outline");
    if (cord.text() != null) {
      canvas.wish(evaluation.text(cord.text()), List.of(bottom), null);
    }
  }
}
