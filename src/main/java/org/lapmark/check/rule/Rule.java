package org.lapmark.check.rule;

import java.util.List;
import java.util.function.BiConsumer;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;

/**
 * A rule: what it is held against is what it needs to know, and no other rule says its codes. What
 * it reads by the way, such as a formula, may give findings of the readers as well.
 *
 * @param holding holds something against the rule; breaches are added to the findings
 * @param codes what the rule says, at least one
 * @param <I> {@link Written}, {@link Evaluated}, or the sizes of one choice of options
 */
public record Rule<I>(BiConsumer<I, Findings> holding, List<FindingCode> codes) {
  public Rule {
    codes = List.copyOf(codes);
  }

  public Rule(BiConsumer<I, Findings> holding, FindingCode... codes) {
    this(holding, List.of(codes));
  }
}
