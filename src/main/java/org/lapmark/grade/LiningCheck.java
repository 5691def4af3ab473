package org.lapmark.grade;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.derived.DerivedSource;

/**
 * Compares mounted linings with the main cloth. They are basted raw edge to raw edge and sewn as
 * one, so that both have one allowance; other linings are sewn by themselves.
 */
final class LiningCheck {
  private static final double SAME = 0.01;

  private final PatternScope scope;
  private final StatementsByName statements;
  private final Findings findings;

  LiningCheck(PatternEvaluator evaluator, Findings findings) {
    this.scope = evaluator.scope();
    this.statements = evaluator.statements();
    this.findings = findings;
  }

  void check(List<PieceSource> sources, List<Piece> pieces) {
    for (Piece lining : pieces) {
      PanelSource panel = statements.panel(lining.shape().panel().name());
      Optional<DerivedSource> mounted = panel.derivation().filter(DerivedSource::isMounted);
      if (mounted.isPresent()) {
        for (Piece main : pieces) {
          if (main.shape().panel().name().equals(mounted.get().panel().text())) {
            compare(sources, lining, main);
            break;
          }
        }
      }
    }
  }

  private void compare(List<PieceSource> sources, Piece lining, Piece main) {
    Map<String, Double> theirs = main.shape().allowances();
    for (Map.Entry<String, Double> own : lining.shape().allowances().entrySet()) {
      double other = theirs.getOrDefault(own.getKey(), own.getValue());
      if (Math.abs(own.getValue() - other) > SAME) {
        sources.stream()
            .filter(source -> source.number() == lining.number())
            .findFirst()
            .ifPresent(
                source ->
                    findings.add(
                        GradeCode.LINING_ALLOWANCE_DIFFERS,
                        source.panel().position(),
                        "edge",
                        own.getKey(),
                        "own",
                        Rounded.hundredth(own.getValue()),
                        "main",
                        Integer.toString(main.number()),
                        "allowance",
                        Rounded.hundredth(other),
                        "size",
                        scope.size()));
        return;
      }
    }
  }
}
