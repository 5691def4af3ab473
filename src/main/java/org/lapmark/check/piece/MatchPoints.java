package org.lapmark.check.piece;

import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.PanelSource;

/** Every match point has something to lie on. */
public final class MatchPoints {
  public static final Rule<Evaluated> RULE =
      new Rule<>(MatchPoints::run, PieceCode.MATCH_POINT_ALONE);

  private MatchPoints() {}

  static void run(Evaluated evaluated, Findings findings) {
    Map<String, Panel> panels = evaluated.pattern().panels();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Panel panel : panels.values()) {
      int copies = 0;
      for (Piece piece : evaluated.pattern().pieces()) {
        if (piece.shape().panel().name().equals(panel.name())) {
          copies += piece.cuts().stream().mapToInt(Cut::count).sum();
        }
      }
      for (PointMark.MatchPoint point : panel.marks(PointMark.MatchPoint.class)) {
        counts.merge(point.name(), Math.max(1, copies), Integer::sum);
      }
    }
    for (PanelSource source : evaluated.source().panels()) {
      Panel panel = panels.get(source.name().text());
      if (panel == null) {
        continue;
      }
      for (PointMark.MatchPoint point : panel.marks(PointMark.MatchPoint.class)) {
        if (counts.get(point.name()) == 1) {
          findings.add(
              Finding.of(
                  PieceCode.MATCH_POINT_ALONE,
                  source.name().position(),
                  "name",
                  point.name(),
                  "panel",
                  panel.name(),
                  "size",
                  evaluated.size()));
        }
      }
    }
  }
}
