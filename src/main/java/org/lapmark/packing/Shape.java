package org.lapmark.packing;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * A shape to be placed.
 *
 * @param outline the shape in millimetres, x right and y down; must not be changed afterwards
 * @param angles the turns that are allowed, in degrees clockwise on paper, the preferred one first
 * @param inOneTile whether it must lie whole in one tile, away from the lines on which tiles meet
 */
public record Shape(Polygon outline, List<Double> angles, boolean inOneTile) {
  /** Copies the list and checks that there is something to place. */
  public Shape {
    angles = List.copyOf(angles);
    if (angles.isEmpty() || outline.isEmpty()) {
      throw new IllegalArgumentException("a shape has an outline and at least one angle");
    }
  }
}
