package org.lapmark.panel.cutting;

import org.lapmark.geometry.offset.Joint;
import org.lapmark.geometry.offset.Offset;
import org.lapmark.panel.Edge;

/** How the cutting line turns at a corner where two allowances meet. */
public sealed interface CornerShape {
  /** What is drawn where nothing is stated. */
  CornerShape USUAL = new Mitred(Offset.MITRE_LIMIT);

  /** Cut across, square to the tip, at the larger allowance's width. */
  CornerShape BLUNT = new Mitred(1);

  /**
   * Both cutting lines go on until they meet; a tip beyond the limit is cut across.
   *
   * @param limit how far from the corner the tip may be, in times the larger allowance; 1 or more
   */
  record Mitred(double limit) implements CornerShape {}

  /**
   * An edge's allowance ends square to it, where its stitching line drawn on meets the other edge's
   * cutting line.
   *
   * @param edge an edge that begins or ends at the corner
   */
  record Square(String edge) implements CornerShape {}

  /**
   * An edge's allowance, folded back along the edge, ends where the other edge is cut.
   *
   * @param edge an edge that begins or ends at the corner: the hem's fold line
   * @param folds 1, or 2 for a hem that is folded in by half its allowance, and again
   */
  record TurnedBack(String edge, int folds) implements CornerShape {}

  /** The joint between two neighbouring edges; null if the edge named is neither. */
  default Joint joint(Edge before, Edge after) {
    if (this instanceof Mitred mitred) {
      return new Joint.Mitred(mitred.limit);
    }
    String edge = edge();
    boolean first = edge.equals(before.name());
    if (!first && !edge.equals(after.name())) {
      return null;
    }
    return this instanceof TurnedBack turned
        ? new Joint.Turned(first, turned.folds)
        : new Joint.Square(first);
  }

  /**
   * The edge whose allowance is shaped.
   *
   * @return its name, or an empty text for a mitre
   */
  default String edge() {
    if (this instanceof TurnedBack turned) {
      return turned.edge;
    }
    return this instanceof Square square ? square.edge : "";
  }
}
