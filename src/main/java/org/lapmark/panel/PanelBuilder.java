package org.lapmark.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Builds panels from outlines, and panels from panels. */
public final class PanelBuilder {
  private PanelBuilder() {}

  /**
   * Where two named corners bound an edge.
   *
   * @param from the corner where the edge begins
   * @param to the corner where it ends, going clockwise on paper
   */
  public record CornerPair(String from, String to) {}

  /**
   * Cuts an outline at its named corners into edges. Turns it clockwise first if it was drawn the
   * other way. Stretches between neighbouring corners for which no edge is stated are named after
   * their corners, {@code from-to}. With no corner at all the outline is one edge called {@code
   * outline} whose corners are both called {@code start}. A stated edge may span further corners;
   * it is then a chain of the stretches between them; from a corner to itself it goes all the way
   * round. The first edge starts at the first corner in the order of the (turned) outline.
   *
   * <p>A corner within 0.05 mm of a point where two of the outline's curves meet is that point; any
   * other corner parts the curve it lies on. Chains may name other chains and spanning edges. A
   * notch may be stated on a chain or spanning edge; it is kept on the stretch it falls on.
   *
   * @param name the panel's name
   * @param outline a closed path
   * @param corners points by name; each must lie within 0.05 mm of the outline
   * @param edges the stated edges by name
   * @param chains runs of edges by name
   * @param marks the marks
   * @return the panel
   * @throws PanelException when the outline is open, crosses itself or encloses nothing, a corner
   *     is off the outline or unknown, a name stands for two things, the edges of a chain don't
   *     follow one another, or a notch is off its edge
   */
  public static Panel fromOutline(
      String name,
      Path outline,
      Map<String, Point> corners,
      Map<String, CornerPair> edges,
      Map<String, List<String>> chains,
      List<Mark> marks) {
    return new OutlineCutter(name, outline).cut(corners, edges, chains, marks);
  }

  /**
   * A rectangle with edges {@code top}, {@code right}, {@code bottom}, {@code left} and corners
   * {@code top_left}, {@code top_right}, {@code bottom_right}, {@code bottom_left}; its top left
   * corner is the origin; the grainline runs down its middle, or across it at 45 degrees for a bias
   * strip.
   *
   * @param name the panel's name
   * @param width millimetres along x, above 0
   * @param height millimetres along y, above 0
   * @param bias whether the grain runs at 45 degrees to its sides
   * @return the panel
   */
  public static Panel rectangle(String name, double width, double height, boolean bias) {
    if (!(width > 0 && height > 0)) {
      throw PanelCode.RECTANGLE_WITHOUT_SIZE.exception(
          "panel", name, "width", width, "height", height);
    }
    Map<String, Point> corners = new LinkedHashMap<>();
    corners.put("top_left", new Point(0, 0));
    corners.put("top_right", new Point(width, 0));
    corners.put("bottom_right", new Point(width, height));
    corners.put("bottom_left", new Point(0, height));
    List<String> names = List.of("top", "right", "bottom", "left");
    List<String> ends = List.copyOf(corners.keySet());
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      String from = ends.get(i);
      String to = ends.get((i + 1) % 4);
      Line side = new Line(corners.get(from), corners.get(to));
      edges.add(new Edge(names.get(i), from, to, new Path(List.of(side))));
    }
    Point middle = new Point(width / 2, height / 2);
    double reach = 0.35 * (bias ? Math.min(width, height) : height);
    Point along = bias ? new Point(Math.sqrt(0.5), Math.sqrt(0.5)) : new Point(0, 1);
    Mark grain =
        new Mark.Grainline(middle.minus(along.times(reach)), middle.plus(along.times(reach)));
    return new Panel(name, edges, Map.of(), List.of(grain));
  }
}
