package org.lapmark.packing.strip;

import java.util.List;
import org.lapmark.geometry.Affine;
import org.locationtech.jts.geom.Polygon;

/**
 * A shape to be placed on a strip.
 *
 * @param outline the shape in millimetres, x right and y down; must not be changed afterwards
 * @param poses the turns and mirrorings that are allowed, without shift, the preferred one first
 */
public record StripShape(Polygon outline, List<Affine> poses) {
  /** Copies the list and checks that there is something to place. */
  public StripShape {
    poses = List.copyOf(poses);
    if (poses.isEmpty() || outline.isEmpty()) {
      throw new IllegalArgumentException("a shape has an outline and at least one pose");
    }
  }
}
