package org.lapmark.check.piece;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.panel.Panel;
import org.lapmark.source.PieceSource;

/** An allowance that is stated of a chain counts on some edge of it. */
public final class AllowanceCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(AllowanceCheck::run, PieceCode.ALLOWANCE_IDLE);

  private AllowanceCheck() {}

  static void run(Evaluated evaluated, Findings findings) {
    for (PieceSource piece : evaluated.source().pieces()) {
      Panel panel = evaluated.pattern().panels().get(piece.panel().text());
      if (panel != null) {
        check(piece, panel, findings);
      }
    }
  }

  /** What an allowance is stated of: an edge, or the edges of a chain. */
  private record Stated(SourceText name, Set<String> edges) {
    boolean isWithin(Stated other) {
      return edges.size() < other.edges.size() && other.edges.containsAll(edges);
    }
  }

  private static void check(PieceSource piece, Panel panel, Findings findings) {
    List<Stated> all = new ArrayList<>();
    for (PieceSource.EdgeAllowance stated : piece.edgeAllowances()) {
      String name = stated.edge().text();
      all.add(
          new Stated(
              stated.edge(),
              new LinkedHashSet<>(panel.chains().getOrDefault(name, List.of(name)))));
    }
    for (Stated chain : all) {
      Set<String> left = new LinkedHashSet<>(chain.edges());
      Set<String> within = new LinkedHashSet<>();
      for (Stated other : all) {
        if (other.isWithin(chain)) {
          left.removeAll(other.edges());
          within.add(other.name().text());
        }
      }
      if (left.isEmpty()) {
        findings.add(
            PieceCode.ALLOWANCE_IDLE,
            chain.name().position(),
            "chain",
            chain.name().text(),
            "piece",
            Integer.toString(piece.number()),
            "within",
            String.join(", ", within));
      }
    }
  }
}
