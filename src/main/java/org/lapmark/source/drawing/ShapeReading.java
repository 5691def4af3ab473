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
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.folder.Limits;

/** Takes a drawing's shapes, in millimetres, as they are in one variant. */
final class ShapeReading {
  /** How far a dart's leg may stray from a straight line, in millimetres. */
  private static final double STRAIGHT_LEG = 0.1;

  private final Affine toMillimetres;
  private final boolean computed;
  private final Limits limits;
  private final Function<Formula, Double> evaluator;
  private final Findings findings;
  private final SegmentBudget budget;
  private final Map<Role, List<DrawnMark>> marks = new EnumMap<>(Role.class);
  private final List<DrawnNotch> notches = new ArrayList<>();
  private Path outline;

  /**
   * Prepares it.
   *
   * @param toMillimetres from user units
   * @param computed whether a user unit is a millimetre
   * @param evaluator gives placeholders' numbers
   * @param findings where problems go
   */
  ShapeReading(
      Affine toMillimetres,
      boolean computed,
      Limits limits,
      Function<Formula, Double> evaluator,
      Findings findings) {
    this.toMillimetres = toMillimetres;
    this.computed = computed;
    this.limits = limits;
    this.evaluator = evaluator;
    this.findings = findings;
    this.budget = new SegmentBudget(limits.pathSegments());
  }

  /** The shapes; null when there is no usable outline, which is then reported. */
  DrawnPanel shapes(List<DrawnShape> shapes) {
    for (DrawnShape shape : shapes) {
      if (shape.isBroken()) {
        continue;
      }
      try {
        take(shape);
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
    return new DrawnPanel(outline, marks);
  }

  private void take(DrawnShape shape) {
    switch (shape.role().form()) {
      case OUTLINE -> outline = outline(shape);
      case LINE -> add(shape, DrawnMark.line(shape.name(), path(shape)));
      case POINT -> add(shape, new DrawnMark(shape.name(), point(shape), null));
      case LEGS -> add(shape, DrawnMark.line(shape.name(), legs(shape)));
      // Held to the outline when that is known.
      case NOTCH -> notches.add(notch(shape));
    }
  }

  private void add(DrawnShape shape, DrawnMark mark) {
    marks.computeIfAbsent(shape.role(), role -> new ArrayList<>()).add(mark);
  }

  private Point point(DrawnShape shape) {
    Point mark = shape.mark(toMillimetres, evaluator, computed, budget, limits.largest());
    if (mark == null) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    return mark;
  }

  private Path path(DrawnShape shape) {
    return new Path(run(shape).curves());
  }

  private OutlineBuilder.Subpath run(DrawnShape shape) {
    List<OutlineBuilder.Subpath> subpaths =
        shape.draw(toMillimetres, evaluator, computed, budget, limits.largest());
    if (subpaths.isEmpty()) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    if (subpaths.size() > 1) {
      throw several(shape, subpaths.size());
    }
    return subpaths.get(0);
  }

  /** A dart's two legs. */
  private Path legs(DrawnShape shape) {
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

  private DrawnNotch notch(DrawnShape shape) {
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

  private Path outline(DrawnShape shape) {
    List<OutlineBuilder.Subpath> subpaths =
        shape.draw(toMillimetres, evaluator, computed, budget, limits.largest());
    if (subpaths.isEmpty()) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    OutlineJoiner joiner = OutlineJoiner.join(subpaths);
    if (joiner == null) {
      throw several(shape, subpaths.size());
    }
    if (joiner.widestGap() > OutlineBuilder.GAP) {
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
    if (!(Math.abs(path.signedArea()) > OutlineBuilder.GAP * OutlineBuilder.GAP
        || path.enclosedArea() > OutlineBuilder.GAP * OutlineBuilder.GAP)) {
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
