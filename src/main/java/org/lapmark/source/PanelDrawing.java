package org.lapmark.source;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;

/** A panel's SVG file as read: shapes, some of whose attributes may be placeholders. Immutable. */
public final class PanelDrawing {
  /** The widest gap between an outline's end and start that is closed, in millimetres. */
  static final double GAP = 0.05;

  private final SourceFile file;
  private final List<DrawnShape> shapes;
  private final boolean computed;
  private final Affine toMillimetres;
  private final Limits limits;

  /**
   * Puts a drawing together.
   *
   * @param toMillimetres from user units; null if the drawing doesn't say, which was reported
   */
  PanelDrawing(
      SourceFile file,
      List<DrawnShape> shapes,
      boolean computed,
      Affine toMillimetres,
      Limits limits) {
    this.file = file;
    this.shapes = List.copyOf(shapes);
    this.computed = computed;
    this.toMillimetres = toMillimetres;
    this.limits = limits;
  }

  /**
   * The file.
   *
   * @return the SVG file
   */
  public SourceFile file() {
    return file;
  }

  /**
   * Whether an attribute has a placeholder; then a user unit is 1 mm.
   *
   * @return true for a computed panel
   */
  public boolean isComputed() {
    return computed;
  }

  /**
   * The named corners, which are the same in every variant.
   *
   * @return the names in file order
   */
  public Set<String> cornerNames() {
    Set<String> names = new LinkedHashSet<>();
    for (DrawnShape shape : shapes) {
      if (shape.role() == Role.CORNER) {
        names.add(shape.name());
      }
    }
    return Collections.unmodifiableSet(names);
  }

  /**
   * The shapes in one variant, in millimetres. A corner, a drill point or a notch stands at the
   * centre of its circle, ellipse or rectangle, in the middle of its line, or where its path
   * begins. Segments without length are left out; a gap of up to 0.05 mm between the outline's end
   * and start is closed by moving one of them.
   *
   * @param evaluator gives a placeholder's exact number: millimetres, degrees or a plain number;
   *     throws {@link org.lapmark.finding.FindingException}
   * @param findings where problems go
   * @return the shapes, or null when there is no usable outline (which is then reported)
   */
  public Shapes resolve(Function<Formula, Double> evaluator, Findings findings) {
    if (toMillimetres == null) {
      return null;
    }
    Path outline = null;
    List<Point> grainline = null;
    Map<String, Point> corners = new LinkedHashMap<>();
    Map<String, Path> placements = new LinkedHashMap<>();
    Map<String, Path> foldLines = new LinkedHashMap<>();
    Map<String, Point> drillPoints = new LinkedHashMap<>();
    List<Point> notches = new ArrayList<>();
    SegmentBudget budget = new SegmentBudget(limits.pathSegments());
    for (DrawnShape shape : shapes) {
      if (shape.isBroken()) {
        continue;
      }
      try {
        switch (shape.role()) {
          case OUTLINE -> outline = outline(shape, evaluator, budget, findings);
          case GRAINLINE -> {
            Path line = path(shape, evaluator, budget);
            grainline = List.of(line.start(), line.end());
          }
          case CORNER -> corners.put(shape.name(), mark(shape, evaluator, budget));
          case PLACEMENT -> placements.put(shape.name(), path(shape, evaluator, budget));
          case FOLDLINE -> foldLines.put(shape.name(), path(shape, evaluator, budget));
          case DRILL -> drillPoints.put(shape.name(), mark(shape, evaluator, budget));
          default -> notches.add(mark(shape, evaluator, budget));
        }
      } catch (FindingException e) {
        findings.add(e.finding());
        if (e.finding().code() == SourceCode.PATH_TOO_LONG) {
          return null;
        }
      }
    }
    return outline == null
        ? null
        : new Shapes(outline, corners, grainline, placements, foldLines, drillPoints, notches);
  }

  /** Reports what can be known before anything is computed. */
  void check(Findings findings) {
    if (computed) {
      shapes.forEach(shape -> shape.check(limits, findings));
    } else {
      resolve(
          formula -> {
            throw new IllegalStateException("a fixed drawing has no placeholders");
          },
          findings);
    }
  }

