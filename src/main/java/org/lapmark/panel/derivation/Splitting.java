package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * Cuts a panel in two along a line. Places that are nearer to a corner than 0.05 mm are the corner;
 * a line that ends nearer than that to the outline ends on it.
 */
final class Splitting {
  static final double REACH = 0.05;
  private static final double ROUNDING = 1e-7;

  /** A part with less than this, in square millimetres, is none. */
  private static final double LEAST_AREA = 1e-2;

  /**
   * The two parts; the first follows the line's start clockwise.
   *
   * @param first the edges of the part between the line's start and its end, clockwise
   * @param second the edges of the other part
   */
  record Parts(List<Edge> first, List<Edge> second) {}

  /** A place on the outline; at a corner, the start of the edge that begins there. */
  private record Spot(int edge, Path.Place place, Point point) {
    boolean isCorner() {
      return place.equals(START);
    }
  }

  private static final Path.Place START = new Path.Place(0, 0);

  private final Panel panel;
  private final List<Edge> line;
  private final Path whole;
  private final Set<String> corners = new LinkedHashSet<>();

  private final double snap;

  private Splitting(Panel panel, List<Edge> line, double snap) {
    this.panel = panel;
    this.snap = snap;
    this.line = line;
    this.whole = Ring.outline(line);
    panel.edges().forEach(edge -> corners.add(edge.from()));
  }

  /**
   * Splits a panel.
   *
   * @param panel the panel
   * @param line the line as one edge or several, whose names the new edges get; the names of its
   *     first and last corner are used where it meets the outline between corners
   * @return the parts
   * @throws PanelException when it doesn't cross the outline twice
   */
  static Parts split(Panel panel, List<Edge> line) {
    return new Splitting(panel, line, REACH).parts();
  }

  /**
   * The same along a line that was computed to end where it ends: only a corner within rounding is
   * met.
   */
  static Parts exactly(Panel panel, List<Edge> line) {
    return new Splitting(panel, line, 1e-5).parts();
  }

  /** A line as an edge, whose corners are called after something. */
  static List<Edge> edge(String name, String corners, Path line) {
    return List.of(new Edge(name, corners + "_start", corners + "_end", line));
  }

  /**
   * A part as a panel.
   *
   * @param name its name
   * @param panel the panel that was split
   * @param edges the part's edges
   * @param cut the name of the line along which it was cut
   * @param notices told of marks that are left out
   */
  static Panel part(
      String name, Panel panel, List<Edge> edges, String cut, Consumer<PanelException> notices) {
    Ring.check(name, edges);
    return new Panel(
        name, edges, Ring.chains(panel, edges), MarksOnPart.of(panel, edges, cut, notices));
  }

  /** Tells of a part whose new edge, its last, couldn't be called as stated. */
  static void checkName(
      Panel panel, List<Edge> part, String stated, Consumer<PanelException> notices) {
    String now = part.get(part.size() - 1).name();
    if (!now.equals(stated)) {
      notices.accept(
          PanelCode.DERIVED_EDGE_TAKEN.exception(
              "panel", panel.name(), "edge", stated, "now", now));
    }
  }

  private Parts parts() {
    Path outline = panel.outline();
    Inside inside = new Inside(outline, 0);
    // Where a line ends on the outline rounding decides on which side it ends.
    List<Inside.Stretch> stretches =
        inside.stretches(whole).stream()
            .filter(stretch -> stretch.path().length() > 2 * snap)
            .toList();
    if (stretches.isEmpty()) {
      throw fault(PanelCode.SPLIT_MISSES, "gap", outline.distance(whole.start()));
    }
    if (stretches.size() > 1) {
      Point again = whole.at(stretches.get(1).from());
      throw fault(PanelCode.SPLIT_CROSSES_AGAIN, "x", again.x(), "y", again.y());
    }
    Path.Place from = stretches.get(0).from();
    Path.Place to = stretches.get(0).to();
    for (Path.Place end : List.of(from, to)) {
      double gap = outline.distance(whole.at(end));
      if (gap > REACH) {
        throw fault(PanelCode.SPLIT_STOPS_SHORT, "gap", gap);
      }
    }
    Spot start = spot(whole.at(from));
    Spot end = spot(whole.at(to));
    if (start.point.distance(end.point) <= snap) {
      throw fault(PanelCode.SPLIT_MISSES, "gap", 0.0);
    }
    List<Edge> cut = cut(from, to, start, end);
    List<Edge> backwards = new ArrayList<>();
    for (int i = cut.size() - 1; i >= 0; i--) {
      Edge edge = cut.get(i);
      backwards.add(new Edge(edge.name(), edge.to(), edge.from(), edge.path().reversed()));
    }
    Edge first = cut.get(0);
    Edge last = cut.get(cut.size() - 1);
    Parts parts =
        new Parts(
            joined(around(start, end, first.from(), last.to()), backwards),
            joined(around(end, start, last.to(), first.from()), cut));
    for (List<Edge> part : List.of(parts.first, parts.second)) {
      if (!(Ring.outline(part).signedArea() > LEAST_AREA)) {
        throw fault(PanelCode.SPLIT_MISSES, "gap", 0.0);
      }
    }
    return parts;
  }

