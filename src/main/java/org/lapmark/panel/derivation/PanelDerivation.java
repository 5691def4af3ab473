package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Inside;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;
import org.lapmark.panel.cutting.Contour;
import org.lapmark.panel.cutting.FoldedHalf;

/**
 * Panels made from panels. Lines stay lines, arcs arcs and cubics cubics wherever they are only
 * moved, mirrored or cut; what runs beside an outline is within 0.01 mm of it. Names of edges and
 * corners are kept unless said otherwise; where a name would stand twice the later one ends in
 * {@code _2}. Marks follow as far as they lie on the new panel.
 */
public final class PanelDerivation {
  /** How far the halves of a panel that is folded may differ, in millimetres. */
  private static final double HALVES = 0.1;

  private static final int CHECKS = 200;

  /** Which marks follow to a panel that runs beside another. */
  public enum Marks {
    /** All that lie on it. */
    ALL,
    /** Those of edges that don't move; the others are counted in a notice. */
    OF_UNMOVED_EDGES,
    /** None. */
    NONE
  }

  private PanelDerivation() {}

  /**
   * A panel whose outline runs inside another's, each edge at a distance of its own. At corners an
   * edge's line goes on as it runs, or ends, where it meets its neighbours': a straight line goes
   * on straight, an arc as an arc.
   *
   * @param name the new panel's name
   * @param panel the panel
   * @param distances millimetres, 0 or more, by edge
   * @param marks which notches, points and lines follow; the grainline and style lines always do
   * @param notices told of marks that are left out
   * @return the inset panel
   * @throws PanelException when nothing is left, more than one part is, or an edge's line doesn't
   *     meet its neighbours'
   */
  public static Panel inset(
      String name,
      Panel panel,
      Map<String, Double> distances,
      Marks marks,
      Consumer<PanelException> notices) {
    if (distances.values().stream().anyMatch(distance -> !(distance >= 0))) {
      throw new IllegalArgumentException("an inset's distances are 0 or more");
    }
    List<Edge> edges = Contour.insetEdges(panel, distances);
    Map<String, Double> outwards = new LinkedHashMap<>();
    distances.forEach((edge, distance) -> outwards.put(edge, -distance));
    return beside(name, panel, edges, outwards, marks, notices);
  }

  /** Whether a part has the outline of a run itself, rather than the line beside it. */
  private static boolean holds(List<Edge> part, List<Edge> edges, List<String> run) {
    Point sample = null;
    for (Edge edge : edges) {
      if (edge.name().equals(run.get(0))) {
        sample = edge.path().atLength(edge.path().length() / 2);
      }
    }
    Point at = sample;
    return part.stream().anyMatch(edge -> edge.path().distance(at) < 1e-6);
  }

  /**
   * A panel whose outline runs outside another's, each edge at a distance of its own. At corners an
   * edge's line goes on as it runs, or ends, where it meets its neighbours'.
   *
   * @param name the new panel's name
   * @param panel the panel
   * @param distances millimetres, 0 or more, by edge
   * @param marks which notches, points and lines follow; the grainline and style lines always do
   * @param notices told of marks that are left out
   * @return the larger panel
   * @throws PanelException when the outline would meet itself, or cover an edge
   */
  public static Panel outset(
      String name,
      Panel panel,
      Map<String, Double> distances,
      Marks marks,
      Consumer<PanelException> notices) {
    List<Edge> edges = Contour.outsetEdges(panel, distances);
    return beside(name, panel, edges, distances, marks, notices);
  }

  private static Panel beside(
      String name,
      Panel panel,
      List<Edge> edges,
      Map<String, Double> outwards,
      Marks marks,
      Consumer<PanelException> notices) {
    return new Panel(
        name,
        edges,
        Ring.chains(panel, edges),
        Following.beside(panel, edges, outwards, marks, notices));
  }

