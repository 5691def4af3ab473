package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;

/** How a panel is derived from another. */
public sealed interface DerivedSource {
  /**
   * The panel that it is derived from.
   *
   * @return its name
   */
  SourceText panel();

  /** Why a panel's outline runs beside another's. */
  enum Way {
    /** Smaller, as a stiffener is. */
    INSET,
    /** Larger. */
    OUTSET,
    /**
     * A lining that is basted to the main cloth and sewn as one with it; smaller by turn of cloth.
     */
    MOUNTED,
    /** A lining that is bagged out; smaller by an ease. */
    BAGGED,
    /** A lining that is dropped in; smaller by an ease. */
    DROPPED;

    /**
     * Whether it is a lining.
     *
     * @return true for the ways of making a lining
     */
    public boolean isLining() {
      return this == MOUNTED || this == BAGGED || this == DROPPED;
    }
  }

  /**
   * An edge's own distance.
   *
   * @param edge the edge's or chain's name
   * @param distance 0 or more
   */
  record EdgeDistance(SourceText edge, Formula distance) {}

  /**
   * With an outline that runs beside the other's.
   *
   * @param panel the other panel's name
   * @param way why
   * @param distance that of edges not stated otherwise; null for none
   * @param edges distances of single edges
   * @param marks whether notches, points and lines follow; null where nothing is said
   */
  record Beside(
      SourceText panel, Way way, Formula distance, List<EdgeDistance> edges, Boolean marks)
      implements DerivedSource {
    /** Copies the list. */
    public Beside {
      edges = List.copyOf(edges);
    }
  }

  /**
   * A mirror image.
   *
   * @param panel the other panel's name
   */
  record Mirrored(SourceText panel) implements DerivedSource {}

  /**
   * The whole of a half.
   *
   * @param panel the half's name
   * @param edge its fold edge
   * @param apart edges that stay apart from their images at the fold
   */
  record Unfolded(SourceText panel, SourceText edge, List<SourceText> apart)
      implements DerivedSource {
    /** Copies the list. */
    public Unfolded {
      apart = List.copyOf(apart);
    }
  }

  /**
   * The half of a whole.
   *
   * @param panel the whole's name
   * @param from where the fold begins: an edge or chain, in its middle, or a corner
   * @param to where it ends
   * @param edge the new edge's name
   */
  record Folded(SourceText panel, SourceText from, SourceText to, String edge)
      implements DerivedSource {}

  /**
   * A part of a panel that is split.
   *
   * @param panel the other panel's name
   * @param along the name of its style line
   * @param keep a corner, edge or chain that lies in this part alone
   * @param edge the new edge's name
   */
  record Split(SourceText panel, SourceText along, SourceText keep, String edge)
      implements DerivedSource {}

  /**
   * Two panels as one.
   *
   * @param panel the panel that stays where it is
   * @param edge its edge
   * @param with the panel that is laid against it
   * @param withEdge that panel's edge
   */
  record Merged(SourceText panel, SourceText edge, SourceText with, SourceText withEdge)
      implements DerivedSource {}

  /**
   * A band along an edge.
   *
   * @param panel the other panel's name
   * @param along the edge or chain that it follows
   * @param width how wide it is
   * @param edge the new edge's name
   */
  record Facing(SourceText panel, SourceText along, Formula width, String edge)
      implements DerivedSource {}
}
