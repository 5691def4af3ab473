package org.lapmark.panel.stated;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.panel.PanelBuilder.CornerPair;
import org.lapmark.panel.PanelException;

/**
 * A shape stated by numbers: its arcs are arcs. The top left corner of the box around it is the
 * origin, and its grainline runs down its middle. Lengths are millimetres, angles degrees.
 *
 * @param kind names its corners and edges
 * @param outline closed, clockwise on paper, one curve an edge, from the first corner
 */
public record StatedShape(StatedKind kind, Path outline) {
  private static final double QUARTER = Math.PI / 2;

  /** An arc that strays less than this from its chord is drawn as a line. */
  private static final double FLAT = 1e-4;

  /**
   * A circle.
   *
   * @param diameter above 0
   * @return the shape
   */
  public static StatedShape circle(double diameter) {
    return ellipse(diameter, diameter);
  }

  /**
   * An ellipse.
   *
   * @param width its whole axis along x, above 0
   * @param height its whole axis along y, above 0
   * @return the shape
   */
  public static StatedShape ellipse(double width, double height) {
    requirePositive(width, height);
    Point centre = new Point(width / 2, height / 2);
    List<Curve> quarters = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      quarters.add(new Arc(centre, width / 2, height / 2, 0, (i - 1) * QUARTER, QUARTER));
    }
    return new StatedShape(StatedKind.ROUND, new Path(quarters));
  }

  /**
   * An ellipse of a given perimeter, which grows in proportion to its axes; the perimeter of that
   * of width 1 is a complete elliptic integral, taken by the arithmetic-geometric mean.
   *
   * @param perimeter above 0; met within 1e-6 mm
   * @param ratio height over width, above 0
   * @return the shape
   */
  public static StatedShape oval(double perimeter, double ratio) {
    requirePositive(perimeter, ratio);
    double width = perimeter / EllipseLength.of(0.5, ratio / 2);
    return ellipse(width, width * ratio);
  }

  /**
   * A part of a ring.
   *
   * @param innerRadius above 0
   * @param width from the inner to the outer arc, above 0
   * @param angle above 0 and below 360
   * @return the shape
   */
  public static StatedShape ringSector(double innerRadius, double width, double angle) {
    requirePositive(innerRadius, width, angle);
    if (!(angle < 360)) {
      throw new IllegalArgumentException("a ring sector goes round less than once");
    }
    double half = StrictMath.toRadians(angle) / 2;
    return new StatedShape(
        StatedKind.RING_SECTOR,
        placed(centre -> opening(centre, innerRadius + width, innerRadius, half)));
  }

  /**
   * The brim of a hat: the surface of a cone that slopes down from the head, laid flat. Its inner
   * arc is as long as the head; a whole brim goes round by 360 degrees times the cosine of the
   * droop.
   *
   * @param head the length around the head, above 0
   * @param width measured on the cloth, above 0
   * @param droop how far it slopes down from level, 0 or more and below 90; above 0 if whole
   * @param share how much of it the panel is, above 0, at most 1
   * @return the shape
   */
  public static StatedShape brim(double head, double width, double droop, double share) {
    requirePositive(head, width, share);
    if (!(droop >= 0 && droop < 90 && share <= 1)) {
      throw new IllegalArgumentException("a droop from 0 to 90 degrees, a share of at most 1");
    }
    double cosine = StrictMath.cos(StrictMath.toRadians(droop));
    return ringSector(head / (2 * Math.PI * cosine), width, 360 * cosine * share);
  }

  /**
   * The slope of an upright cone's band.
   *
   * @param lower the length around its lower edge
   * @param upper the length around its upper edge
   * @param height measured upright
   * @return the height measured on the cloth
   */
  public static double slant(double lower, double upper, double height) {
    double across = (lower - upper) / (2 * Math.PI);
    return Math.sqrt(height * height + across * across);
  }

  /**
   * A band that tapers between two lengths: the surface of a cone's lower part, laid flat. Where
   * its arcs would stray less than 1e-4 mm from their chords it is straight.
   *
   * @param lower the length around its lower edge, above 0
   * @param upper the length around its upper edge, above 0
   * @param slant its height measured on the cloth, above the difference of the edges' radii
   * @param share how much of it the panel is, above 0, at most 1
   * @return the shape
   */
  public static StatedShape coneBand(double lower, double upper, double slant, double share) {
    requirePositive(lower, upper, slant, share);
    double difference = Math.abs(lower - upper);
    if (!(share <= 1 && difference / (2 * Math.PI) < slant)) {
      throw new IllegalArgumentException("no cone has such a band");
    }
    double longer = Math.max(lower, upper) * share;
    double sagitta = longer * difference * share / (8 * slant);
    if (sagitta < FLAT) {
      return new StatedShape(
          StatedKind.CONE_BAND, placed(centre -> straight(centre, lower, upper, slant, share)));
    }
    double inner = Math.min(lower, upper) * slant / difference;
    double half = difference / slant * share / 2;
    return new StatedShape(
        StatedKind.CONE_BAND,
        placed(
            centre ->
                lower > upper
                    ? opening(centre, inner + slant, inner, half)
                    : closing(centre, inner + slant, inner, half)));
  }

  private static void requirePositive(double... numbers) {
    for (double number : numbers) {
      if (!(number > 0)) {
        throw new IllegalArgumentException("a stated shape's numbers are above 0");
      }
    }
  }

  /** The centre above: the outer arc below, from right to left. */
  private static Path opening(Point centre, double outer, double inner, double half) {
    Curve below = Arc.ofCircle(centre, outer, QUARTER - half, 2 * half);
    Curve above = Arc.ofCircle(centre, inner, QUARTER + half, -2 * half);
    return round(below, above);
  }

  /** The centre below: the inner arc below, from right to left. */
  private static Path closing(Point centre, double outer, double inner, double half) {
    Curve below = Arc.ofCircle(centre, inner, half - QUARTER, -2 * half);
    Curve above = Arc.ofCircle(centre, outer, -QUARTER - half, 2 * half);
    return round(below, above);
  }

  private static Path straight(
      Point centre, double lower, double upper, double slant, double share) {
    Point down = new Point(0, slant);
    Point right = new Point(lower * share / 2, 0);
    Point above = new Point(upper * share / 2, 0);
    return round(
        new Line(centre.plus(down).plus(right), centre.plus(down).minus(right)),
        new Line(centre.minus(above), centre.plus(above)));
  }

  private static Path round(Curve below, Curve above) {
    return new Path(
        List.of(
            below,
            new Line(below.end(), above.start()),
            above,
            new Line(above.end(), below.start())));
  }

  /** Draws about a centre that puts the box around the outline at the origin. */
  private static Path placed(Function<Point, Path> drawing) {
    Box box = drawing.apply(new Point(0, 0)).bounds();
    return drawing.apply(new Point(-box.minX(), -box.minY()));
  }

  /**
   * The panel.
   *
   * @param name its name
   * @param edges further edges between the shape's corners; one over a single edge renames it
   * @param chains further chains
   * @return the panel
   * @throws PanelException as for a drawn outline
   */
  public Panel panel(String name, Map<String, CornerPair> edges, Map<String, List<String>> chains) {
    Map<String, Point> corners = new LinkedHashMap<>();
    Map<String, CornerPair> all = new LinkedHashMap<>();
    int count = kind.corners().size();
    for (int i = 0; i < count; i++) {
      corners.put(kind.corners().get(i), outline.curves().get(i).start());
      CornerPair pair = new CornerPair(kind.corners().get(i), kind.corners().get((i + 1) % count));
      if (!edges.containsValue(pair)) {
        all.put(kind.edges().get(i), pair);
      }
    }
    all.putAll(edges);
    for (String chain : kind.chains()) {
      all.putIfAbsent(chain, new CornerPair(kind.corners().get(0), kind.corners().get(0)));
    }
    return PanelBuilder.fromOutline(name, outline, corners, all, chains, List.of(grainline()));
  }

  private Mark grainline() {
    Box box = outline.bounds();
    double x = (box.minX() + box.maxX()) / 2;
    double above = kind == StatedKind.ROUND ? box.minY() : middle(2);
    double below = kind == StatedKind.ROUND ? box.maxY() : middle(0);
    double margin = 0.15 * (below - above);
    return new Mark.Grainline(new Point(x, above + margin), new Point(x, below - margin));
  }

  /** How far down the middle of an edge lies. */
  private double middle(int edge) {
    return outline.curves().get(edge).at(0.5).y();
  }
}