  /**
   * A panel's mirror image, left and right exchanged, in the same place. Its grainline stays
   * upright if it was; edges keep their names and are travelled the other way round, so that chains
   * list them in the other order.
   *
   * @param name the new panel's name
   * @param panel the panel
   * @return the image
   */
  public static Panel mirrored(String name, Panel panel) {
    Box box = panel.outline().bounds();
    Affine map = new Affine(-1, 0, 0, 1, box.minX() + box.maxX(), 0);
    List<Edge> edges = new ArrayList<>();
    int count = panel.edges().size();
    for (int i = 0; i < count; i++) {
      Edge edge = panel.edges().get((count - i) % count);
      edges.add(new Edge(edge.name(), edge.to(), edge.from(), Ring.mirrored(edge.path(), map)));
    }
    Map<String, List<String>> chains = new LinkedHashMap<>();
    panel
        .chains()
        .forEach(
            (chain, members) -> {
              List<String> backwards = new ArrayList<>();
              members.forEach(member -> backwards.add(0, member));
              chains.put(chain, backwards);
            });
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : panel.marks()) {
      marks.add(mark.transformed(map, edge -> Ring.edge(panel, edge).path().length()));
    }
    return new Panel(name, edges, chains, marks);
  }

  /**
   * Opens a half panel at a straight edge: the whole has the half and its image, and the fold edge
   * is gone. An edge that ends on the fold is one edge with its image and keeps its name, unless
   * said otherwise; the image of any other edge or corner ends in {@code _mirrored}. A chain that
   * ends on the fold goes on over it, another has an image too.
   *
   * @param name the new panel's name
   * @param half the half
   * @param fold the fold edge, straight within 0.01 mm
   * @param apart edges that end on the fold and stay apart from their images, which end in {@code
   *     _mirrored}; the corner between them keeps its name
   * @param notices told of an edge that isn't square to the fold, so that the whole has a corner,
   *     and of notches, darts and pleats of the fold edge
   * @return the whole
   * @throws PanelException when the fold isn't straight or the half lies on both sides of it
   */
  public static Panel unfolded(
      String name, Panel half, String fold, List<String> apart, Consumer<PanelException> notices) {
    return new Unfolding(half, fold, apart).whole(name, notices);
  }

  /**
   * Folds a symmetrical panel: the half that follows the first place clockwise.
   *
   * @param name the new panel's name
   * @param panel the whole
   * @param first where the fold begins: an edge or chain, which is folded in its middle, or a
   *     corner
   * @param last where it ends, alike
   * @param fold the name of the fold edge
   * @param notices told of marks that are left out
   * @return the half
   * @throws PanelException when there is no such place, or the halves differ by more than 0.1 mm
   */
  public static Panel folded(
      String name,
      Panel panel,
      String first,
      String last,
      String fold,
      Consumer<PanelException> notices) {
    Point from = FoldedHalf.place(panel, first);
    Point to = FoldedHalf.place(panel, last);
    if (from.distance(to) < 1) {
      throw PanelCode.FOLD_WITHOUT_LENGTH.exception("panel", panel.name(), "place", last);
    }
    Edge line = lineEdge(fold, new Path(List.of(new Line(from, to))));
    Splitting.Parts parts = Splitting.split(panel, List.of(line));
    Path half = Following.outline(parts.first());
    Affine mirror = Ring.mirror(from, to.minus(from));
    Path other = Ring.mirrored(Following.outline(parts.second()), mirror);
    double apart = Math.max(apart(half, other), apart(other, half));
    if (apart > HALVES) {
      throw PanelCode.FOLD_HALVES_DIFFER.exception("panel", panel.name(), "apart", apart);
    }
    Panel kept = part(name, panel, parts.first(), fold, notices);
    Following.alone(panel, kept.marks(), parts.first(), parts.second(), fold, mirror)
        .forEach(mark -> notices.accept(Following.leftOut(panel, mark)));
    return kept;
  }

  private static double apart(Path one, Path other) {
    double length = one.length();
    double most = 0;
    for (int i = 0; i < CHECKS; i++) {
      most = Math.max(most, other.distance(one.atLength(length * i / CHECKS)));
    }
    return most;
  }

  private static Edge lineEdge(String name, Path path) {
    return new Edge(name, name + "_start", name + "_end", path);
  }

  private static Panel part(
      String name, Panel panel, List<Edge> edges, String cut, Consumer<PanelException> notices) {
    Ring.check(name, edges);
    return new Panel(
        name, edges, Ring.chains(panel, edges), Following.onPart(panel, edges, cut, notices));
  }

  /**
   * One of the two parts of a panel that is split along one of its style lines or fold lines. The
   * new edge is the line; where it doesn't meet a corner, the new corners are called after it, with
   * {@code _start} and {@code _end}. Edges that it cuts keep their names in both parts.
   *
   * @param name the new panel's name
   * @param panel the panel
   * @param line the line's name
   * @param keep a corner, edge or chain that lies in the part, and not in the other
   * @param edge the new edge's name
   * @param notices told of darts and pleats that are left out
   * @return the part
   * @throws PanelException when there is no such line, it doesn't part the panel in two, or what is
   *     named lies in neither part alone
   */
  public static Panel split(
      String name,
      Panel panel,
      String line,
      String keep,
      String edge,
      Consumer<PanelException> notices) {
    Path path = styleLine(panel, line);
    Edge whole = new Edge(edge, line + "_start", line + "_end", path);
    Splitting.Parts parts = Splitting.split(panel, List.of(whole));
    boolean inFirst = has(panel, parts.first(), keep);
    boolean inSecond = has(panel, parts.second(), keep);
    if (inFirst == inSecond) {
      throw PanelCode.SPLIT_KEEPS_BOTH.exception(
          "panel",
          panel.name(),
          "line",
          line,
          "keep",
          keep,
          "both",
          inFirst ? "yes" : "no",
          "first",
          names(parts.first(), parts.second(), edge),
          "second",
          names(parts.second(), parts.first(), edge));
    }
    return part(name, panel, inFirst ? parts.first() : parts.second(), line, notices);
  }

  private static Path styleLine(Panel panel, String name) {
    List<String> known = new ArrayList<>();
    for (Mark mark : panel.marks()) {
      if (mark instanceof Mark.StyleLine || mark instanceof Mark.FoldLine) {
        if (Following.name(mark).equals(name)) {
          return Following.line(mark);
        }
        known.add(Following.name(mark));
      }
    }
    throw PanelCode.STYLE_LINE_UNKNOWN.exception(
        "panel", panel.name(), "line", name, "lines", Known.listed(known));
  }

  private static boolean has(Panel panel, List<Edge> part, String name) {
    List<String> members = panel.chains().getOrDefault(name, List.of(name));
    return part.stream()
        .anyMatch(edge -> edge.from().equals(name) || members.contains(edge.name()));
  }

  private static String names(List<Edge> part, List<Edge> other, String cut) {
    List<String> names = new ArrayList<>();
    for (Edge edge : part) {
      for (String name : List.of(edge.from(), edge.name())) {
        boolean both =
            other.stream().anyMatch(one -> one.from().equals(name) || one.name().equals(name));
        if (!both && !name.equals(cut)) {
          names.add(name);
        }
      }
    }
    return Known.listed(names);
  }

  /**
   * Two panels as one: the second is moved and turned, not mirrored, so that an edge of it lies on
   * one of the first's; both edges are gone. Where an edge of the first is followed by one of the
   * second that has its name, both are one edge. Other names that the first has too are led by the
   * second panel's name, as {@code back_side}.
   *
   * @param name the new panel's name
   * @param first the panel that stays where it is
   * @param firstEdge its edge
   * @param second the panel that is moved
   * @param secondEdge its edge, as long as the first's within 0.5 mm and of the same shape
   * @param notices told of what stood on one of the two edges alone: notches that both have were
   *     there to join them
   * @return both
   * @throws PanelException when the edges differ, or the panels would overlap
   */
  public static Panel merged(
      String name,
      Panel first,
      String firstEdge,
      Panel second,
      String secondEdge,
      Consumer<PanelException> notices) {
    return new Merging(first, firstEdge, second, secondEdge).whole(name, notices);
  }

  /**
   * A band of one width along an edge or chain of a panel, ending on the neighbouring edges.
   *
   * @param name the new panel's name
   * @param panel the panel
   * @param along the edge's or chain's name
   * @param width millimetres, above 0
   * @param inner the name of the new edge
   * @param notices told of darts and pleats that are left out
   * @return the band
   * @throws PanelException when the panel has no room for it, or the edge goes all the way round
   */
  public static Panel facing(
      String name,
      Panel panel,
      String along,
      double width,
      String inner,
      Consumer<PanelException> notices) {
    if (!panel.isOneLine(along)) {
      throw panel.inParts(along);
    }
    List<String> run = Ring.members(panel, along);
    List<Edge> line = new Band(panel, run, width).inner();
    List<Curve> curves = new ArrayList<>();
    line.forEach(edge -> curves.addAll(edge.path().curves()));
    Edge whole = lineEdge(inner, new Path(curves));
    Splitting.Parts parts;
    try {
      parts = Splitting.exactly(panel, List.of(whole));
    } catch (PanelException e) {
      throw PanelCode.BAND_TOO_WIDE.exception("panel", panel.name(), "edge", along, "width", width);
    }
    List<Edge> band = holds(parts.first(), panel.edges(), run) ? parts.first() : parts.second();
    return part(name, panel, band, inner, notices);
  }

  /**
   * How much of a straight line lies outside a panel.
   *
   * @param panel the panel
   * @param from where the line begins
   * @param to where it ends
   * @return millimetres; what lies on the outline counts as inside
   */
  public static double outside(Panel panel, Point from, Point to) {
    Path line = new Path(List.of(new Line(from, to)));
    double inside = 0;
    for (Inside.Stretch stretch : new Inside(panel.outline(), 0.05).stretches(line)) {
      Path part = stretch.of(line);
      inside += part == null ? 0 : part.length();
    }
    return Math.max(0, line.length() - inside);
  }

  /**
   * The edges that a name stands for.
   *
   * @param panel the panel
   * @param edgeOrChain an edge's or a chain's name
   * @return the edges' names, clockwise
   * @throws PanelException when the panel has neither
   */
  public static List<String> members(Panel panel, String edgeOrChain) {
    return Ring.members(panel, edgeOrChain);
  }

  /**
   * A panel with further names: an edge that is a stretch from one corner to the next is renamed,
   * one over several of them is a chain.
   *
   * @param panel the panel
   * @param edges edges by name
   * @param chains chains by name, of edges or of other chains
   * @return the panel with those names
   * @throws PanelException when a corner or an edge doesn't exist, a name is taken, or the edges of
   *     a chain don't follow one another clockwise
   */
  public static Panel named(
      Panel panel, Map<String, PanelBuilder.CornerPair> edges, Map<String, List<String>> chains) {
    return edges.isEmpty() && chains.isEmpty() ? panel : new Naming(panel).named(edges, chains);
  }
}
