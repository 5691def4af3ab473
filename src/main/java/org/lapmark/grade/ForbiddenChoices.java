package org.lapmark.grade;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Variant;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.OptionsSource.ForbiddenSource;
import org.lapmark.source.OptionsSource.OptionSource;
import org.lapmark.source.PatternSource;

/** What the options of a pattern forbid, and why. */
final class ForbiddenChoices {
  private final PatternSource source;
  private final OptionsSource options;
  private final Findings findings;

  ForbiddenChoices(PatternSource source, Findings findings) {
    this.source = source;
    this.options = source.options();
    this.findings = findings;
  }

  /**
   * Whether a condition holds. What is wrong with it is reported; what is wrong with what it asks
   * for shows where the pattern is evaluated.
   */
  boolean holds(Formula condition, PatternScope scope) {
    try {
      return condition.holds(scope);
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (DemandGraph.Unavailable e) {
      // Reported where the pattern is evaluated.
    }
    return false;
  }

  /**
   * What a variant can't be changed to by another choice of one option.
   *
   * @param variant the variant, with a choice for every option
   * @return by option and choice in the order stated, each with the first reason
   */
  Map<Refusal, EvaluatedPattern.Reason> refused(Variant variant) {
    Map<Refusal, EvaluatedPattern.Reason> refused = new LinkedHashMap<>();
    if (options.forbidden().isEmpty()) {
      return refused;
    }
    for (OptionSource option : options.options()) {
      String name = option.name().text();
      for (String choice : option.ids()) {
        if (!choice.equals(variant.choices().get(name))) {
          SortedMap<String, String> choices = new TreeMap<>(variant.choices());
          choices.put(name, choice);
          Variant other = new Variant(variant.size(), choices);
          breach(other)
              .ifPresent(
                  one ->
                      refused.put(
                          new Refusal(name, choice, other),
                          new EvaluatedPattern.Reason(one.reason(), scope(other))));
        }
      }
    }
    return refused;
  }

  Optional<ForbiddenSource> breach(Variant variant) {
    if (options.forbidden().isEmpty()) {
      return Optional.empty();
    }
    PatternScope scope = scope(variant);
    return options.forbidden().stream().filter(one -> holds(one.when(), scope)).findFirst();
  }

  PatternScope scope(Variant variant) {
    return new PatternEvaluator(source, variant, new Findings()).scope();
  }

  String reason(ForbiddenSource one, Variant variant) {
    return PrintedText.of(one.reason(), scope(variant), variant, source.masthead().form(), findings)
        .map(PrintedText::text)
        .orElse(one.reason().source().text());
  }
}
