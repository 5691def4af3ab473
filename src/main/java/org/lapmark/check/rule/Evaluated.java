package org.lapmark.check.rule;

import java.util.List;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.source.PatternSource;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;
import org.lapmark.text.markdown.StepsReader;

/** A pattern in one variant, for rules that hold in each. It belongs to one thread. */
public final class Evaluated {
  private final EvaluatedPattern pattern;
  private final DocumentLimits reach;
  private final CareWords sought;
  private final StatementsByName statements;
  private Steps steps;

  /**
   * A pattern in one variant.
   *
   * @param pattern the pattern in one variant
   * @param reach what the documents can do
   * @param sought the words that its texts are searched for
   */
  public Evaluated(EvaluatedPattern pattern, DocumentLimits reach, CareWords sought) {
    this.pattern = pattern;
    this.reach = reach;
    this.sought = sought;
    this.statements = new StatementsByName(pattern.source());
  }

  public EvaluatedPattern pattern() {
    return pattern;
  }

  public PatternSource source() {
    return pattern.source();
  }

  /** What the variant states, by name. */
  public StatementsByName statements() {
    return statements;
  }

  /** The variant's size, which findings name. */
  public String size() {
    return pattern.variant().size();
  }

  public DocumentLimits reach() {
    return reach;
  }

  public CareWords sought() {
    return sought;
  }

  /** What texts can refer to, apart from steps. */
  public Targets targets() {
    return new Targets(
        List.of(),
        source().pieces().stream().map(piece -> Integer.toString(piece.number())).toList(),
        reach.pages(),
        source().options());
  }

  /**
   * The steps, read once for all rules.
   *
   * @param findings what is known to be wrong, such as a condition because of which a step seems
   *     empty; whatever can't be read is added for the first who asks
   */
  public Steps steps(Findings findings) {
    if (steps == null) {
      steps = StepsReader.read(source().steps(), targets(), findings);
    }
    return steps;
  }
}
