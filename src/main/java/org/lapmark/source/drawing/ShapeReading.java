package org.lapmark.source.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;

/** Takes a drawing's shapes, in millimetres, as they are in one variant. */
final class ShapeReading {
  /** The widest gap between an outline's end and start that is closed, in millimetres. */
  static final double GAP = 0.05;

  /** How far a dart's leg may stray from a straight line, in millimetres. */
  private static final double STRAIGHT_LEG = 0.1;

  private final PanelDrawing drawing;
  private final Function<Formula, Double> evaluator;
  private final Findings findings;
  private final SegmentBudget budget;
  private final Map<Role, List<DrawnMark>> marks = new EnumMap<>(Role.class);
  private final List<DrawnNotch> notches = new ArrayList<>();
  private Path outline;

  ShapeReading(PanelDrawing drawing, Function<Formula, Double> evaluator, Findings findings) {
    this.drawing = drawing;
    this.evaluator = evaluator;
    this.findings = findings;
    this.budget = new SegmentBudget(drawing.limits().pathSegments());
  }

  /** The shapes; null when there is no usable outline, which is then reported. */
  PanelDrawing.Shapes shapes(List<DrawnShape> shapes) {
    for (DrawnShape shape : shapes) {
      if (shape.isBroken()) {
        continue;
      }
      try {
        shape.role().form().take(shape, this);
      } catch (FindingException e) {
        findings.add(e.finding());
        if (e.finding().code() == DrawingCode.PATH_TOO_LONG) {
          return null;
        }
      }
    }
    if (outline == null) {
      return null;
    }
    for (DrawnNotch notch : notches) {
      Optional<Finding> problem = notch.problem(outline);
      problem.ifPresent(findings::add);
      if (problem.isEmpty()) {
        add(notch.shape(), new DrawnMark(notch.shape().name(), notch.mark(), null));
      }
    }
    return new PanelDrawing.Shapes(outline, marks);
  }

  void outline(Path path) {
    outline = path;
  }

  void add(DrawnShape shape, DrawnMark mark) {
    marks.computeIfAbsent(shape.role(), role -> new ArrayList<>()).add(mark);
  }

  /** Adds a notch, which is held to the outline when that is known. */
  void add(DrawnNotch notch) {
    notches.add(notch);
  }

  Point point(DrawnShape shape) {
    Point mark =
        shape.mark(
            drawing.toMillimetres(),
            evaluator,
            drawing.isComputed(),
            budget,
            drawing.limits().largest());
    if (mark == null) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    return mark;
  }

  Path path(DrawnShape shape) {
    return new Path(run(shape).curves());
  }

  private OutlineBuilder.Subpath run(DrawnShape shape) {
    List<OutlineBuilder.Subpath> subpaths =
        shape.draw(
            drawing.toMillimetres(),
            evaluator,
            drawing.isComputed(),
            budget,
            drawing.limits().largest());
    if (subpaths.isEmpty()) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    if (subpaths.size() > 1) {
      throw several(shape, subpaths.size());
    }
    return subpaths.get(0);
  }

  /** A dart's two legs. */
  Path legs(DrawnShape shape) {
    Path path = path(shape);
    if (path.curves().size() != 2 || path.isClosed()) {
      throw fault(DrawingCode.DART_SHAPE, shape);
    }
    double bow = Math.max(bow(path.curves().get(0)), bow(path.curves().get(1)));
    if (bow > STRAIGHT_LEG) {
      findings.add(
          DrawingCode.DART_LEG_CURVED,
          shape.position(),
          "id",
          shape.id().text(),
          "bow",
          Rounded.hundredth(bow));
    }
    return path;
  }

  /** How far a curve strays from its chord. */
  private static double bow(Curve curve) {
    Point chord = curve.end().minus(curve.start());
    double most = 0;
    for (Point point : curve.flattened(STRAIGHT_LEG / 10)) {
      Point from = point.minus(curve.start());
      most =
          Math.max(
              most, chord.norm() > 0 ? Math.abs(chord.cross(from)) / chord.norm() : from.norm());
    }
    return most;
  }

  DrawnNotch notch(DrawnShape shape) {
    Point mark = point(shape);
    return shape.isPoint()
        ? new DrawnNotch(shape, mark, null)
        : new DrawnNotch(shape, mark, path(shape));
  }

  private static FindingException several(DrawnShape shape, int count) {
    return new FindingException(
        Finding.of(
            DrawingCode.SHAPE_SEVERAL, shape.position(), "id", shape.id().text(), "count", count));
  }

  Path outline(DrawnShape shape) {
    List<OutlineBuilder.Subpath> subpaths =
        shape.draw(
            drawing.toMillimetres(),
            evaluator,
            drawing.isComputed(),
            budget,
            drawing.limits().largest());
    if (subpaths.isEmpty()) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    OutlineJoiner joiner = OutlineJoiner.join(subpaths);
    if (joiner == null) {
      throw several(shape, subpaths.size());
    }
    if (joiner.widestGap() > GAP) {
      throw new FindingException(
          Finding.of(
              DrawingCode.OUTLINE_NOT_CLOSED,
              shape.position(),
              "gap",
              shown(joiner.widestGap()),
              "parts",
              subpaths.size()));
    }
    if (joiner.closed() > 0) {
      findings.add(
          DrawingCode.OUTLINE_GAP_CLOSED,
          shape.position(),
          "gap",
          shown(joiner.widestGap()),
          "count",
          joiner.closed());
    }
    Path path = new Path(joiner.curves());
    if (!(Math.abs(path.signedArea()) > GAP * GAP || path.enclosedArea() > GAP * GAP)) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    return path;
  }

  private static String shown(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .round(new MathContext(3, RoundingMode.HALF_UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static FindingException fault(FindingCode code, DrawnShape shape) {
    return new FindingException(Finding.of(code, shape.position(), "id", shape.id().text()));
  }
}
