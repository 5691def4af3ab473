package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;

/**
 * How the corners of a piece's cutting line are to turn.
 *
 * @param general at every corner not stated otherwise; null for as usual
 * @param single at single corners
 */
public record CornerSources(CornerKind general, List<CornerSource> single) {
  /** Nothing is stated. */
  public static final CornerSources NONE = new CornerSources(null, List.of());

  /** Copies the list. */
  public CornerSources {
    single = List.copyOf(single);
  }

  /** In which way a corner is cut. */
  public enum Way {
    /** To a tip, up to a limit. */
    MITRED,
    /** Across. */
    BLUNT,
    /** Square to an edge. */
    SQUARE_TO,
    /** So that an edge's allowance can be folded back. */
    TURNED_BACK
  }

  /**
   * A way to cut a corner.
   *
   * @param way the way
   * @param limit a mitre's limit, or null
   * @param edge the edge that is squared or turned back, or null
   * @param folds how often the allowance is folded
   */
  public record CornerKind(Way way, Formula limit, SourceText edge, int folds) {}

  /**
   * The way of one corner.
   *
   * @param corner the corner's name
   * @param kind the way
   */
  public record CornerSource(SourceText corner, CornerKind kind) {}
}
