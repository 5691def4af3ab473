package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceFile;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.folder.Limits;

/** A panel's SVG file as read: shapes, some of whose attributes may be placeholders. Immutable. */
public final class PanelDrawing {
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
    if (shapes == null || shapes.marks(Role.CORNER).isEmpty()) {
      return List.copyOf(cornerNames());
    }
    Path outline = shapes.outline();
    Map<String, Double> places = new LinkedHashMap<>();
    shapes.points(Role.CORNER).forEach((name, at) -> places.put(name, outline.nearestLength(at)));
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
          Rounded.hundredth(box.width()),
          "height",
          Rounded.hundredth(box.height()));
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
    return new ShapeReading(this, evaluator, findings).shapes(shapes);
  }

  Affine toMillimetres() {
    return toMillimetres;
  }

  Limits limits() {
    return limits;
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

  /**
   * What a drawing shows.
   *
   * @param outline the closed outline
   * @param marks everything else by what it stands for, in file order
   */
  public record Shapes(Path outline, Map<Role, List<DrawnMark>> marks) {
    /** Copies the collections, keeping their order. */
    public Shapes {
      Map<Role, List<DrawnMark>> copy = new EnumMap<>(Role.class);
      marks.forEach((role, some) -> copy.put(role, List.copyOf(some)));
      marks = Collections.unmodifiableMap(copy);
    }

    /** What stands for something, in file order. */
    public List<DrawnMark> marks(Role role) {
      return marks.getOrDefault(role, List.of());
    }

    /** Named points, in file order. */
    public Map<String, Point> points(Role role) {
      Map<String, Point> points = new LinkedHashMap<>();
      marks(role).forEach(mark -> points.put(mark.name(), mark.point()));
      return points;
    }

    /** Named lines, in file order. */
    public Map<String, Path> lines(Role role) {
      Map<String, Path> lines = new LinkedHashMap<>();
      marks(role).forEach(mark -> lines.put(mark.name(), mark.path()));
      return lines;
    }
  }
}
