package org.lapmark.check.piece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.cutting.PieceShape;

/**
 * Looks for a line in which a piece is its own mirror image: its stitching line, its cutting line,
 * its notches and everything marked on it. The grain doesn't count: a piece that is turned over has
 * it in the same place but for bias, and nobody can tell that by eye.
 *
 * <p>A mirror that leaves the outline alone exchanges the places at s and c - s along it, for some
 * c. For every c of a fine row, and for those that exchange two notches, the mirror is fitted
 * through the middle of the outline and then tried on everything.
 */
final class MirrorImage {
  /** What differs from its mirror image by less than this, in millimetres, looks the same. */
  private static final double SAME = 1;

  /** What is sewn lies a little farther off than what is seen. */
  private static final double SAME_MARK = 1.5;

  private static final int SAMPLES = 240;

  /** The outline is looked up in a table so many times as fine. */
  private static final int FINER = 8;

  private final PieceShape shape;
  private final Path outline;
  private final double length;
  private final List<Point> table = new ArrayList<>();
  private final List<Point> samples = new ArrayList<>();
  private final Point middle;
  private final List<Point> notches = new ArrayList<>();
  private final List<Double> notchPlaces = new ArrayList<>();
  private final List<List<Point>> marks = new ArrayList<>();
  private final List<String> kinds = new ArrayList<>();

  /** What of a piece differs from its mirror image, the first that does. */
  enum Difference {
    /** Nothing. */
    NONE,
    /** Stitching line or cutting line. */
    SHAPE,
    /** A notch. */
    NOTCHES,
    /** Another mark. */
    MARKS
  }

  private MirrorImage(PieceShape shape) {
    this.shape = shape;
    this.outline = shape.panel().outline();
    this.length = outline.length();
    double x = 0;
    double y = 0;
    for (int i = 0; i < SAMPLES * FINER; i++) {
      Point point = outline.atLength(length * i / (SAMPLES * FINER));
      table.add(point);
      if (i % FINER == 0) {
        samples.add(point);
        x += point.x() / SAMPLES;
        y += point.y() / SAMPLES;
      }
    }
    this.middle = new Point(x, y);
    marks();
  }

  /**
   * How a piece differs from its mirror image.
   *
   * @param shape the piece, which doesn't lie on a fold
   * @return what differs in the best of all mirrors
   */
  static Difference of(PieceShape shape) {
    MirrorImage image = new MirrorImage(shape);
    Difference best = Difference.SHAPE;
    for (double sum : image.sums()) {
      Difference difference = image.difference(sum);
      if (difference == Difference.NONE) {
        return difference;
      }
      if (difference.ordinal() > best.ordinal()) {
        best = difference;
      }
    }
    return best;
  }

  private void marks() {
    Panel panel = shape.panel();
    double before = 0;
    for (Edge edge : panel.edges()) {
      for (Mark.Notch notch : panel.marks(Mark.Notch.class)) {
        if (notch.edge().equals(edge.name())) {
          for (double offset : notch.set().offsets()) {
            double at = before + notch.at() + offset;
            at -= length * Math.floor(at / length);
            notches.add(outline.atLength(at));
            notchPlaces.add(at);
          }
        }
      }
      before += edge.path().length();
    }
    Compared compared = new Compared();
    panel.marks().forEach(mark -> mark.place(compared));
  }

  /** The points by which marks are compared; notches have places of their own. */
  private final class Compared implements Mark.Placing<Void> {
    @Override
    public Void notch(Mark.Notch notch) {
      return null;
    }

    @Override
    public Void grainline(Mark.Grainline grain) {
      return null;
    }

    @Override
    public Void point(PointMark point) {
      mark(point.sign(), point.points());
      return null;
    }

    @Override
    public Void line(LineMark line) {
      if (line.isDrawn()) {
        mark(line.kindName(), points(line.path()));
      }
      return null;
    }

    @Override
    public Void intake(Intake intake) {
      intake
          .lines(shape.panel().line(intake.edge()))
          .forEach(line -> mark(intake.kindName(), List.of(line.start(), line.end())));
      return null;
    }
  }

