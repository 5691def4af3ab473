package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Mark;
import org.lapmark.seam.NotchLine;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.read.PatternReader;

/** Notches every so often, near corners and from a seam's partners. */
class SeamNotchesTest {
  private static final String START =
      """
      format: 1
      title: Test
      studio: Reed & Co
      language: en-GB
      edition: {name: "1", date: 2026-05-04}
      materials:
        main: {name: canvas}
      hardware:
        zip: {name: zip, visible_width: 12 mm}
      pieces:
        - {number: 1, name: A, panel: a, cut: [{material: main, count: 1}]}
      """;

  @TempDir Path folder;

  private EvaluatedPattern grade(String rest) throws IOException {
    Path pattern = Files.createDirectory(folder.resolve("test"));
    Files.writeString(pattern.resolve("pattern.yaml"), START + rest);
    Files.writeString(pattern.resolve("sizes.csv"), "measure,unit,S\nheight,mm,80\n");
    Findings findings = new Findings();
    EvaluatedPattern graded =
        Grader.grade(PatternReader.read(pattern, findings), Variant.ofSize("S"), findings);
    assertEquals(List.of(), findings.sorted());
    return graded;
  }

  private static List<String> notches(EvaluatedPattern pattern, String panel) {
    return pattern.panels().get(panel).marks().stream()
        .filter(Mark.Notch.class::isInstance)
        .map(Mark.Notch.class::cast)
        .map(
            notch ->
                notch.edge()
                    + " "
                    + Rounded.hundredth(notch.at())
                    + (notch.count() == 2 ? " double" : ""))
        .toList();
  }

