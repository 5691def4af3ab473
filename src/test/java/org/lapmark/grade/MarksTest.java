package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.seam.NotchMatching;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.PatternSource;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.read.PatternReader;

/** Marks of every kind on a skirt in two sizes. */
class MarksTest {
  private static final Map<String, EvaluatedPattern> SIZES = new LinkedHashMap<>();

  @BeforeAll
  static void grade() throws IOException {
    Findings findings = new Findings();
    Path folder = Path.of("src", "test", "resources", "org", "lapmark", "publish", "skirt");
    PatternSource source = PatternReader.read(folder, Limits.STANDARD, findings);
    for (Variant variant : new Variants(source, findings).all()) {
      SIZES.put(variant.size(), Grader.grade(source, variant, findings));
    }
    assertEquals("[]", findings.sorted().toString());
  }

  private static <T extends Mark> List<T> marks(Panel panel, Class<T> kind) {
    List<T> found = new ArrayList<>();
    panel.marks().stream().filter(kind::isInstance).forEach(mark -> found.add(kind.cast(mark)));
    return found;
  }

  private static WalkedSeam seam(EvaluatedPattern pattern, String name) {
    return pattern.seams().stream().filter(one -> one.name().equals(name)).findFirst().get();
  }

  @Test
  void lengthsAndSeamsCountDartsAsClosed() {
    for (EvaluatedPattern pattern : SIZES.values()) {
      Panel front = pattern.panels().get("front");
      Panel back = pattern.panels().get("back");
      double drawn = front.line("waist").length() + 2 * back.line("waist").length();
      double darts = 2 * 24 + 2 * marks(back, Intake.Dart.class).get(0).width();
      WalkedSeam waist = seam(pattern, "waist");
      assertTrue(waist.agrees());
      assertEquals(drawn - darts, waist.sides().get(1).length(), 1e-6);
      assertEquals(waist.sides().get(0).length(), waist.sides().get(1).length(), 1e-6);
      // Two fronts' and two backs' darts, the centre front and two joins: all met by notches.
      NotchMatching matching = waist.matching(1);
      assertEquals(7, matching.pairs().size());
      assertEquals(
          4,
          matching.pairs().stream()
              .filter(pair -> pair.second().kind() == SeamMark.Kind.DART)
              .count());
      assertEquals(List.of(), matching.first());
      assertEquals(List.of(), matching.second());
    }
  }

  @Test
  void aSetLiesOnItsPartnerAndKeepsTheSeamFromBeingTurned() {
    for (EvaluatedPattern pattern : SIZES.values()) {
      WalkedSeam side = seam(pattern, "side");
      assertFalse(side.isTurnable());
      assertEquals(1, side.matching(1).pairs().size());
      NotchSet mine =
          marks(pattern.panels().get("back"), Mark.Notch.class).stream()
              .filter(notch -> notch.edge().equals("side"))
              .findFirst()
              .get()
              .set();
      // The back is travelled the other way, so that its set is the front's mirror image.
      assertEquals(List.of(12.0, 6.0), mine.gaps());
      assertEquals(NotchSet.Cut.WEDGE, mine.cut());
    }
  }

  @Test
  void drawnMarksGrowWithTheirPanel() {
    Panel small = SIZES.get("M").panels().get("back");
    Panel large = SIZES.get("L").panels().get("back");
    double across = 510.0 / 480;
    double down = 590.0 / 560;
    assertEquals(
        marks(small, Intake.Dart.class).get(0).apex().x() * across,
        marks(large, Intake.Dart.class).get(0).apex().x(),
        0.5);
    Point one = marks(small, PointMark.MatchPoint.class).get(0).point();
    Point other = marks(large, PointMark.MatchPoint.class).get(0).point();
    assertEquals(one.x() * across, other.x(), 1e-9);
    assertEquals(one.y() * down, other.y(), 1e-9);
    Intake.Pleat pleat = marks(large, Intake.Pleat.class).get(0);
    assertEquals(48, pleat.width(), 1e-9);
    assertEquals(60 * across, pleat.lines().get(0).start().x(), 1e-6);
    assertEquals(120 * down, pleat.lines().get(0).length(), 1e-6);
    Intake.Dart dart = marks(large, Intake.Dart.class).get(0);
    Point from = large.line("waist").atLength(dart.from());
    Point to = large.line("waist").atLength(dart.to());
    assertEquals(from.distance(dart.apex()), to.distance(dart.apex()), 1e-9);
  }

