package org.lapmark.check.piece;

import java.util.Map;
import java.util.Optional;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.grade.piece.Piece;
import org.lapmark.source.PanelSource;
import org.lapmark.source.derived.DerivedSource;

/**
 * Compares mounted linings with the main cloth. They are basted raw edge to raw edge and sewn as
 * one, so that both have one allowance; other linings are sewn by themselves.
 */
public final class LiningCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(LiningCheck::run, PieceCode.LINING_ALLOWANCE_DIFFERS);

  private static final double SAME = 0.01;

  private LiningCheck() {}

  static void run(Evaluated evaluated, Findings findings) {
    for (Piece lining : evaluated.pattern().pieces()) {
      PanelSource panel = evaluated.statements().panel(lining.shape().panel().name());
      Optional<DerivedSource> mounted = panel.derivation().filter(DerivedSource::isMounted);
      if (mounted.isPresent()) {
        for (Piece main : evaluated.pattern().pieces()) {
          if (main.shape().panel().name().equals(mounted.get().panel().text())) {
            compare(evaluated, lining, main, findings);
            break;
          }
        }
      }
    }
  }

  private static void compare(Evaluated evaluated, Piece lining, Piece main, Findings findings) {
    Map<String, Double> theirs = main.shape().allowances();
    for (Map.Entry<String, Double> own : lining.shape().allowances().entrySet()) {
      double other = theirs.getOrDefault(own.getKey(), own.getValue());
      if (Math.abs(own.getValue() - other) > SAME) {
        evaluated
            .statements()
            .piece(Integer.toString(lining.number()))
            .ifPresent(
                source ->
                    findings.add(
                        PieceCode.LINING_ALLOWANCE_DIFFERS,
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
                        evaluated.size()));
        return;
      }
    }
  }
}