  private PanelException fault(PanelCode code, Object... more) {
    List<Object> arguments = new ArrayList<>();
    arguments.addAll(List.of("panel", panel.name(), "line", line.get(0).name()));
    arguments.addAll(List.of(more));
    return code.exception(arguments.toArray());
  }

  /** The place of the outline that is nearest to a point. */
  private Spot spot(Point point) {
    Spot best = null;
    double least = Double.POSITIVE_INFINITY;
    List<Edge> edges = panel.edges();
    for (int i = 0; i < edges.size(); i++) {
      double distance = edges.get(i).path().start().distance(point);
      if (distance <= snap && distance < least) {
        least = distance;
        best = new Spot(i, START, edges.get(i).path().start());
      }
    }
    if (best != null) {
      return best;
    }
    for (int i = 0; i < edges.size(); i++) {
      List<Curve> curves = edges.get(i).path().curves();
      for (int k = 0; k < curves.size(); k++) {
        Curve curve = curves.get(k);
        double t = curve.nearest(point);
        if (curve.length() * t < ROUNDING) {
          t = 0;
        } else if (curve.length() * (1 - t) < ROUNDING) {
          t = 1;
        }
        double distance = curve.at(t).distance(point);
        if (distance < least) {
          least = distance;
          best = new Spot(i, new Path.Place(k, t), curve.at(t));
        }
      }
    }
    return best;
  }

  /** The line's edges between two of its places, ending on the outline. */
  private List<Edge> cut(Path.Place from, Path.Place to, Spot start, Spot end) {
    List<Edge> cut = new ArrayList<>();
    int before = 0;
    for (Edge edge : line) {
      int count = edge.path().curves().size();
      Path.Place own = before > from.curve() ? new Path.Place(before, 0) : from;
      Path.Place last =
          before + count - 1 < to.curve() ? new Path.Place(before + count - 1, 1) : to;
      Path part = whole.between(own, last).orElse(null);
      if (part != null && part.length() > ROUNDING) {
        cut.add(new Edge(edge.name(), edge.from(), edge.to(), part));
      }
      before += count;
    }
    String startName = corner(start, line.get(0).from());
    String endName = corner(end, line.get(line.size() - 1).to());
    Edge first = cut.get(0);
    cut.set(0, new Edge(first.name(), startName, first.to(), first.path()));
    int at = cut.size() - 1;
    Edge last = cut.get(at);
    cut.set(at, new Edge(last.name(), last.from(), endName, last.path()));
    for (int i = 0; i <= at; i++) {
      Edge edge = cut.get(i);
      Path path =
          Ring.between(
              edge.path(),
              i == 0 ? start.point : edge.path().start(),
              i == at ? end.point : edge.path().end());
      cut.set(i, new Edge(edge.name(), edge.from(), edge.to(), path));
    }
    return cut;
  }

  private String corner(Spot spot, String stated) {
    return spot.isCorner() ? panel.edges().get(spot.edge).from() : Ring.free(stated, "_2", corners);
  }

  /** The outline's edges from one place to another, clockwise. */
  private List<Edge> around(Spot from, Spot to, String fromName, String toName) {
    List<Edge> edges = new ArrayList<>();
    int count = panel.edges().size();
    boolean within = to.edge == from.edge && to.place.compareTo(from.place) > 0;
    int steps = within ? 0 : Math.floorMod(to.edge - from.edge, count);
    if (!within && steps == 0) {
      steps = count;
    }
    for (int i = 0; i <= steps; i++) {
      Edge edge = panel.edges().get((from.edge + i) % count);
      Path path = edge.path();
      Path.Place start = i == 0 ? from.place : START;
      Path.Place end = i == steps ? to.place : new Path.Place(path.curves().size() - 1, 1);
      Path part = path.between(start, end).orElse(null);
      if (part != null) {
        String begins = i == 0 ? fromName : edge.from();
        edges.add(new Edge(edge.name(), begins, i == steps ? toName : edge.to(), part));
      } else if (i == steps && !edges.isEmpty()) {
        Edge last = edges.remove(edges.size() - 1);
        edges.add(new Edge(last.name(), last.from(), toName, last.path()));
      }
    }
    return edges;
  }

  /**
   * A part's edges; the two ends of an edge that goes all the way round are one, others are
   * numbered.
   */
  private List<Edge> joined(List<Edge> around, List<Edge> cut) {
    List<Edge> whole = new ArrayList<>();
    for (Edge edge : around) {
      Edge last = whole.isEmpty() ? null : whole.get(whole.size() - 1);
      if (last != null && last.name().equals(edge.name())) {
        whole.set(
            whole.size() - 1,
            new Edge(edge.name(), last.from(), edge.to(), last.path().then(edge.path())));
      } else {
        whole.add(edge);
      }
    }
    List<Edge> all = new ArrayList<>(Ring.numbered(whole, panel));
    Set<String> taken = new LinkedHashSet<>();
    whole.forEach(edge -> taken.add(edge.name()));
    all.forEach(edge -> taken.add(edge.name()));
    for (Edge edge : cut) {
      String name = Ring.free(edge.name(), "_2", taken);
      taken.add(name);
      all.add(new Edge(name, edge.from(), edge.to(), edge.path()));
    }
    return all;
  }
}
