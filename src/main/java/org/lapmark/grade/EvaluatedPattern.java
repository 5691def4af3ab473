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
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.fastening.Fastened;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.Panel;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.derived.DerivedSource;

/**
 * A pattern evaluated in one variant: its values, beside what they were evaluated from and what
 * evaluates its author's texts.
 *
 * @param source what it was evaluated from, without what belongs to other variants only: pieces,
 *     cuts, materials, steps, passages of texts and the like that its choices leave out
 * @param values all that it comes to
 * @param scope what names in the author's texts stand for
 * @param reasons why what is refused is, in the author's words, by what is refused
 */
public record EvaluatedPattern(
    PatternSource source, GradedPattern values, Scope scope, Map<Refusal, Reason> reasons) {
  /** Copies the reasons, keeping their order. */
  public EvaluatedPattern {
    reasons = Collections.unmodifiableMap(new LinkedHashMap<>(reasons));
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
  public EvaluatedPattern(
      PatternSource source,
      Variant variant,
      Map<String, Value> measures,
      Map<String, Panel> panels,
      List<Piece> pieces,
      List<WalkedSeam> seams,
      Scope scope) {
    this(
        source,
        new GradedPattern(variant, measures, panels, pieces, seams, List.of(), Fastened.NONE),
        scope,
        Map.of());
  }

  /**
   * Why something can't be chosen.
   *
   * @param text the author's words
   * @param scope what names in them stand for, in the variant that can't be made
   */
  public record Reason(TemplateText text, Scope scope) {}

  /** What is sewn along edges and attached at places. */
  public Fastened fastened() {
    return values.fastened();
  }

  /** The size and a choice for every option. */
  public Variant variant() {
    return values.variant();
  }

  /** Values by name, base measures first. */
  public Map<String, Value> measures() {
    return values.measures();
  }

  /** Panels by name. */
  public Map<String, Panel> panels() {
    return values.panels();
  }

  /** Pieces in the order stated. */
  public List<Piece> pieces() {
    return values.pieces();
  }

  /** Every seam with its lengths. */
  public List<WalkedSeam> seams() {
    return values.seams();
  }

  /** What can't be chosen in place of the variant's choices. */
  public List<Refusal> refusals() {
    return values.refusals();
  }

  /**
   * The same pattern of which only some pieces are looked at.
   *
   * @param pieces the pieces
   * @return the pattern with all else
   */
  public EvaluatedPattern with(List<Piece> pieces) {
    return new EvaluatedPattern(source, values.with(pieces), scope, reasons);
  }

  /**
   * Why something can't be chosen, as readers see it.
   *
   * @param refusal what can't be chosen
   * @param form how values are printed
   * @return strings and printed values; nothing when it can't be printed, which is reported where
   *     the folder is checked
   */
  public List<Object> reason(Refusal refusal, PrintForm form) {
    Reason reason = reasons.get(refusal);
    return PrintedText.of(reason.text(), reason.scope(), refusal.variant(), form, new Findings())
        .map(PrintedText::parts)
        .orElse(List.of());
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
        .flatMap(
            name -> pieces().stream().filter(piece -> piece.shape().panel().name().equals(name)))
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
   * @return true if it is stated as {@code yes}, {@code true}, or a condition that holds in the
   *     variant
   */
  public boolean is(ThingSource thing, String property) {
    return YesNoProperty.holds(thing, property, scope);
  }
}
