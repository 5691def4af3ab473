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
import org.lapmark.measure.Variant;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** A bib whose panels are derived from one half, over several steps. */
class DerivedPatternTest {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "org", "lapmark", "grade", "derived");

  private static EvaluatedPattern grade(String size) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(FOLDER, findings);
    EvaluatedPattern pattern = Grader.grade(source, Variant.ofSize(size), findings);
    assertEquals(List.of(), findings.sorted());
    return pattern;
  }

  private static double area(Panel panel) {
    return panel.outline().signedArea();
  }

  private static List<String> names(Panel panel) {
    return panel.edges().stream().map(Edge::name).toList();
  }

  private static long notches(Panel panel, String edge) {
    return panel.marks().stream()
        .filter(mark -> mark instanceof Mark.Notch notch && notch.edge().equals(edge))
        .count();
  }

  @ParameterizedTest
  @ValueSource(strings = {"S", "M"})
  void everythingFollowsFromTheHalf(String size) throws IOException {
    EvaluatedPattern pattern = grade(size);
    Panel half = pattern.panels().get("half_front");
    Panel front = pattern.panels().get("front");
    Panel upper = pattern.panels().get("upper");
    Panel lower = pattern.panels().get("lower");
    Panel again = pattern.panels().get("again");
    assertEquals(2 * area(half), area(front), 1e-3);
    assertEquals(area(front), area(upper) + area(lower), 1e-2);
    assertEquals(area(front), area(again), 1e-2);
    assertEquals(front.outline().length(), again.outline().length(), 1e-3);
    assertEquals(
        List.of(
            "neck",
            "shoulder",
            "armhole",
            "side",
            "hem",
            "side_mirrored",
            "armhole_mirrored",
            "shoulder_mirrored"),
        names(front));
    assertEquals(List.of("shoulder_mirrored", "neck", "shoulder"), front.chains().get("top"));
    // One on each side, and the one that is stated for the whole.
    assertEquals(3, notches(front, "neck"));
    assertEquals(3, notches(upper, "neck"));
    assertEquals(1, notches(front, "armhole") + notches(front, "armhole_mirrored") - 1);
    assertEquals(1, notches(lower, "side_mirrored"));
    Panel facing = pattern.panels().get("neck_facing");
    assertEquals(front.line("neck").length(), facing.line("neck").length(), 1e-6);
    assertEquals(3, notches(facing, "neck"));
    Panel lining = pattern.panels().get("front_lining");
    double drop = front.line("hem").start().y() - lining.line("hem").start().y();
    assertEquals(20, drop, 0.003);
    Panel liningHalf = pattern.panels().get("lining_half");
    assertEquals(area(lining), 2 * area(liningHalf), 1);
    assertTrue(names(liningHalf).contains("fold"));
    assertEquals(2, pattern.seams().size());
  }

  private static final String LINED =
      """
      format: 1
      title: Test
      studio: Reed & Co
      language: en-GB
      edition: {name: "1", date: 2026-05-04}
      materials:
        main: {name: canvas}
      pieces:
        - {number: 1, name: A, panel: outer, printed: yes, cut: [{material: main, count: 1}]}
      panels:
        outer:
          rectangle: {width: 200 mm, height: 100 mm}
          notches:
            - {edge: right, at: 2 mm}
          drills:
            stud: {edge: top, at: 1 mm, inset: 1 mm}
        inner:
          inset: {panel: outer, distance: 5 mm, marks: true}
      """;

  private List<String> found(String more, Path home) throws IOException {
    Path folder = Files.createDirectory(home.resolve("test"));
    Files.writeString(folder.resolve("pattern.yaml"), LINED + more.indent(4));
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,S\nheight,mm,80\n");
    Findings findings = new Findings();
    Grader.grade(PatternReader.read(folder, findings), Variant.ofSize("S"), findings);
    return findings.sorted().stream()
        .map(finding -> finding.code().id() + " " + finding.arguments().get("kind"))
        .toList();
  }

  @Test
  void whatIsLeftOutIsSaid(@TempDir Path home) throws IOException {
    assertEquals(List.of("mark-left-out drill", "mark-left-out notch"), found("", home));
  }

  @Test
  void whatThePanelPutsBackIsNotLeftOut(@TempDir Path home) throws IOException {
    assertEquals(
        List.of(),
        found(
            """
            notches: [{edge: right, at: 0.02}]
            drills: {stud: {edge: top, at: 5 mm, inset: 5 mm}}
            """,
            home));
  }
}
