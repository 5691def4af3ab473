package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.offset.IntricateOutlineException;
import org.lapmark.geometry.offset.Joint;
import org.lapmark.geometry.offset.Offset;
import org.lapmark.geometry.offset.Part;
import org.lapmark.geometry.offset.Side;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * A line inside a panel that follows a run of its edges at a distance, from outline to outline. At
 * a run's end it goes on as it runs until it meets the neighbouring edge; where the outline turns
 * inwards there, or hardly turns, it ends across at the corner.
 */
final class Band {
  private static final double ON_OUTLINE = 2e-3;

  /** In degrees; where the outline turns by less the line ends square across at the corner. */
  private static final double LEAST_TURN = 15;

  private final Panel panel;
  private final int start;
  private final int count;
  private final double width;

  /**
   * A band.
   *
   * @param panel the panel
   * @param run the names of edges that follow one another
   * @param width millimetres, above 0
   */
  Band(Panel panel, List<String> run, double width) {
    this.panel = panel;
    this.start = Ring.index(panel, run.get(0));
    this.count = run.size();
    this.width = width;
  }

  /**
   * The line, in the direction of travel, as an edge for each edge that it follows.
   *
   * @throws PanelException when there is no room for it
   */
  List<Edge> inner() {
    int size = panel.edges().size();
    Edge first = panel.edges().get(start);
    Edge last = panel.edges().get((start + count - 1) % size);
    if (count >= size) {
      throw PanelCode.BAND_ALL_ROUND.exception("panel", panel.name(), "edge", first.name());
    }
    List<Side> sides = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      Edge edge = panel.edges().get((start + i) % size);
      boolean met = i == size - 1 && meets(start) || i == count - 1 && meets(start + count);
      double distance = i < count ? -width : 0;
      Joint joint = met ? Joint.MET : Joint.USUAL;
      sides.add(new Side(edge.path(), distance, distance, false, joint));
    }
    List<List<Part>> loops;
    try {
      loops = Offset.loops(sides);
    } catch (IntricateOutlineException e) {
      throw PanelCode.OUTLINE_TOO_INTRICATE.exception("panel", panel.name());
    }
    if (loops.size() != 1) {
      throw tooWide(first);
    }
    List<Part> parts = run(loops.get(0), first);
    // By way of a corner is how an offset joins what doesn't meet.
    Point corner = first.path().start();
    if (meets(start) && parts.get(0).curve().start().distance(corner) < ON_OUTLINE) {
      parts.remove(0);
    }
    int end = parts.size() - 1;
    if (end >= 0
        && meets(start + count)
        && parts.get(end).curve().end().distance(last.path().end()) < ON_OUTLINE) {
      parts.remove(end);
    }
    if (parts.isEmpty() || !keepsItsDistance(parts, first, last)) {
      throw tooWide(first);
    }
    return edges(parts, first, last);
  }

  /** Whether no part but the ways to the run's own ends is nearer to the run than it should be. */
  private boolean keepsItsDistance(List<Part> parts, Edge first, Edge last) {
    Point begin = first.path().start();
    Point finish = last.path().end();
    int size = panel.edges().size();
    for (Part part : parts) {
      Curve curve = part.curve();
      boolean end =
          curve.start().distance(begin) < ON_OUTLINE || curve.end().distance(finish) < ON_OUTLINE;
      for (int i = 0; i < count && !end; i++) {
        Path path = panel.edges().get((start + i) % size).path();
        if (path.distance(curve.at(0.5)) < width - 0.05) {
          return false;
        }
      }
    }
    return true;
  }

  private PanelException tooWide(Edge first) {
    return PanelCode.BAND_TOO_WIDE.exception(
        "panel", panel.name(), "edge", first.name(), "width", width);
  }

  /** The parts of a loop that belong to the run, which follow one another. */
  private List<Part> run(List<Part> loop, Edge first) {
    int size = loop.size();
    int begin = -1;
    int changes = 0;
    for (int i = 0; i < size; i++) {
      boolean own = loop.get(i).side() < count;
      boolean before = loop.get(Math.floorMod(i - 1, size)).side() < count;
      if (own && !before) {
        begin = i;
        changes++;
      }
    }
    if (changes != 1) {
      throw tooWide(first);
    }
    List<Part> run = new ArrayList<>();
    for (int i = begin; loop.get(i % size).side() < count; i++) {
      run.add(loop.get(i % size));
    }
    return run;
  }

  private List<Edge> edges(List<Part> parts, Edge first, Edge last) {
    Path outline = panel.outline();
    List<List<Curve>> curves = new ArrayList<>();
    List<Integer> sides = new ArrayList<>();
    for (Part part : parts) {
      if (sides.isEmpty() || sides.get(sides.size() - 1) != part.side()) {
        sides.add(part.side());
        curves.add(new ArrayList<>());
      }
      curves.get(curves.size() - 1).add(part.curve());
    }
    Curve head = parts.get(0).curve();
    Curve tail = parts.get(parts.size() - 1).curve();
    List<Curve> beginning = curves.get(0);
    List<Curve> ending = curves.get(curves.size() - 1);
    if (outline.distance(head.start()) > ON_OUTLINE) {
      extend(beginning, true, reached(outline, head.start(), head.tangent(0).times(-1), start));
    }
    if (outline.distance(tail.end()) > ON_OUTLINE) {
      extend(ending, false, reached(outline, tail.end(), tail.tangent(1), start + count));
    }
    List<Edge> edges = new ArrayList<>();
    int size = panel.edges().size();
    for (int i = 0; i < sides.size(); i++) {
      Edge edge = panel.edges().get((start + sides.get(i)) % size);
      edges.add(new Edge(edge.name(), edge.from(), edge.to(), new Path(curves.get(i))));
    }
    return edges;
  }

  /** Whether the line goes on to the neighbour at a corner, by the index of the edge after it. */
  private boolean meets(int at) {
    int size = panel.edges().size();
    List<Curve> arriving = panel.edges().get(Math.floorMod(at - 1, size)).path().curves();
    Point t = arriving.get(arriving.size() - 1).tangent(1);
    Point u = panel.edges().get(at % size).path().curves().get(0).tangent(0);
    return StrictMath.toDegrees(StrictMath.atan2(t.cross(u), t.dot(u))) > LEAST_TURN;
  }

  /** Where the line goes on to: straight ahead, or back to the corner before an edge. */
  private Point reached(Path outline, Point from, Point along, int at) {
    Edge after = panel.edges().get(at % panel.edges().size());
    if (!meets(at)) {
      return after.path().start();
    }
    double reach = Crossings.reach(outline, from, along);
    if (!(reach < 20 * width)) {
      throw tooWide(after);
    }
    // A little beyond, so that it is sure to cross.
    return from.plus(along.times(reach + Splitting.REACH));
  }

  private static void extend(List<Curve> curves, boolean atStart, Point to) {
    Curve end = curves.get(atStart ? 0 : curves.size() - 1);
    Point from = atStart ? end.start() : end.end();
    if (end instanceof Line line && Math.abs(line.tangent(0).cross(to.minus(from).unit())) < 1e-9) {
      curves.set(
          atStart ? 0 : curves.size() - 1,
          atStart ? new Line(to, line.end()) : new Line(line.start(), to));
    } else if (atStart) {
      curves.add(0, new Line(to, from));
    } else {
      curves.add(new Line(from, to));
    }
  }
}
