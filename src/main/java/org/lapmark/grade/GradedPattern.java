package org.lapmark.grade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PatternSource;

/**
 * The whole pattern evaluated in one variant.
 *
 * @param source what it was evaluated from, without what belongs to other variants only: pieces,
 *     cuts, materials, steps, passages of texts and the like that its choices leave out
 * @param variant the size and a choice for every option
 * @param measures values by name, base measures first
 * @param panels panels by name
 * @param pieces in the order stated
 * @param seams every seam with its lengths
 * @param scope what names in the author's texts stand for
 * @param refusals what can't be chosen in place of the variant's choices
 */
public record GradedPattern(
    PatternSource source,
    Variant variant,
    Map<String, Value> measures,
    Map<String, Panel> panels,
    List<Piece> pieces,
    List<WalkedSeam> seams,
    Scope scope,
    List<Refusal> refusals) {
  /** Copies the collections, keeping their order. */
  public GradedPattern {
    measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    panels = Collections.unmodifiableMap(new LinkedHashMap<>(panels));
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    refusals = List.copyOf(refusals);
  }

  /**
   * A pattern in which nothing is refused.
   *
   * @param source what it was evaluated from
   * @param variant the size and a choice for every option
   * @param measures values by name
   * @param panels panels by name
   * @param pieces in the order stated
   * @param seams every seam with its lengths
   * @param scope what names in the author's texts stand for
   */
  public GradedPattern(
      PatternSource source,
      Variant variant,
      Map<String, Value> measures,
      Map<String, Panel> panels,
      List<Piece> pieces,
      List<WalkedSeam> seams,
      Scope scope) {
    this(source, variant, measures, panels, pieces, seams, scope, List.of());
  }
}
