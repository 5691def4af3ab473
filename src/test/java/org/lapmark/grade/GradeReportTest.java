package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradeReport.Kind;
import org.lapmark.grade.GradeReport.PanelGrades;
import org.lapmark.grade.GradeReport.Row;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** A cap in six sizes, two of whose panels are slashed and spread. */
class GradeReportTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "org", "lapmark", "document", "grade");

  private static List<EvaluatedPattern> patterns(String longerBack) throws Exception {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(FOLDER, findings);
    List<EvaluatedPattern> patterns =
        source.sizes().sizes().stream()
            .map(
                size ->
                    Grader.grade(
                        source,
                        new Variant(size, new TreeMap<>(Map.of("longer_back", longerBack))),
                        findings))
            .toList();
    assertFalse(findings.hasErrors(), findings.sorted().toString());
    return patterns;
  }

  private static Row row(GradeReport report, String panel, Kind kind, String name) {
    PanelGrades grades =
        report.panels().stream().filter(one -> one.name().equals(panel)).findFirst().orElseThrow();
    return grades.rows().stream()
        .filter(row -> row.kind() == kind && row.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyEdgeIsComparedFromSizeToSize() throws Exception {
    GradeReport report = GradeReport.of(patterns("no"));
    assertEquals(List.of("54", "56", "58", "60", "62", "64"), report.sizes());
    assertEquals(Map.of("longer_back", "no"), report.choices());
    assertEquals(
        List.of("brim", "ear_flap", "band"),
        report.panels().stream().map(PanelGrades::name).toList());
    Row inner = row(report, "brim", Kind.EDGE, "inner");
    Row outer = row(report, "brim", Kind.EDGE, "outer");
    assertEquals(Optional.empty(), inner.increment(0));
    for (int i = 0; i < 6; i++) {
      assertEquals(560 + 20 * i, inner.values().get(i).orElseThrow(), 0.005);
      if (i > 0) {
        assertEquals(20, inner.increment(i).orElseThrow(), 0.005);
        assertEquals(20, outer.increment(i).orElseThrow(), 0.005);
      }
    }
    assertEquals(List.of(6.0), outer.allowances());
    assertEquals(List.of(10.0), inner.allowances());
    Row area = row(report, "band", Kind.AREA, "");
    assertEquals(560 * 48, area.values().get(0).orElseThrow(), 1e-6);
    assertEquals(20 * 48, area.increment(5).orElseThrow(), 1e-6);
  }

  @Test
  void anOptionOpensTheBackByAMeasureAndLeavesTheHeadAsItIs() throws Exception {
    GradeReport plain = GradeReport.of(patterns("no"));
    GradeReport longer = GradeReport.of(patterns("yes"));
    for (int i = 0; i < 6; i++) {
      double open = 3 * (540 + 20 * i) / 60.0;
      assertEquals(
          row(plain, "brim", Kind.EDGE, "inner").values().get(i).orElseThrow(),
          row(longer, "brim", Kind.EDGE, "inner").values().get(i).orElseThrow(),
          0.005);
      assertEquals(
          row(plain, "brim", Kind.EDGE, "outer").values().get(i).orElseThrow() + open,
          row(longer, "brim", Kind.EDGE, "outer").values().get(i).orElseThrow(),
          0.02 * open);
    }
  }

  @Test
  void aDrawnSlashLineIsScaledAndMarksGoWithTheirPart() throws Exception {
    List<EvaluatedPattern> patterns = patterns("no");
    Panel smallest = patterns.get(0).panels().get("ear_flap");
    Panel largest = patterns.get(5).panels().get("ear_flap");
    assertEquals(92, smallest.outline().bounds().height(), 1e-6);
    assertEquals(97, largest.outline().bounds().height(), 1e-6);
    PointMark.DrillPoint strap =
        (PointMark.DrillPoint)
            largest.marks().stream()
                .filter(mark -> mark instanceof PointMark.DrillPoint)
                .findFirst()
                .orElseThrow();
    // Below the line, which opens by 5 mm; the grain lies above it.
    assertEquals(new Point(64, 85), strap.point());
    assertEquals(
        smallest.marks().stream().filter(mark -> mark instanceof Mark.Notch).count(),
        largest.marks().stream().filter(mark -> mark instanceof Mark.Notch).count());
    for (Mark mark : largest.marks()) {
      if (mark instanceof Mark.Notch notch) {
        assertEquals(largest.line("rear-front").length() / 2, notch.at(), 0.05);
      }
    }
  }

  @Test
  void outlinesAreStackedOnTheCorner() throws Exception {
    GradeReport report = GradeReport.of(patterns("no"));
    PanelGrades flap = report.panels().get(1);
    assertEquals("rear", flap.corner());
    assertEquals("top_left", report.panels().get(2).corner());
    for (Optional<org.lapmark.geometry.Path> outline : flap.outlines()) {
      assertEquals(0, outline.orElseThrow().distance(new Point(0, 0)), 1e-9);
      assertEquals(0, outline.orElseThrow().bounds().maxX(), 1e-6);
    }
  }

  @Test
  void aRectangleSpreadAlongItsSidesIsARectangleAndNeedsNoPaper() throws Exception {
    EvaluatedPattern pattern = patterns("no").get(0);
    StatedSize size = pattern.pieces().get(2).statedSize().orElseThrow();
    assertEquals(560 + 20, size.width(), 1e-6);
    assertEquals(48 + 20, size.height(), 1e-6);
    assertEquals(Optional.empty(), pattern.pieces().get(0).statedSize());
  }

  @Test
  void thereMustBeASize() {
    assertThrows(IllegalArgumentException.class, () -> GradeReport.of(List.of()));
  }
}
