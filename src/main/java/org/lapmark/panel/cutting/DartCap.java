package org.lapmark.panel.cutting;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/**
 * Shapes the edge of darts' allowances, so that it lies on its neighbour's when the dart has been
 * sewn and pressed.
 *
 * <p>Let P be the apex, A and B the feet of the first and the second leg, 2a the angle between the
 * legs. Pressed onwards, the cloth from the axis to B lies mirrored along PB beyond B, and the
 * cloth from A to the axis lies there as well, turned about P by 2a. Both cover the fan between PB
 * and the ray at an angle a beyond it. So of the line that is cut between these two rays, the part
 * from A to the axis is the image under the turn back by 2a, and the part from the axis to B the
 * mirror image: both exact, and equally far from P on the axis. Pressed back, the same mirrored.
 */
final class DartCap {
  /** Steps smaller than this, in millimetres, aren't drawn. */
  private static final double LEAST_STEP = 1e-6;

  private static final double CHORD = 0.05;

  /** Half the angle, in radians, over which a dart's allowance isn't pressed to a side. */
  private static final double WIDEST = Math.PI / 4;

  /** How far a line may leave the fan in which the pressed dart lies, in millimetres. */
  private static final double OUTSIDE = 0.05;

  private final Panel panel;
  private final Intake.Dart dart;
  private final Point first;
  private final Point last;

  private DartCap(Panel panel, Intake.Dart dart) {
    this.panel = panel;
    this.dart = dart;
    Path edge = panel.line(dart.edge());
    this.first = edge.atLength(dart.from());
    this.last = edge.atLength(dart.to());
  }

  /** The cutting line with the allowance of every dart shaped that is pressed to a side. */
  static CuttingLine shaped(Panel panel, CuttingLine cutting) {
    CuttingLine shaped = cutting;
    for (Intake.Dart dart : panel.marks(Intake.Dart.class)) {
      if (dart.press() != Intake.Press.NONE) {
        DartCap cap = new DartCap(panel, dart);
        shaped = cap.applied(shaped);
        if (shaped.path().selfCrossing().isPresent()) {
          throw cap.impossible();
        }
      }
    }
    return shaped;
  }

  /** Where the legs of a panel's darts and the ends of its pleats are cut, by slits. */
  static List<Path> slits(Panel panel, CuttingLine cutting) {
    List<Path> slits = new ArrayList<>();
    Path line = cutting.path();
    for (Intake intake : panel.marks(Intake.class)) {
      for (Line one : intake.lines(panel.line(intake.edge()))) {
        slits.add(slit(line, one.start(), one.start().minus(one.end()).unit()));
      }
    }
    return slits;
  }

  private static Path slit(Path line, Point foot, Point outwards) {
    double reach = Crossings.reach(line, foot.minus(outwards.times(0.5)), outwards) - 0.5;
    if (!(reach > LEAST_STEP) || reach > Notches.FARTHEST) {
      return new Path(List.of(new Line(foot, foot.minus(outwards.times(Notches.INSIDE)))));
    }
    Point start = foot.plus(outwards.times(reach));
    return new Path(
        List.of(
            new Line(start, start.minus(outwards.times(Math.min(Notches.LONGEST, reach / 2))))));
  }

  private CuttingLine applied(CuttingLine cutting) {
    Path line = cutting.path();
    Point apex = dart.apex();
    boolean onwards = dart.press() == Intake.Press.ONWARDS;
    Point near = onwards ? last : first;
    Point far = onwards ? first : last;
    double half = angle() / 2;
    if (!(half <= WIDEST)) {
      throw impossible();
    }
    Point direction = near.minus(apex).unit();
    double turn = onwards ? half : -half;
    Point beyond =
        new Point(
            direction.x() * StrictMath.cos(turn) - direction.y() * StrictMath.sin(turn),
            direction.x() * StrictMath.sin(turn) + direction.y() * StrictMath.cos(turn));
    double atNear = crossing(line, direction);
    double atFar = crossing(line, far.minus(apex).unit());
    double atBeyond = crossing(line, beyond);
    double start = onwards ? atFar : atNear;
    double end = onwards ? atNear : atFar;
    if (!(start < end)) {
      throw impossible();
    }
    Path lying = onwards ? line.around(atNear, atBeyond) : line.around(atBeyond, atNear);
    for (Point point : lying.flattened(CHORD)) {
      Point arm = point.minus(apex);
      double side = onwards ? 1 : -1;
      if (side * direction.cross(arm) < -OUTSIDE || side * arm.cross(beyond) < -OUTSIDE) {
        throw impossible();
      }
    }
    Affine back = Affine.turn(apex, near, far);
    Path mirrored = lying.transformed(Affine.mirror(apex, near.minus(apex))).reversed();
    Path turned = lying.transformed(back);
    Path cap = onwards ? joined(turned, mirrored) : joined(mirrored, turned);
    return new CuttingLine(spans(cutting, start, end, cap));
  }

  private double angle() {
    Point a = first.minus(dart.apex());
    Point b = last.minus(dart.apex());
    return StrictMath.atan2(a.cross(b), a.dot(b));
  }

  /** The arc length at which a ray from the apex leaves the piece. */
  private double crossing(Path line, Point direction) {
    double reach = Crossings.reach(line, dart.apex(), direction);
    if (!(reach >= first.distance(dart.apex()) / 2) || Double.isInfinite(reach)) {
      throw impossible();
    }
    return line.nearestLength(dart.apex().plus(direction.times(reach)));
  }

  /** One path after another; where they don't quite meet, with a line between them. */
  private static Path joined(Path one, Path other) {
    double gap = one.end().distance(other.start());
    if (gap <= LEAST_STEP) {
      return one.then(other);
    }
    return one.then(new Path(List.of(new Line(one.end(), other.start())))).then(other);
  }

  private List<CuttingLine.Span> spans(CuttingLine cutting, double start, double end, Path cap) {
    List<CuttingLine.Span> spans = new ArrayList<>();
    double before = 0;
    boolean placed = false;
    for (CuttingLine.Span span : cutting.spans()) {
      double length = span.path().length();
      double from = Math.max(0, start - before);
      double to = Math.min(length, end - before);
      if (from > LEAST_STEP) {
        add(spans, span.edge(), span.path().part(0, Math.min(from, length)));
      }
      if (!placed && start - before < length) {
        add(spans, dart.edge(), cap);
        placed = true;
      }
      if (to < length - LEAST_STEP) {
        if (from < length - LEAST_STEP && to > 0) {
          add(spans, span.edge(), span.path().part(to, length));
        } else if (to <= 0) {
          add(spans, span.edge(), span.path());
        }
      }
      before += length;
    }
    return spans;
  }

  private static void add(List<CuttingLine.Span> spans, String edge, Path path) {
    CuttingLine.Span last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
    if (last != null && last.edge().equals(edge)) {
      spans.set(spans.size() - 1, new CuttingLine.Span(edge, joined(last.path(), path)));
    } else if (last != null && last.path().end().distance(path.start()) > LEAST_STEP) {
      Path step = new Path(List.of(new Line(last.path().end(), path.start())));
      spans.add(new CuttingLine.Span(edge, step.then(path)));
    } else {
      spans.add(new CuttingLine.Span(edge, path));
    }
  }

  private PanelException impossible() {
    return PanelCode.DART_CAP.exception("panel", panel.name(), "mark", dart.name());
  }
}
