package org.lapmark.figure.rings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A finished article that is made of rings, as a hat is: ovals lying level above each other, with
 * cloth stretched from each to the next, the top one closed. Seen without perspective from the
 * front and above, turned a little. Between two ovals the cloth bulges outwards everywhere, so that
 * the outline of that part is the convex hull of both.
 *
 * @param texture how the material outside is shown
 * @param hoops its ovals, from the top down
 * @param cord a cord hanging from it
 * @param labels labels
 */
record RingsScene(Texture texture, List<Hoop> hoops, Optional<Cord> cord, List<Label> labels)
    implements Scene {
  /** Parts shorter than this, in millimetres of cloth, aren't there. */
  static final double NOTHING = 1e-3;

  /**
   * An oval.
   *
   * @param oval its shape and level
   * @param rows rows of stitches above it, as shares of the way up to the one above
   * @param round the length round it, as printed
   */
  record Hoop(Oval oval, List<Double> rows, String round) {}

  /**
   * A cord with a clasp, hanging from the two sides of an oval.
   *
   * @param hoop the oval's number, 1 for the first
   * @param drop how far below it the clasp hangs, in millimetres of cloth
   * @param words a label
   */
  record Cord(int hoop, double drop, Optional<String> words) {}

  /**
   * A label.
   *
   * @param hoop the oval's number, 1 for the first
   * @param at the share of the way round, from the front to the reader's right
   * @param down the share of the way down to the next oval
   */
  record Label(String words, int hoop, double at, double down) {}

  @Override
  public void draw(Canvas canvas, double scale) {
    new Drawn(canvas, scale).all(this);
  }

  @Override
  public List<String> inWords(Words words) {
    List<String> sentences = new ArrayList<>();
    String rounds = String.join("; ", hoops.stream().map(Hoop::round).toList());
    sentences.add(words.word("alt.rings", "rounds", rounds));
    cord.ifPresent(one -> sentences.add(words.word("alt.hung-cord")));
    labels.forEach(label -> sentences.add(words.word("alt.named", "what", label.words)));
    return sentences;
  }

  /** It at one scale. */
  private record Drawn(Canvas canvas, double scale) {
    /** How far the view is turned from the front. */
    private static final double TURN = 24;

    /** How far from above it is seen. */
    private static final double TILT = 22;

    private static final int AROUND = 240;
    private static final double CLASP = 9;

    private static final double SIN_TURN = StrictMath.sin(StrictMath.toRadians(TURN));
    private static final double COS_TURN = StrictMath.cos(StrictMath.toRadians(TURN));
    private static final double SIN_TILT = StrictMath.sin(StrictMath.toRadians(TILT));
    private static final double COS_TILT = StrictMath.cos(StrictMath.toRadians(TILT));

    void all(RingsScene scene) {
      List<Oval> ovals = scene.hoops.stream().map(Hoop::oval).toList();
      if (ovals.isEmpty()) {
        return;
      }
      scene.cord.ifPresent(cord -> cord(cord, ovals.get(cord.hoop - 1)));
      for (int i = ovals.size() - 1; i > 0; i--) {
        Path hull = hull(ovals.get(i - 1), ovals.get(i));
        canvas.cloth(hull, scene.texture, Side.RIGHT, 0);
        canvas.line(hull, "figure-outline");
        for (double share : scene.hoops.get(i).rows) {
          row(ovals.get(i - 1), ovals.get(i), share);
        }
      }
      canvas.line(Path.polyline(around(ovals.get(0))), "figure-seam");
      scene.labels.forEach(label -> label(label, ovals));
    }

    private void label(Label label, List<Oval> ovals) {
      Oval oval = ovals.get(label.hoop - 1);
      if (label.down > 0 && label.hoop < ovals.size()) {
        oval = oval.towards(ovals.get(label.hoop), label.down);
      }
      canvas.wish(label.words, List.of(point(oval, label.at)), null);
    }

    /**
     * A place of an oval on paper: a share of the way round, from the front to the reader's right.
     */
    private Point point(Oval oval, double share) {
      double angle = 2 * Math.PI * share;
      double right = oval.across() * StrictMath.sin(angle);
      double front = oval.ahead() * StrictMath.cos(angle);
      double near = front * COS_TURN - right * SIN_TURN;
      double aside = right * COS_TURN + front * SIN_TURN;
      return new Point(aside, near * SIN_TILT - oval.level() * COS_TILT).times(scale);
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
      Collections.reverse(back);
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
    private void row(Oval upper, Oval lower, double up) {
      Oval oval = lower.towards(upper, up);
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
    private void cord(Cord cord, Oval oval) {
      Point right = point(oval, 0.25);
      Point left = point(oval, 0.75);
      Point bottom = right.towards(left, 0.5).plus(new Point(0, cord.drop * scale));
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
      cord.words.ifPresent(text -> canvas.wish(text, List.of(bottom), null));
    }
  }
}
