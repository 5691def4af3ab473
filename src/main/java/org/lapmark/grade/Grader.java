package org.lapmark.grade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.fastening.Fastened;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.panel.PanelFactory;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.Panel;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;

/** Evaluates a pattern in a variant. */
public final class Grader {
  private final PatternSource source;
  private final Variant variant;
  private final Findings findings;
  private final PatternEvaluator evaluator;
  private final PatternScope scope;
  private final Map<Refusal, EvaluatedPattern.Reason> refused;

  private Grader(PatternSource source, Variant variant, Findings findings) {
    this.variant = variant;
    this.findings = findings;
    this.evaluator = new PatternEvaluator(source, variant, findings);
    this.scope = evaluator.scope();
    this.source = evaluator.presence().of(source, findings);
    this.refused = new ForbiddenChoices(source, findings).refused(variant);
  }

  /**
   * Evaluates everything that can be evaluated.
   *
   * @param source the pattern as read
   * @param variant the variant; what it doesn't choose is as the options say by default
   * @param findings where problems go
   * @return the pattern; what couldn't be evaluated is missing
   */
  public static EvaluatedPattern grade(PatternSource source, Variant variant, Findings findings) {
    return new Grader(source, Variants.completed(source, variant, findings), findings).grade();
  }

  private EvaluatedPattern grade() {
    Map<String, Value> measures = new LinkedHashMap<>();
    if (source.sizes() != null) {
      source
          .sizes()
          .rows()
          .forEach(
              row ->
                  Optional.ofNullable(row.values().get(variant.size()))
                      .ifPresent(value -> measures.put(row.name(), value)));
    }
    source
        .measures()
        .forEach(
            measure ->
                attempt(() -> scope.value(measure.name()))
                    .ifPresent(value -> measures.put(measure.name().text(), value)));
    Map<String, Panel> panels = new LinkedHashMap<>();
    source
        .panels()
        .forEach(
            panel ->
                attempt(() -> evaluator.marks().panel(panel.name()))
                    .ifPresent(built -> panels.put(panel.name().text(), built)));
    ThingProperties things = new ThingProperties(evaluator);
    ThingProperties.all(source).forEach(stated -> attempt(() -> things.value(stated)));
    source.making().stitches().values().forEach(stitch -> attempt(() -> things.length(stitch)));
    List<Piece> pieces = pieces();
    PatternSource made = source.withPieces(cut(pieces));
    return Precision.of(
        new EvaluatedPattern(
            made,
            new GradedPattern(
                variant,
                measures,
                panels,
                pieces,
                seams(pieces),
                List.copyOf(refused.keySet()),
                fastened()),
            scope,
            refused));
  }

  /** What is stated of pieces, without those that aren't cut; what couldn't be built stays. */
  private List<PieceSource> cut(List<Piece> pieces) {
    List<Integer> uncut =
        pieces.stream().filter(piece -> piece.cuts().isEmpty()).map(Piece::number).toList();
    pieces.removeIf(piece -> piece.cuts().isEmpty());
    return source.pieces().stream().filter(piece -> !uncut.contains(piece.number())).toList();
  }

  private List<Piece> pieces() {
    PieceFactory factory =
        new PieceFactory(
            evaluator, new PanelFactory(scope, variant, findings), materialNames(), findings);
    List<Piece> pieces = new ArrayList<>();
    source
        .pieces()
        .forEach(
            piece ->
                print(piece.name())
                    .flatMap(name -> attempt(() -> factory.build(piece, name)))
                    .ifPresent(pieces::add));
    return pieces;
  }

  private Map<String, String> materialNames() {
    Map<String, String> names = new LinkedHashMap<>();
    source
        .materials()
        .forEach(
            material ->
                print(material.name()).ifPresent(name -> names.put(material.id().text(), name)));
    return names;
  }

  private List<WalkedSeam> seams(List<Piece> pieces) {
    SeamWalker walker = new SeamWalker(evaluator, source.seams(), pieces, findings);
    List<WalkedSeam> seams = new ArrayList<>();
    source.seams().forEach(seam -> attempt(() -> walker.walk(seam)).ifPresent(seams::add));
    return seams;
  }

  private Fastened fastened() {
    TrimFactory factory = new TrimFactory(evaluator);
    List<Trim> trims = new ArrayList<>();
    source
        .fastenings()
        .trims()
        .forEach(trim -> attempt(() -> factory.build(trim)).ifPresent(trims::add));
    return new Fastened(trims, new AttachmentFactory(evaluator, source, findings).all());
  }

  private Optional<String> print(TemplateText text) {
    return PrintedText.of(text, scope, variant, source.masthead().form(), findings)
        .map(PrintedText::text);
  }

  /** What can't be computed is reported once and left out. */
  private <T> Optional<T> attempt(Supplier<T> computation) {
    try {
      return Optional.of(computation.get());
    } catch (FindingException e) {
      findings.add(e.finding());
      return Optional.empty();
    } catch (DemandGraph.Unavailable e) {
      return Optional.empty();
    }
  }
}
