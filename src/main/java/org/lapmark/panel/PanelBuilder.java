package org.lapmark.panel;

import java.util.List;
import java.util.Map;
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
   * outline}. A stated edge may span further corners; it is then a chain of the stretches between
   * them.
   *
   * @param name the panel's name
   * @param outline a closed path
   * @param corners points by name; each must lie within 0.05 mm of the outline
   * @param edges the stated edges by name
   * @param chains runs of edges by name
   * @param marks the marks
   * @return the panel
   * @throws PanelException when a corner is off the outline, unknown, or the edges don't chain
   */
  public static Panel fromOutline(
      String name,
      Path outline,
      Map<String, Point> corners,
      Map<String, CornerPair> edges,
      Map<String, List<String>> chains,
      List<Mark> marks) {
    throw new UnsupportedOperationException();
  }

  /**
   * A rectangle with edges {@code top}, {@code right}, {@code bottom}, {@code left} and corners
   * {@code top-left}, {@code top-right}, {@code bottom-right}, {@code bottom-left}; its top left
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
    throw new UnsupportedOperationException();
  }

  /**
   * A panel whose outline runs inside another's at a distance. Edge names are kept; notches are
   * dropped, the grainline stays.
   *
   * @param name the new panel's name
   * @param panel the panel
   * @param distance millimetres, 0 or more
   * @return the inset panel
   * @throws PanelException when nothing is left at that distance
   */
  public static Panel inset(String name, Panel panel, double distance) {
    throw new UnsupportedOperationException();
  }
}
