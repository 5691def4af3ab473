package org.lapmark.figure.seen;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import org.lapmark.figure.seen.SeenFigure.Mark;
import org.lapmark.figure.seen.SeenFigure.Stretch;
import org.lapmark.figure.seen.SeenFigure.Text;

/** What in a figure stands in something else’s way. */
final class Collisions {
  /** Ink nearer to letters than this is in their way, in millimetres. */
  private static final double NEAR = 0.3;

  /** A texture is kept so far from letters by their halo. */
  private static final double HALO = 0.4;

  /** Letters stand on nothing darker than this, of 255. */
  private static final int DARK = 160;

  /** The leader of lettering begins within so much of it, and no nearer than this. */
  private static final double OWN = 1.6;

  private static final double TOUCH = 0.15;

  private static final double SAMPLE = 0.2;
  private static final double DOT = 0.5;
  private static final double RING = 2;
  private static final double ROUNDING = 0.01;

  /** Arcs are read back as curves that are nearly round. */
  private static final double ROUND = 0.05;

  /** A leader that runs so far along a line, so near to it, can’t be told from it. */
  private static final double ALONG = 4;

  private static final double BESIDE = 0.35;

  private final SeenFigure figure;
  private final Predicate<Mark> texture;
  private final List<String> found = new ArrayList<>();
  private final List<Leader> leaders = new ArrayList<>();
  private final List<Point2D> rings = new ArrayList<>();
  private final List<Rectangle2D> bounds = new ArrayList<>();

  /** A leader and the dot at its end. */
  private record Leader(Stretch line, Set<Mark> marks) {}

  private Collisions(SeenFigure figure, Predicate<Mark> texture) {
    this.figure = figure;
    this.texture = texture;
  }

  /**
   * All that is in the way.
   *
   * @param figure the figure
   * @param texture which lines are those of textures
   * @return a line for each
   */
  static List<String> of(SeenFigure figure, Predicate<Mark> texture) {
    Collisions collisions = new Collisions(figure, texture);
    collisions.look();
    return collisions.found;
  }

  private void look() {
    for (int i = 0; i < figure.marks().size(); i++) {
      Mark mark = figure.marks().get(i);
      bounds.add(mark.bounds());
      if (isCircle(mark, DOT) && mark.fill() == 0 && i > 0) {
        leader(figure.marks().get(i - 1), mark);
      } else if (figure.texts().stream().anyMatch(text -> isRingOf(mark, text))) {
        rings.add(centre(mark));
      }
    }
    inTheBox();
    texts();
    leaders();
  }

  private static boolean isCircle(Mark mark, double radius) {
    Rectangle2D box = mark.shape().getBounds2D();
    return Math.abs(box.getWidth() - 2 * radius) < ROUND
        && Math.abs(box.getHeight() - 2 * radius) < ROUND
        && mark.clips().isEmpty();
  }

  private static Point2D centre(Mark mark) {
    Rectangle2D box = mark.shape().getBounds2D();
    return new Point2D.Double(box.getCenterX(), box.getCenterY());
  }

  private void leader(Mark line, Mark dot) {
    List<Stretch> stretches = line.stretches();
    if (stretches.size() == 1 && line.isStroked()) {
      Stretch one = stretches.get(0);
      if (centre(dot).distance(one.x2(), one.y2()) < ROUNDING) {
        leaders.add(new Leader(one, Set.of(line, dot)));
      }
    }
  }

  private void inTheBox() {
    Rectangle2D page = new Rectangle2D.Double(0, 0, figure.width(), figure.height());
    for (Text text : figure.texts()) {
      if (!within(page, text.ink())) {
        report("outside", quoted(text), text.ink());
      }
    }
    for (int i = 0; i < bounds.size(); i++) {
      Rectangle2D box = bounds.get(i);
      if (box.getWidth() >= 0 && box.getHeight() >= 0 && !within(page, box)) {
        report("outside", "a line or area", box);
      }
    }
  }

  private static boolean within(Rectangle2D page, Rectangle2D box) {
    return box.getMinX() >= page.getMinX() - ROUNDING
        && box.getMinY() >= page.getMinY() - ROUNDING
        && box.getMaxX() <= page.getMaxX() + ROUNDING
        && box.getMaxY() <= page.getMaxY() + ROUNDING;
  }

  private void texts() {
    for (int i = 0; i < figure.texts().size(); i++) {
      Text text = figure.texts().get(i);
      for (Text other : figure.texts().subList(0, i)) {
        if (grown(text.ink(), NEAR).intersects(other.ink())) {
          report("text on text", quoted(text) + " and " + quoted(other), text.ink());
        }
      }
      for (int j = 0; j < bounds.size(); j++) {
        Mark mark = figure.marks().get(j);
        double reach = texture.test(mark) ? HALO : NEAR;
        Rectangle2D box = grown(text.ink(), reach + (mark.isStroked() ? mark.line() / 2 : 0));
        if (box.intersects(bounds.get(j)) || onLine(box, bounds.get(j))) {
          onMark(text, mark, box);
        }
      }
    }
  }

  /** The bounds of a level or upright line have no area. */
  private static boolean onLine(Rectangle2D box, Rectangle2D flat) {
    return box.intersectsLine(flat.getMinX(), flat.getMinY(), flat.getMaxX(), flat.getMaxY());
  }