  @Test
  void stateThemselvesEverySoOftenAndNearCorners() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a:
                rectangle: {width: 100 mm, height: 80 mm}
                notches:
                  - {edge: top, every: 30 mm}
                  - {edge: right, every: 30 mm, centred: false}
                  - {edge: bottom, corner: top-right}
            """);
    assertEquals(
        List.of("top 20", "top 50", "top 80", "right 30", "right 60", "bottom 0"),
        notches(pattern, "a"));
  }

  @Test
  void comeFromThePartnerWithItsJoinsItsNotchesAndWhatIsCaught() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a:
                rectangle: {width: 112 mm, height: 80 mm}
                notches:
                  - {edge: top, from_seam: along}
              b:
                rectangle: {width: 60 mm, height: 20 mm}
                notches:
                  - {edge: bottom, at: 10 mm, count: 2}
              c:
                rectangle: {width: 40 mm, height: 20 mm}
              tie:
                strip: {length: 90 mm, width: 20 mm}
            seams:
              along:
                sides:
                  - [a.top]
                  - [b.bottom, zip.visible_width, {edge: c.bottom, notch: 2}, {tab: tie.top, at: 30 mm}]
            """);
    assertEquals(
        List.of("top 30", "top 50 double", "top 60", "top 72 double"), notches(pattern, "a"));
    WalkedSeam seam = pattern.seams().get(0);
    assertTrue(
        seam.notchLines().stream().allMatch(line -> line.verdict() == NotchLine.Verdict.COINCIDES),
        seam.notchLines().toString());
  }

  @Test
  void whatIsCaughtLiesWhereItsAttachmentSays() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a: {rectangle: {width: 100 mm, height: 80 mm}}
              b: {rectangle: {width: 180 mm, height: 20 mm}}
              c: {rectangle: {width: 90 mm, height: 80 mm}}
            attachments:
              on_edge: {thing: zip, panel: a, edge: top, at: 1/4, width: 10 mm}
              round_corner: {thing: zip, panel: a, edge: right, at: 30 mm, width: 10 mm}
              on_other: {thing: zip, panel: b, edge: bottom, at: 1/4, width: 10 mm}
              on_eased: {thing: zip, panel: c, edge: bottom, at: 30 mm, width: 10 mm}
            seams:
              along:
                sides:
                  - [a.top, a.right, {tab: on_edge}, {tab: round_corner}, {tab: on_other}]
                  - [b.bottom, {tab: on_other}, {tab: round_corner}]
              ring:
                closed: true
                sides:
                  - {edges: [a.top, a.right, {tab: on_edge}, {tab: round_corner}], start: 40 mm}
                  - [b.bottom]
              eased:
                sides:
                  - {edges: [a.top, {tab: on_eased}], ease: 10 mm}
                  - [c.bottom]
            """);
    assertEquals(List.of("on_edge 25", "round_corner 130", "on_other 135"), caught(pattern, 0, 0));
    assertEquals(List.of("on_other 135", "round_corner 130"), caught(pattern, 0, 1));
    assertEquals(List.of("on_edge 165", "round_corner 90"), caught(pattern, 1, 0));
    assertEquals(List.of("on_eased 66.67"), caught(pattern, 2, 0));
  }

  private static List<String> caught(EvaluatedPattern pattern, int seam, int side) {
    return pattern.seams().get(seam).sides().get(side).tabs().stream()
        .map(tab -> tab.name() + " " + Rounded.hundredth(tab.at()))
        .toList();
  }

  @Test
  void comeFromSharpCornersUnlessThereIsACornerAlready() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a:
                rectangle: {width: 100 mm, height: 80 mm}
              b:
                rectangle: {width: 260 mm, height: 40 mm}
                notches:
                  - {edge: bottom, from_seam: round}
              c:
                rectangle: {width: 100 mm, height: 80 mm}
                notches:
                  - {edge: right, from_seam: lined}
                  - {edge: bottom, from_seam: lined}
                  - {edge: left, from_seam: lined}
            seams:
              round:
                match_notches: true
                sides:
                  - [a.right, a.bottom, a.left]
                  - [b.bottom]
              lined:
                sides:
                  - [a.right, a.bottom, a.left]
                  - [c.left, c.bottom, c.right]
            """);
    assertEquals(List.of("bottom 180", "bottom 80"), notches(pattern, "b"));
    assertEquals(List.of(), notches(pattern, "c"));
    WalkedSeam seam = pattern.seams().get(0);
    assertTrue(
        seam.notchLines().stream().allMatch(line -> line.verdict() == NotchLine.Verdict.COINCIDES),
        seam.notchLines().toString());
  }

  @Test
  void standWhereASeamBeginsAndEndsWithinAnEdge() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a:
                rectangle: {width: 200 mm, height: 80 mm}
                notches:
                  - {edge: top, from_seam: collar}
                  - {edge: right, from_seam: side}
              b:
                rectangle: {width: 100 mm, height: 80 mm}
            seams:
              collar:
                match_notches: true
                sides:
                  - [{edge: a.top, from: 30 mm, to: 130 mm}]
                  - [b.bottom]
              side:
                match_notches: true
                sides:
                  - [a.right]
                  - [b.left]
            """);
    assertEquals(List.of("top 30", "top 130"), notches(pattern, "a"));
    WalkedSeam collar = pattern.seams().get(0);
    assertEquals(List.of(), collar.matching(1).first());
    assertEquals(List.of(), collar.matching(1).second());
  }

  @Test
  void standWhereAnEdgeMeetsTheSameEdgeOfItsMirroredCopy() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a:
                rectangle: {width: 120 mm, height: 80 mm}
                notches:
                  - {edge: top, from_seam: cuff}
              b:
                rectangle: {width: 60 mm, height: 80 mm}
            seams:
              cuff:
                closed: true
                sides:
                  - [a.top]
                  - [b.bottom, {edge: b.bottom, reversed: true}]
            """);
    assertEquals(List.of("top 60"), notches(pattern, "a"));
  }

  @Test
  void shareTheEaseBetweenTheNotchesThatAreThere() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a:
                rectangle: {width: 312 mm, height: 80 mm}
                notches:
                  - {edge: top, at: 80 mm}
                  - {edge: top, at: 232 mm}
                  - {edge: top, from_seam: head}
              b:
                rectangle: {width: 300 mm, height: 20 mm}
                notches:
                  - {edge: bottom, at: 300 mm - 80 mm}
                  - {edge: bottom, at: 150 mm, count: 2}
                  - {edge: bottom, at: 300 mm - 220 mm}
                  - {edge: bottom, at: 300 mm - 40 mm}
            seams:
              head:
                sides:
                  - [a.top]
                  - [b.bottom]
                ease: 12 mm
                match_notches: true
            """);
    assertEquals(List.of("top 80", "top 232", "top 40", "top 156 double"), notches(pattern, "a"));
  }

  @Test
  void areTakenByATubeFromItsOwnOtherEdge() throws IOException {
    EvaluatedPattern pattern =
        grade(
            """
            panels:
              a:
                rectangle: {width: 100 mm, height: height}
                notches:
                  - {edge: right, at: 25 mm}
                  - {edge: left, from_seam: back}
            seams:
              back:
                sides:
                  - [a.right]
                  - [a.left]
            """);
    assertEquals(List.of("right 25", "left 55"), notches(pattern, "a"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"S", "M", "L"})
  void putTheDemosJoinsOnItsRim(String size) throws IOException {
    Findings findings = new Findings();
    EvaluatedPattern bag =
        Grader.grade(
            PatternReader.read(Path.of("content/towpath-handlebar-bag"), findings),
            Variant.ofSize(size),
            findings);
    assertEquals(
        List.of("top 0", "top 60", "top 72", "top 112 double"),
        notches(bag, "end").stream().filter(notch -> notch.startsWith("top")).toList());
    for (WalkedSeam seam : bag.seams()) {
      assertTrue(seam.agrees(), seam.name());
      assertTrue(seam.joints().stream().allMatch(joint -> joint.isTrue()), seam.name());
      assertEquals(List.of(10.0), seam.allowances(), seam.name());
      assertTrue(
          seam.notchLines().stream().noneMatch(line -> line.verdict() == NotchLine.Verdict.MISSES),
          seam.name());
    }
    assertEquals(4, bag.seams().size());
    assertEquals(2, bag.seams().get(0).joints().size());
  }
}
