package org.lapmark.grade;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.measure.Formula;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.key.Ref;

/**
 * Looks in which variants the conditions of a pattern hold, and tells those that decide nothing.
 */
public final class Conditions {
  private final PatternSource source;
  private final Map<Ref, Asked> asked = new LinkedHashMap<>();
  private final Set<Integer> cut = new TreeSet<>();
  private final Set<String> steps = new LinkedHashSet<>();
  private final Set<List<String>> used = new LinkedHashSet<>();
  private boolean seen;

  /**
   * The conditions of a pattern.
   *
   * @param source the pattern as read, whole
   */
  public Conditions(PatternSource source) {
    this.source = source;
    source.options().conditions().forEach((what, when) -> asked.put(what, new Asked(when)));
  }

  /** A condition, and what it came to so far. */
  private static final class Asked {
    private final Formula when;
    private boolean held;
    private boolean failed;
    private boolean unknown;

    Asked(Formula when) {
      this.when = when;
    }
  }

  /**
   * Takes note of a variant.
   *
   * @param pattern the pattern in the variant
   */
  public void see(EvaluatedPattern pattern) {
    seen = true;
    pattern.pieces().stream()
        .filter(piece -> !piece.cuts().isEmpty())
        .forEach(piece -> cut.add(piece.number()));
    for (StepSource step : pattern.source().steps()) {
      steps.add(step.id().text());
      step.uses().forEach(use -> used.add(List.of(step.id().text(), use.text())));
    }
    for (Asked one : asked.values()) {
      try {
        if (one.when.holds(pattern.scope())) {
          one.held = true;
        } else {
          one.failed = true;
        }
      } catch (FindingException | DemandGraph.Unavailable e) {
        one.unknown = true; // Reported where the pattern was evaluated.
      }
    }
  }

  /**
   * Reports, after all variants have been seen, conditions that never hold or always do, and pieces
   * that are never cut.
   *
   * @param never the options of which a choice can't be made at all, which has been reported: what
   *     asks for them decides nothing for that reason
   * @param complete whether every combination has been seen
   * @param findings where problems go
   */
  public void report(Set<String> never, boolean complete, Findings findings) {
    if (!seen) {
      return;
    }
    Set<Ref> idle = new LinkedHashSet<>();
    asked.forEach(
        (what, one) -> {
          boolean excused = one.when.names().stream().anyMatch(never::contains);
          if (one.unknown || !complete || excused) {
            if (one.unknown || excused) {
              idle.add(what);
            }
          } else if (!one.held) {
            idle.add(what);
            findings.add(GradeCode.WHEN_NEVER, one.when.text().position(), "kind", "condition");
          } else if (!one.failed) {
            findings.add(GradeCode.WHEN_ALWAYS, one.when.text().position());
          }
        });
    if (!findings.hasErrors()) {
      if (complete) {
        source.steps().forEach(step -> uses(step, idle, findings));
      }
      source.pieces().stream()
          .filter(piece -> !cut.contains(piece.number()) && !isExcused(piece, idle))
          .forEach(
              piece ->
                  findings.add(
                      GradeCode.PIECE_NEVER_CUT,
                      piece.position(),
                      "number",
                      Integer.toString(piece.number())));
    }
  }

  /** Reports what is never there when the step is that uses it. */
  private void uses(StepSource step, Set<Ref> idle, Findings findings) {
    for (SourceText use : step.uses()) {
      boolean excused =
          Stream.of(Ref.Kind.THING, Ref.Kind.TRIM, Ref.Kind.ATTACHMENT)
              .anyMatch(kind -> idle.contains(Ref.of(kind, use.text())));
      if (steps.contains(step.id().text())
          && !excused
          && !used.contains(List.of(step.id().text(), use.text()))) {
        findings.add(
            GradeCode.USE_NEVER, use.position(), "step", step.id().text(), "use", use.text());
      }
    }
  }

  /** Whether a piece isn't cut because of a condition that has been told, its own or its cuts'. */
  private static boolean isExcused(PieceSource piece, Set<Ref> idle) {
    List<Ref> cuts = piece.cuts().stream().map(PieceSource.CutSource::ref).toList();
    return idle.contains(piece.ref()) || !cuts.isEmpty() && cuts.stream().allMatch(idle::contains);
  }
}