  private void onMark(Text text, Mark mark, Rectangle2D box) {
    if (mark.fill() >= 0 && mark.fill() < DARK && isDarkUnder(mark, text.ink())) {
      report("text on dark", quoted(text), text.ink());
      return;
    }
    if (!mark.isStroked() || mark.stroke() == 255 || isOwnLeader(mark, text)) {
      return;
    }
    if (texture.test(mark)) {
      if (text.halo() < HALO && isSeenIn(mark, box) || mark.order() > text.order()) {
        report("text on texture", quoted(text), text.ink());
      }
    } else if (!isRingOf(mark, text) && isSeenIn(mark, box)) {
      report("text on line", quoted(text) + " on a line " + mark.line() + " wide", text.ink());
    }
  }

  /** A leader begins close to its lettering, beside, above or below it, but not in it. */
  private boolean isOwnLeader(Mark mark, Text text) {
    return leaders.stream()
        .filter(leader -> leader.marks().contains(mark))
        .anyMatch(
            leader ->
                grown(text.ink(), OWN).contains(leader.line().x1(), leader.line().y1())
                    && !leader.line().meets(grown(text.ink(), TOUCH)));
  }

  private static boolean isRingOf(Mark mark, Text text) {
    Point2D centre = centre(mark);
    return isCircle(mark, RING)
        && centre.distance(text.ink().getMinX(), text.ink().getMinY()) < RING
        && centre.distance(text.ink().getMaxX(), text.ink().getMaxY()) < RING;
  }

  private boolean isDarkUnder(Mark mark, Rectangle2D box) {
    for (double x = box.getMinX(); x <= box.getMaxX(); x += SAMPLE) {
      for (double y = box.getMinY(); y <= box.getMaxY(); y += SAMPLE) {
        if (mark.shape().contains(x, y) && isSeen(mark, x, y)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a line is seen somewhere in a box: not clipped away there, nor covered. */
  private boolean isSeenIn(Mark mark, Rectangle2D box) {
    for (Stretch one : mark.stretches()) {
      if (one.meets(box)) {
        int steps = (int) Math.ceil(one.length() / SAMPLE) + 1;
        for (int i = 0; i <= steps; i++) {
          double x = one.x1() + (one.x2() - one.x1()) * i / steps;
          double y = one.y1() + (one.y2() - one.y1()) * i / steps;
          if (box.contains(x, y) && isSeen(mark, x, y)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean isSeen(Mark mark, double x, double y) {
    if (!mark.isIn(x, y)) {
      return false;
    }
    for (int i = figure.marks().indexOf(mark) + 1; i < bounds.size(); i++) {
      Mark over = figure.marks().get(i);
      if (over.fill() >= 0
          && bounds.get(i).contains(x, y)
          && over.shape().contains(x, y)
          && over.isIn(x, y)) {
        return false;
      }
    }
    return true;
  }

  private void leaders() {
    for (int i = 0; i < leaders.size(); i++) {
      Stretch one = leaders.get(i).line();
      Line2D line = new Line2D.Double(one.x1(), one.y1(), one.x2(), one.y2());
      for (Leader other : leaders.subList(0, i)) {
        Stretch two = other.line();
        if (line.intersectsLine(two.x1(), two.y1(), two.x2(), two.y2())) {
          report("leader on leader", "", line.getBounds2D());
        }
      }
      for (Point2D ring : rings) {
        // Its own ring’s border is where a leader begins.
        if (line.ptSegDist(ring) < RING - NEAR) {
          report("leader on text", "a ring", line.getBounds2D());
        }
      }
      for (int j = 0; j < bounds.size(); j++) {
        Mark mark = figure.marks().get(j);
        if (!leaders.get(i).marks().contains(mark)
            && mark.isStroked()
            && !texture.test(mark)
            && (grown(line.getBounds2D(), BESIDE).intersects(bounds.get(j))
                || onLine(grown(line.getBounds2D(), BESIDE), bounds.get(j)))
            && alongside(line, mark) > ALONG) {
          report("leader along line", "a line " + mark.line() + " wide", line.getBounds2D());
        }
      }
    }
  }

  /** How far a leader runs beside a line that is seen. */
  private double alongside(Line2D leader, Mark mark) {
    double run = 0;
    for (Stretch one : mark.stretches()) {
      if (one.length() == 0) {
        continue;
      }
      double across = leader.getX2() - leader.getX1();
      double down = leader.getY2() - leader.getY1();
      double turn =
          Math.abs(across * (one.y2() - one.y1()) - down * (one.x2() - one.x1()))
              / one.length()
              / Math.hypot(across, down);
      if (turn > 0.1) {
        continue;
      }
      int steps = (int) Math.ceil(one.length() / SAMPLE);
      for (int i = 0; i < steps; i++) {
        double x = one.x1() + (one.x2() - one.x1()) * (i + 0.5) / steps;
        double y = one.y1() + (one.y2() - one.y1()) * (i + 0.5) / steps;
        if (leader.ptSegDist(x, y) < BESIDE && isSeen(mark, x, y)) {
          run += one.length() / steps;
        }
      }
    }
    return run;
  }

  private static Rectangle2D grown(Rectangle2D box, double by) {
    return new Rectangle2D.Double(
        box.getX() - by, box.getY() - by, box.getWidth() + 2 * by, box.getHeight() + 2 * by);
  }

  private static String quoted(Text text) {
    return "“" + text.words() + "”";
  }

  private void report(String what, String which, Rectangle2D where) {
    found.add(
        String.format(
            Locale.ROOT,
            "%s: %s at %.1f, %.1f to %.1f, %.1f",
            what,
            which,
            where.getMinX(),
            where.getMinY(),
            where.getMaxX(),
            where.getMaxY()));
  }
}