  private void mark(String kind, List<Point> points) {
    kinds.add(kind);
    marks.add(points);
  }

  private static List<Point> points(Path path) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      points.add(path.atLength(path.length() * i / 8));
    }
    return points;
  }

  /** A place on the outline, from anywhere round it. */
  private Point at(double place) {
    double index = place / length * table.size();
    index -= table.size() * Math.floor(index / table.size());
    int first = Math.min(table.size() - 1, (int) index);
    return table.get(first).towards(table.get((first + 1) % table.size()), index - first);
  }

  private List<Double> sums() {
    List<Double> sums = new ArrayList<>();
    for (int i = 0; i < notchPlaces.size() && i < 24; i++) {
      for (int j = i; j < notchPlaces.size() && j < 24; j++) {
        sums.add(notchPlaces.get(i) + notchPlaces.get(j));
      }
    }
    // Corners are exchanged with corners.
    double before = 0;
    List<Double> corners = new ArrayList<>();
    for (Edge edge : shape.panel().edges()) {
      corners.add(before);
      before += edge.path().length();
    }
    for (int i = 0; i < corners.size() && i < 24; i++) {
      for (int j = i; j < corners.size() && j < 24; j++) {
        sums.add(corners.get(i) + corners.get(j));
      }
    }
    for (int i = 0; i < SAMPLES; i++) {
      sums.add(length * i / SAMPLES);
    }
    return sums;
  }

  private Difference difference(double sum) {
    double along = 0;
    double across = 0;
    double most = length / SAMPLES + SAME;
    for (int i = 0; i < SAMPLES; i++) {
      Point one = samples.get(i).minus(middle);
      Point other = at(sum - length * i / SAMPLES).minus(middle);
      if (Math.abs(one.norm() - other.norm()) > most) {
        return Difference.SHAPE;
      }
      along += one.x() * other.x() - one.y() * other.y();
      across += one.x() * other.y() + one.y() * other.x();
    }
    double size = StrictMath.hypot(along, across);
    if (size == 0) {
      return Difference.SHAPE;
    }
    double cos = along / size;
    double sin = across / size;
    Affine mirror =
        new Affine(
            cos,
            sin,
            sin,
            -cos,
            middle.x() - cos * middle.x() - sin * middle.y(),
            middle.y() - sin * middle.x() + cos * middle.y());
    for (Point notch : notches) {
      Point image = mirror.apply(notch);
      if (notches.stream().noneMatch(other -> other.distance(image) <= SAME_MARK)) {
        return Difference.NOTCHES;
      }
    }
    for (int i = 0; i < marks.size(); i++) {
      if (!hasImage(i, mirror)) {
        return Difference.MARKS;
      }
    }
    return isOn(samples, outline, mirror) && isCutAlike(mirror)
        ? Difference.NONE
        : Difference.SHAPE;
  }

  private boolean isCutAlike(Affine mirror) {
    Path cut = shape.cuttingLine().path();
    return isOn(points(cut, SAMPLES), cut, mirror);
  }

  private static List<Point> points(Path path, int count) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      points.add(path.atLength(path.length() * i / count));
    }
    return points;
  }

  private static boolean isOn(List<Point> points, Path path, Affine mirror) {
    return points.stream().allMatch(point -> path.distance(mirror.apply(point)) <= SAME);
  }

  private boolean hasImage(int index, Affine mirror) {
    List<Point> image = marks.get(index).stream().map(mirror::apply).toList();
    for (int i = 0; i < marks.size(); i++) {
      if (kinds.get(i).equals(kinds.get(index)) && isSame(image, marks.get(i))) {
        return true;
      }
    }
    return false;
  }

  private static boolean isSame(List<Point> one, List<Point> other) {
    int count = one.size();
    if (count != other.size()) {
      return false;
    }
    boolean forwards = true;
    boolean backwards = true;
    for (int i = 0; i < count; i++) {
      forwards &= one.get(i).distance(other.get(i)) <= SAME_MARK;
      backwards &= one.get(i).distance(other.get(count - 1 - i)) <= SAME_MARK;
    }
    return forwards || backwards;
  }
}