  @Test
  void aPieceOnTheFoldShowsHalfOfItsMarks() {
    EvaluatedPattern pattern = SIZES.get("L");
    Piece front = pattern.pieces().get(0);
    FoldedHalf half = front.half().get();
    assertEquals(2, marks(front.shape().panel(), Intake.Dart.class).size());
    assertEquals(1, half.marks().stream().filter(Intake.Dart.class::isInstance).count());
    assertEquals(1, half.marks().stream().filter(PointMark.Buttonhole.class::isInstance).count());
    // The stitching line is left out where the dart is: waist in two parts, side, hem.
    assertEquals(4, half.stitching().size());
    // Half of the wedge on the fold, two slits of the dart, a set of three wedges.
    assertEquals(6, half.notches().size());
    for (org.lapmark.geometry.Path notch : half.notches()) {
      assertTrue(notch.bounds().minX() >= 255 - 0.02, notch.toString());
    }
  }

  @Test
  void rowsStandWhereTheyAreStated() {
    EvaluatedPattern pattern = SIZES.get("M");
    Panel placket = pattern.panels().get("placket");
    List<PointMark.Buttonhole> holes = marks(placket, PointMark.Buttonhole.class);
    assertEquals(7, holes.size());
    assertEquals(
        6, holes.stream().filter(hole -> Math.abs(hole.from().x() - hole.to().x()) < 1e-9).count());
    assertEquals(56, holes.get(1).from().distance(holes.get(0).from()), 1e-9);
    assertEquals(20, holes.get(0).from().distance(holes.get(0).to()), 1e-9);
    // A strip with marks has to be printed.
    assertTrue(pattern.pieces().get(4).statedSize().isEmpty());
  }

  @Test
  void placesMayComeFromLengthsOfTheirOwnPanel(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("pattern.yaml"),
        """
        format: 1
        title: Test
        studio: Reed & Co
        language: en-GB
        edition: {name: "1", date: 2026-05-04}
        materials:
          main: {name: canvas}
        panels:
          back:
            rectangle: {width: 100 mm, height: 300 mm}
            darts:
              waist: {edge: top, at: 0.5, width: 20 mm, length: 80 mm}
            buttonholes:
              row: {edge: right, inset: 14 mm, count: 3, from: 20 mm, to: length(back.right) - 40 mm, length: 16 mm}
            drills:
              one: {edge: top, inset: 30 mm, at: length(back.top) / 4}
          other:
            mirror: {panel: back}
        pieces:
          - {number: 1, name: Back, panel: back, cut: [{material: main, count: 1}]}
          - {number: 2, name: Other back, panel: other, cut: [{material: main, count: 1}]}
        """);
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,S\nheight,mm,80\n");
    Findings findings = new Findings();
    EvaluatedPattern pattern =
        Grader.grade(
            PatternReader.read(folder, Limits.STANDARD, findings), Variant.ofSize("S"), findings);
    assertEquals("[]", findings.sorted().toString());
    for (String name : List.of("back", "other")) {
      Panel panel = pattern.panels().get(name);
      List<PointMark.Buttonhole> holes = marks(panel, PointMark.Buttonhole.class);
      assertEquals(3, holes.size(), name);
      assertEquals(240, holes.get(0).from().distance(holes.get(2).from()), 1e-9, name);
      assertEquals(1, marks(panel, PointMark.DrillPoint.class).size(), name);
    }
    // A quarter of the top with its dart closed.
    Point drill = marks(pattern.panels().get("back"), PointMark.DrillPoint.class).get(0).point();
    Point corner = pattern.panels().get("back").line("top").start();
    assertEquals(20, drill.x() - corner.x(), 1e-9);
  }
}
