package org.lapmark.grade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Formula;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.derived.DerivedSource;

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

  /**
   * What a formula comes to.
   *
   * @param formula the formula
   * @param findings where problems go
   * @return its value; nothing when it can't be computed, which is reported here or was before
   */
  public Optional<Value> value(Formula formula, Findings findings) {
    try {
      return Optional.of(formula.evaluate(scope));
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (DemandGraph.Unavailable e) {
      // Reported where it went wrong.
    }
    return Optional.empty();
  }

  /**
   * The piece that a maker knows a panel by: the one cut from it; else the one cut from what it is
   * derived from, or from what is derived from it.
   *
   * @param panel the panel's name
   * @return the first such piece, or nothing
   */
  public Optional<Piece> pieceOf(String panel) {
    Set<String> before = new LinkedHashSet<>(List.of(panel));
    Set<String> after = new LinkedHashSet<>(List.of(panel));
    // Derivations are no circles, so that there are fewer steps than panels.
    for (PanelSource unused : source.panels()) {
      for (PanelSource each : source.panels()) {
        if (each.derivation().isPresent()) {
          DerivedSource how = each.derivation().get();
          if (before.contains(each.name().text())) {
            how.originals().forEach(original -> before.add(original.text()));
          }
          if (after.contains(how.panel().text())) {
            after.add(each.name().text());
          }
        }
      }
    }
    return Stream.concat(before.stream(), after.stream())
        .flatMap(name -> pieces.stream().filter(piece -> piece.shape().panel().name().equals(name)))
        .findFirst();
  }

  /**
   * A form in which this variant's quantities are printed, each to the finest step that any of its
   * uses asks for.
   *
   * @param form how a document prints values
   * @return the form
   */
  public PrintForm printing(PrintForm form) {
    return form.with(source.masthead().form().finest());
  }

  /**
   * Whether something is stated of a material or of hardware, such as that it must not be ironed.
   *
   * @param thing the material or hardware
   * @param property the property's name
   * @return true if it is stated as {@code true}, or as a condition that holds in the variant
   */
  public boolean is(ThingSource thing, String property) {
    Formula formula = thing.properties().get(property);
    if (formula == null || formula.text().text().equals("false")) {
      return false;
    }
    if (formula.text().text().equals("true")) {
      return true;
    }
    // What can't be computed is reported where all properties are.
    return value(formula, new Findings()).orElse(null) instanceof Value.Truth truth
        && truth.holds();
  }
}
