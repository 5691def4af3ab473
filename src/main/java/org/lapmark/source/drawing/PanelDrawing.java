package org.lapmark.source.drawing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.folder.Limits;

/** A panel's SVG file as read: shapes, some of whose attributes may be placeholders. Immutable. */
public final class PanelDrawing {
  /** The widest gap between an outline's end and start that is closed, in millimetres. */
  static final double GAP = 0.05;

  /** How far a dart's leg may stray from a straight line, in millimetres. */
  private static final double STRAIGHT_LEG = 0.1;

  private final List<DrawnShape> shapes;
  private final boolean computed;
  private final Affine toMillimetres;
  private final Limits limits;

  /**
   * Puts a drawing together.
   *
   * @param toMillimetres from user units; null if the drawing doesn't say, which was reported
   */
  PanelDrawing(List<DrawnShape> shapes, boolean computed, Affine toMillimetres, Limits limits) {
    this.shapes = List.copyOf(shapes);
    this.computed = computed;
    this.toMillimetres = toMillimetres;
    this.limits = limits;
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
   * The file that it was read from.
   *
   * @return nothing for a drawing without a shape that has a role
   */
  public Optional<SourceFile> file() {
    return shapes.stream().findFirst().map(shape -> shape.id().file());
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
   * The corners' names as they follow one another along the outline, clockwise, from the first in
   * the alphabet; in file order where the outline can't be drawn. Only of a fixed drawing.
   */
  public List<String> cornersAround() {
    Shapes shapes = fixed(new Findings());
    if (shapes == null || shapes.corners().isEmpty()) {
      return List.copyOf(cornerNames());
    }
    Path outline = shapes.outline();
    Map<String, Double> places = new LinkedHashMap<>();
    shapes.corners().forEach((name, at) -> places.put(name, outline.nearestLength(at)));
    List<String> names = new ArrayList<>(places.keySet());
    names.sort(Comparator.comparing(places::get));
    if (outline.signedArea() < 0) {
      Collections.reverse(names);
    }
    Collections.rotate(names, -names.indexOf(Collections.min(names)));
    return names;
  }

  /** The names of its marks with a role. */
  public Set<String> names(Role role) {
    Set<String> names = new LinkedHashSet<>();
    for (DrawnShape shape : shapes) {
      if (shape.role() == role) {
        names.add(shape.name());
      }
    }
    return Collections.unmodifiableSet(names);
  }

  /**
   * The drawing without some of its marks.
   *
   * @param ids of what is left out, with their roles' words
   */
  public PanelDrawing without(Set<String> ids) {
    return ids.isEmpty()
        ? this
        : new PanelDrawing(
            shapes.stream().filter(shape -> !ids.contains(shape.role().id(shape.name()))).toList(),
            computed,
            toMillimetres,
            limits);
  }

  /** The named slash lines, which are the same in every variant. */
  public Set<String> slashNames() {
    Set<String> names = new TreeSet<>();
    for (DrawnShape shape : shapes) {
      if (shape.role() == Role.SLASH) {
        names.add(shape.name());
      }
    }
    return names;
  }

  /** Its marks other than corners, by the ids that state them. */
  public Set<String> markNames() {
    Set<String> names = new TreeSet<>();
    for (DrawnShape shape : shapes) {
      if (shape.role() != Role.CORNER && shape.role() != Role.OUTLINE) {
        names.add(shape.role().id(shape.name()));
      }
    }
    return names;
  }

  /**
   * Where its outline or its grainline is stated.
   *
   * @param grainline whether the grainline is asked for
   * @return the place of its id or label; nothing where there is none
   */
  public Optional<Position> place(boolean grainline) {
    return shapes.stream()
        .filter(shape -> shape.role() == (grainline ? Role.GRAINLINE : Role.OUTLINE))
        .map(DrawnShape::position)
        .findFirst();
  }

  /**
   * Where a shape with a role is stated.
   *
   * @param id such as {@code outline} or {@code corner.a}
   * @return the place of its id or label; nothing where there is none
   */
  public Optional<Position> place(String id) {
    return shapes.stream()
        .filter(shape -> shape.role().id(shape.name()).equals(id))
        .map(DrawnShape::position)
        .findFirst();
  }

  /** Says at which size a fixed drawing comes out. */
  void reportSize(Viewport.Doubt doubt, Position place, Findings findings) {
    Shapes shapes = fixed(new Findings());
    if (shapes != null) {
      Box box = shapes.outline().bounds();
      findings.add(
          DrawingCode.SVG_SIZE,
          place,
          "reason",
          doubt.name().toLowerCase(Locale.ROOT),
          "width",
          hundredth(box.width()),
          "height",
          hundredth(box.height()));
    }
  }

  private Shapes fixed(Findings findings) {
    return resolve(
        formula -> {
          throw new IllegalStateException("a fixed drawing has no placeholders");
        },
        findings);
  }

  /**
   * The shapes in one variant, in millimetres. A corner, a drill point or a notch stands at the
   * centre of its circle, ellipse or rectangle, in the middle of its line, or where its path
   * begins. Segments without length are left out. An outline may be drawn as several open lines, in
   * any order and direction; each goes on with the one whose end is nearest. Gaps of up to 0.05 mm
   * between them, or between the outline's end and start, are closed by moving one of the ends.
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
    Map<String, Path> styleLines = new LinkedHashMap<>();
    Map<String, Point> drillPoints = new LinkedHashMap<>();
    Map<String, Path> slashes = new LinkedHashMap<>();
    Map<String, Point> notches = new LinkedHashMap<>();
    Map<String, Path> darts = new LinkedHashMap<>();
    Map<String, Path> pleats = new LinkedHashMap<>();
    Map<String, Path> buttonholes = new LinkedHashMap<>();
    Map<String, Point> matchPoints = new LinkedHashMap<>();
    List<DrawnNotch> drawnNotches = new ArrayList<>();
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
          case SLASH -> slashes.put(shape.name(), path(shape, evaluator, budget));
          case STYLELINE -> styleLines.put(shape.name(), path(shape, evaluator, budget));
          case DRILL -> drillPoints.put(shape.name(), mark(shape, evaluator, budget));
          case DART ->
              darts.put(shape.name(), dart(shape, path(shape, evaluator, budget), findings));
          case PLEAT -> pleats.put(shape.name(), path(shape, evaluator, budget));
          case BUTTONHOLE -> buttonholes.put(shape.name(), path(shape, evaluator, budget));
          case MATCHPOINT -> matchPoints.put(shape.name(), mark(shape, evaluator, budget));
          default -> drawnNotches.add(notch(shape, evaluator, budget));
        }
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
    for (DrawnNotch notch : drawnNotches) {
      Optional<Finding> problem = notch.problem(outline);
      problem.ifPresent(findings::add);
      if (problem.isEmpty()) {
        notches.put(notch.shape().name(), notch.mark());
      }
    }
    return new Shapes(
        outline,
        corners,
        grainline,
        placements,
        foldLines,
        drillPoints,
        notches,
        slashes,
        styleLines,
        darts,
        pleats,
        buttonholes,
        matchPoints);
  }

  /** Reports what can be known before anything is computed. */
  void check(Findings findings) {
    if (computed) {
      SegmentBudget budget = new SegmentBudget(limits.pathSegments());
      for (DrawnShape shape : shapes) {
        if (!budget.isSpent()) {
          shape.check(budget, findings);
        }
      }
    } else {
      fixed(findings);
    }
  }

  private Point mark(DrawnShape shape, Function<Formula, Double> evaluator, SegmentBudget budget) {
    Point mark = shape.mark(toMillimetres, evaluator, computed, budget, limits.largest());
    if (mark == null) {
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
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
      throw fault(DrawingCode.SHAPE_EMPTY, shape);
    }
    if (subpaths.size() > 1) {
      throw several(shape, subpaths.size());
    }
    return subpaths.get(0);
  }

  /** A dart's two legs. */
  private static Path dart(DrawnShape shape, Path path, Findings findings) {
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
          hundredth(bow));
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

  private DrawnNotch notch(
      DrawnShape shape, Function<Formula, Double> evaluator, SegmentBudget budget) {
    Point mark = mark(shape, evaluator, budget);
    return shape.isPoint()
        ? new DrawnNotch(shape, mark, null)
        : new DrawnNotch(shape, mark, path(shape, evaluator, budget));
  }

  private static FindingException several(DrawnShape shape, int count) {
    return new FindingException(
        Finding.of(
            DrawingCode.SHAPE_SEVERAL, shape.position(), "id", shape.id().text(), "count", count));
  }

  private Path outline(
      DrawnShape shape,
      Function<Formula, Double> evaluator,
      SegmentBudget budget,
      Findings findings) {
    List<OutlineBuilder.Subpath> subpaths =
        shape.draw(toMillimetres, evaluator, computed, budget, limits.largest());
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

  private static String hundredth(double millimetres) {
    return BigDecimal.valueOf(millimetres)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
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

  /**
   * What a drawing shows.
   *
   * @param outline the closed outline
   * @param corners named points, in file order
   * @param grainline two points, or null
   * @param placements named lines
   * @param foldLines named lines along which cloth is folded
   * @param drillPoints named points
   * @param notches named points near the outline that state notches
   * @param slashes named lines along which the panel can be cut and opened
   * @param styleLines named lines along which the panel may be split
   * @param darts by name, each of two legs
   * @param pleats named lines from the outline inwards
   * @param buttonholes named lines that are cut
   * @param matchPoints named points
   */
  public record Shapes(
      Path outline,
      Map<String, Point> corners,
      List<Point> grainline,
      Map<String, Path> placements,
      Map<String, Path> foldLines,
      Map<String, Point> drillPoints,
      Map<String, Point> notches,
      Map<String, Path> slashes,
      Map<String, Path> styleLines,
      Map<String, Path> darts,
      Map<String, Path> pleats,
      Map<String, Path> buttonholes,
      Map<String, Point> matchPoints) {
    /** Copies the collections, keeping their order. */
    public Shapes {
      corners = Collections.unmodifiableMap(new LinkedHashMap<>(corners));
      grainline = grainline == null ? null : List.copyOf(grainline);
      placements = Collections.unmodifiableMap(new LinkedHashMap<>(placements));
      foldLines = Collections.unmodifiableMap(new LinkedHashMap<>(foldLines));
      drillPoints = Collections.unmodifiableMap(new LinkedHashMap<>(drillPoints));
      notches = Collections.unmodifiableMap(new LinkedHashMap<>(notches));
      darts = Collections.unmodifiableMap(new LinkedHashMap<>(darts));
      pleats = Collections.unmodifiableMap(new LinkedHashMap<>(pleats));
      buttonholes = Collections.unmodifiableMap(new LinkedHashMap<>(buttonholes));
      matchPoints = Collections.unmodifiableMap(new LinkedHashMap<>(matchPoints));
      slashes = Collections.unmodifiableMap(new LinkedHashMap<>(slashes));
      styleLines = Collections.unmodifiableMap(new LinkedHashMap<>(styleLines));
    }
  }
}
