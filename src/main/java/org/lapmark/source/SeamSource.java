package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;

/**
 * A seam as stated.
 *
 * @param name its name
 * @param sides two or more sides that are sewn to each other
 * @param ease how much longer the first side is meant to be, or null
 * @param tolerance the greatest difference allowed, or null for the default of 0.5 mm
 */
public record SeamSource(SourceText name, List<Side> sides, Formula ease, Formula tolerance) {
  /** Copies the list. */
  public SeamSource {
    sides = List.copyOf(sides);
  }

  /**
   * Edges, and lengths that aren't panels, end to end.
   *
   * @param members in the order of sewing
   */
  public record Side(List<Member> members) {
    /** Copies the list. */
    public Side {
      members = List.copyOf(members);
    }
  }

  /**
   * One part of a side: an edge or chain if the text names one, else a length.
   *
   * @param text as written
   * @param formula the same as a formula
   */
  public record Member(SourceText text, Formula formula) {}
}
