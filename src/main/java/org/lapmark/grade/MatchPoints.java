package org.lapmark.grade;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.PanelSource;

/** Reports match points that have nothing to lie on. */
final class MatchPoints {
  private MatchPoints() {}

  static void check(
      List<PanelSource> sources,
      Map<String, Panel> panels,
      List<Piece> pieces,
      String size,
      Findings findings) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Panel panel : panels.values()) {
      int copies = 0;
      for (Piece piece : pieces) {
        if (piece.shape().panel().name().equals(panel.name())) {
          copies += piece.cuts().stream().mapToInt(Cut::count).sum();
        }
      }
      for (PointMark.MatchPoint point : panel.marks(PointMark.MatchPoint.class)) {
        counts.merge(point.name(), Math.max(1, copies), Integer::sum);
      }
    }
    for (PanelSource source : sources) {
      Panel panel = panels.get(source.name().text());
      if (panel == null) {
        continue;
      }
      for (PointMark.MatchPoint point : panel.marks(PointMark.MatchPoint.class)) {
        if (counts.get(point.name()) == 1) {
          findings.add(
              Finding.of(
                  GradeCode.MATCH_POINT_ALONE,
                  source.name().position(),
                  "name",
                  point.name(),
                  "panel",
                  panel.name(),
                  "size",
                  size));
        }
      }
    }
  }
}
