package org.lapmark.panel.cutting;

import org.lapmark.geometry.offset.Joint;
import org.lapmark.panel.Edge;

/** How the cutting line turns at a corner where two allowances meet. */
public sealed interface CornerShape {
  /** What is drawn where nothing is stated. */
  CornerShape USUAL = new Mitred(Joint.MITRE_LIMIT);

  /** Cut across, square to the tip, at the larger allowance's width. */
  CornerShape BLUNT = new Mitred(1);

  /**
   * Both cutting lines go on until they meet; a tip beyond the limit is cut across.
   *
   * @param limit how far from the corner the tip may be, in times the larger allowance; 1 or more
   */
  record Mitred(double limit) implements CornerShape {
    @Override
    public Joint joint(Edge before, Edge after) {
      return new Joint.Mitred(limit);
    }

    @Override
    public String edge() {
      return "";
    }
  }

  /**
   * An edge's allowance ends square to it, where its stitching line drawn on meets the other edge's
   * cutting line.
   *
   * @param edge an edge that begins or ends at the corner
   */
  record Square(String edge) implements CornerShape {
    @Override
    public Joint joint(Edge before, Edge after) {
      return isAt(before, after) ? new Joint.Square(edge.equals(before.name())) : null;
    }
  }

  /**
   * An edge's allowance, folded back along the edge, ends where the other edge is cut.
   *
   * @param edge an edge that begins or ends at the corner: the hem's fold line
   * @param folds 1, or 2 for a hem that is folded in by half its allowance, and again
   */
  record TurnedBack(String edge, int folds) implements CornerShape {
    @Override
    public Joint joint(Edge before, Edge after) {
      return isAt(before, after) ? new Joint.Turned(edge.equals(before.name()), folds) : null;
    }
  }

  /**
   * The joint between two neighbouring edges.
   *
   * @param before the edge that ends at the corner
   * @param after the edge that begins there
   * @return the joint; null if the edge named is neither
   */
  Joint joint(Edge before, Edge after);

  /**
   * The edge whose allowance is shaped.
   *
   * @return its name, or an empty text for a mitre
   */
  String edge();

  /**
   * Whether the edge whose allowance is shaped ends at a corner.
   *
   * @param before the edge that ends there
   * @param after the edge that begins there
   * @return true if it is one of them
   */
  default boolean isAt(Edge before, Edge after) {
    return edge().equals(before.name()) || edge().equals(after.name());
  }
}
