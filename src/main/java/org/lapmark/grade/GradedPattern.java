package org.lapmark.grade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.grade.fastening.Fastened;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.seam.WalkedSeam;

/**
 * All that a pattern comes to in one variant. Everything in it is a value, and knows nothing of
 * where it is stated: what is stated alike is graded alike, and is equal.
 *
 * @param variant the size and a choice for every option
 * @param measures values by name, base measures first
 * @param panels panels by name
 * @param pieces in the order stated
 * @param seams every seam with its lengths
 * @param refusals what can't be chosen in place of the variant's choices
 * @param fastened what is sewn along edges and attached at places
 */
public record GradedPattern(
    Variant variant,
    Map<String, Value> measures,
    Map<String, Panel> panels,
    List<Piece> pieces,
    List<WalkedSeam> seams,
    List<Refusal> refusals,
    Fastened fastened) {
  /** Copies the collections, keeping their order. */
  public GradedPattern {
    measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    panels = Collections.unmodifiableMap(new LinkedHashMap<>(panels));
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    refusals = List.copyOf(refusals);
  }

  /**
   * The same with some pieces only.
   *
   * @param some the pieces
   * @return the pattern with all else
   */
  public GradedPattern with(List<Piece> some) {
    return new GradedPattern(variant, measures, panels, some, seams, refusals, fastened);
  }
}