  private Point mark(DrawnShape shape, Function<Formula, Double> evaluator, SegmentBudget budget) {
    Point mark = shape.mark(toMillimetres, evaluator, computed, budget, limits.largest());
    if (mark == null) {
      throw fault(SourceCode.SHAPE_EMPTY, shape);
    }
    return mark;
  }

  private Path path(DrawnShape shape, Function<Formula, Double> evaluator, SegmentBudget budget) {
    return new Path(run(shape, evaluator, budget).curves());
  }

  private OutlineBuilder.Subpath run(
      DrawnShape shape, Function<Formula, Double> evaluator, SegmentBudget budget) {
    List<OutlineBuilder.Subpath> subpaths =
        shape.draw(toMillimetres, evaluator, computed, budget, limits.largest());
    if (subpaths.isEmpty()) {
      throw fault(SourceCode.SHAPE_EMPTY, shape);
    }
    if (subpaths.size() > 1) {
      throw new FindingException(
          Finding.of(
              SourceCode.SHAPE_SEVERAL,
              shape.position(),
              "id",
              shape.id().text(),
              "count",
              subpaths.size()));
    }
    return subpaths.get(0);
  }

  private Path outline(
      DrawnShape shape,
      Function<Formula, Double> evaluator,
      SegmentBudget budget,
      Findings findings) {
    List<Curve> curves = new ArrayList<>(run(shape, evaluator, budget).curves());
    Point start = curves.get(0).start();
    Point end = curves.get(curves.size() - 1).end();
    double gap = start.distance(end);
    if (gap > GAP) {
      throw new FindingException(
          Finding.of(SourceCode.OUTLINE_NOT_CLOSED, shape.position(), "gap", shown(gap)));
    }
    if (gap > Path.JOIN_TOLERANCE) {
      findings.add(SourceCode.OUTLINE_GAP_CLOSED, shape.position(), "gap", shown(gap));
      close(curves);
    }
    Path path = new Path(curves);
    if (!(Math.abs(path.signedArea()) > GAP * GAP)) {
      throw fault(SourceCode.SHAPE_EMPTY, shape);
    }
    return path;
  }

  /** Moves the last end to the first start, or the other way round; between arcs adds a line. */
  private static void close(List<Curve> curves) {
    int last = curves.size() - 1;
    Point start = curves.get(0).start();
    Point end = curves.get(last).end();
    if (curves.get(last) instanceof Line line) {
      curves.set(last, new Line(line.start(), start));
    } else if (curves.get(last) instanceof Cubic cubic) {
      curves.set(
          last,
          new Cubic(
              cubic.start(), cubic.control1(), cubic.control2().plus(start.minus(end)), start));
    } else if (curves.get(0) instanceof Line line) {
      curves.set(0, new Line(end, line.end()));
    } else if (curves.get(0) instanceof Cubic cubic) {
      curves.set(
          0,
          new Cubic(end, cubic.control1().plus(end.minus(start)), cubic.control2(), cubic.end()));
    } else {
      curves.add(new Line(end, start));
    }
  }

  private static String shown(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .round(new MathContext(3, RoundingMode.HALF_UP))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static FindingException fault(SourceCode code, DrawnShape shape) {
    return new FindingException(Finding.of(code, shape.position(), "id", shape.id().text()));
  }

  /**
   * What a drawing shows.
   *
   * @param outline the closed outline
   * @param corners named points, in file order
   * @param grainline two points, or null
   * @param placements named lines
   * @param foldLines named lines along which cloth is folded
   * @param drillPoints named points
   * @param notches points near the outline that state notches
   */
  public record Shapes(
      Path outline,
      Map<String, Point> corners,
      List<Point> grainline,
      Map<String, Path> placements,
      Map<String, Path> foldLines,
      Map<String, Point> drillPoints,
      List<Point> notches) {
    /** Copies the collections, keeping their order. */
    public Shapes {
      corners = Collections.unmodifiableMap(new LinkedHashMap<>(corners));
      grainline = grainline == null ? null : List.copyOf(grainline);
      placements = Collections.unmodifiableMap(new LinkedHashMap<>(placements));
      foldLines = Collections.unmodifiableMap(new LinkedHashMap<>(foldLines));
      drillPoints = Collections.unmodifiableMap(new LinkedHashMap<>(drillPoints));
      notches = List.copyOf(notches);
    }
  }
}
