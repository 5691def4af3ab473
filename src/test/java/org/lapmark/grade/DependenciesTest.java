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
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.demand.Fact;
import org.lapmark.grade.demand.Node;
import org.lapmark.grade.panel.PanelMarks;
import org.lapmark.grade.panel.PanelShapes;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.scope.NamedValues;
import org.lapmark.measure.Variant;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.key.Ref;
import org.lapmark.source.read.PatternReader;

/** What a value is computed from is recorded: nothing else that is stated changes it. */
class DependenciesTest {
  @TempDir Path parent;
  private int folders;

  /** A small pattern at random: what is written, by what of it is edited at once. */
  private static final class Written {
    private final Map<Fact, String> stated = new LinkedHashMap<>();
    private final Random random;

    Written(long seed) {
      random = new Random(seed);
      for (int i = 1; i <= 3; i++) {
        cells(i);
      }
      stated.put(new Fact.Choice("lined"), yesOrNo());
      stated.put(property("main", "usable_width"), length(3));
      stated.put(property("zip", "visible_width"), length(3));
      for (int i = 1; i <= 5; i++) {
        // Now and then a measure asks for a later one, so that there are cycles.
        stated.put(measure("m" + i), length(random.nextInt(8) == 0 ? 5 : i - 1));
      }
      stated.put(measure("sought"), equation());
      for (int i = 1; i <= 3; i++) {
        panel("p" + i);
      }
      stated.put(panelFact("inner"), inset());
      stated.put(seam(), seamSides());
    }

    private void cells(int row) {
      for (String size : List.of("S", "M")) {
        stated.put(new Fact.Cell("r" + row, size), Integer.toString(60 + random.nextInt(80)));
      }
    }

    private void panel(String name) {
      stated.put(panelFact(name), rectangle());
      stated.put(notch(name, 1), "at: 0." + (1 + random.nextInt(9)));
      stated.put(notch(name, 2), "at: '" + length(5) + " / 4'");
      stated.put(new Fact.Condition(ref(name, 2)), condition());
    }

    private String yesOrNo() {
      return random.nextBoolean() ? "yes" : "no";
    }

    private String condition() {
      return List.of("lined", "not lined", "size = M", "r1 > 90 mm", "m1 < m2")
          .get(random.nextInt(5));
    }

    /** A formula for a length from measures up to one, base measures, things and panels. */
    private String length(int measures) {
      return switch (random.nextInt(9)) {
        case 0 -> (20 + random.nextInt(60)) + " mm";
        case 1, 2 -> "r" + (1 + random.nextInt(3));
        case 3 -> "if(" + condition(measures) + ", r1, " + (30 + random.nextInt(9)) + " mm)";
        case 4 -> "zip.visible_width";
        case 5 -> "length(p" + (1 + random.nextInt(3)) + ".top)";
        case 6 -> "sought + 10 mm";
        default ->
            measures < 1
                ? "r3 / 2"
                : "m" + (1 + random.nextInt(measures)) + " * 0." + (5 + random.nextInt(5));
      };
    }

    private String condition(int measures) {
      return measures < 1 ? "lined" : "m" + (1 + random.nextInt(measures)) + " > 50 mm";
    }

    private String equation() {
      return random.nextBoolean()
          ? "{solve: sought * 2 = r2 + r" + (1 + random.nextInt(3)) + ", from: 1 mm, to: 1 m}"
          : "{solve: sought + length(p1.left) = 2 * r1 + 300 mm, from: 1 mm, to: 1 m}";
    }

    private String rectangle() {
      return "{width: '" + length(5) + "', height: '" + length(5) + "'}";
    }

    private String inset() {
      return "{panel: p1, distance: " + (1 + random.nextInt(5)) + " mm}";
    }

    private String seamSides() {
      return random.nextBoolean()
          ? "{sides: [[p1.top], [p2.top]], tolerance: 2 m}"
          : "{sides: [[p1.right], [p2.top]], ease: " + random.nextInt(9) + " mm, tolerance: 2 m}";
    }

    /** The same with one thing stated otherwise. */
    Map<Fact, String> edited(Fact fact) {
      Map<Fact, String> edited = new LinkedHashMap<>(stated);
      String before = stated.get(fact);
      for (int i = 0; i < 20 && edited.get(fact).equals(before); i++) {
        edited.put(fact, again(fact));
      }
      return edited;
    }

    private String again(Fact fact) {
      if (fact instanceof Fact.Cell) {
        return Integer.toString(60 + random.nextInt(80));
      } else if (fact instanceof Fact.Choice) {
        return yesOrNo();
      } else if (fact instanceof Fact.Property) {
        return length(3);
      } else if (fact instanceof Fact.Condition) {
        return condition();
      }
      Ref what = ((Fact.Stated) fact).what();
      return switch (what.kind()) {
        case SEAM -> seamSides();
        case NOTCH -> "at: 0." + (1 + random.nextInt(9));
        case PANEL -> what.name().equals("inner") ? inset() : rectangle();
        default -> what.name().equals("sought") ? equation() : length(5);
      };
    }
  }

  private static Fact measure(String name) {
    return new Fact.Stated(Ref.of(Ref.Kind.MEASURE, name));
  }

  private static Fact property(String thing, String name) {
    return new Fact.Property(Ref.of(Ref.Kind.THING, thing), name);
  }

  private static Fact panelFact(String name) {
    return new Fact.Stated(Ref.of(Ref.Kind.PANEL, name));
  }

  private static Ref ref(String panel, int notch) {
    return Ref.of(Ref.Kind.PANEL, panel).inside(Ref.Kind.NOTCH, notch);
  }

  private static Fact notch(String panel, int nth) {
    return new Fact.Stated(ref(panel, nth));
  }

  private static Fact seam() {
    return new Fact.Stated(Ref.of(Ref.Kind.SEAM, "side"));
  }

  private static String yaml(Map<Fact, String> is) {
    StringBuilder text =
        new StringBuilder(
            """
            format: 1
            title: T
            studio: S
            language: en-GB
            edition: {name: "1", date: 2026-05-04}
            options: {lined: {label: Lined, default: no}}
            """);
    text.append("materials: {main: {name: canvas, usable_width: '")
        .append(is.get(property("main", "usable_width")))
        .append("'}}\nhardware: {zip: {name: zip, visible_width: '")
        .append(is.get(property("zip", "visible_width")))
        .append("'}}\nmeasures:\n");
    for (String name : List.of("m1", "m2", "m3", "m4", "m5", "sought")) {
      text.append("  ").append(name).append(": ").append(is.get(measure(name))).append('\n');
    }
    text.append("panels:\n");
    for (String name : List.of("p1", "p2", "p3")) {
      text.append("  %s:\n    rectangle: %s\n".formatted(name, is.get(panelFact(name))));
      text.append("    notches:\n      - {edge: top, %s}\n".formatted(is.get(notch(name, 1))));
      text.append(
          "      - {edge: left, %s, when: '%s'}\n"
              .formatted(is.get(notch(name, 2)), is.get(new Fact.Condition(ref(name, 2)))));
      if (name.equals("p2")) {
        text.append("      - {edge: top, from_seam: side}\n");
      }
    }
    text.append("  inner: {inset: ").append(is.get(panelFact("inner")));
    text.append(
        "}\npieces: [{number: 1, name: P, panel: p1, cut: [{material: main, count: 1}]}]\n");
    return text.append("seams: {side: ").append(is.get(seam())).append("}\n").toString();
  }

  private PatternEvaluator evaluator(Map<Fact, String> is) throws IOException {
    Path folder = Files.createDirectories(parent.resolve("f" + folders++));
    Files.writeString(folder.resolve("pattern.yaml"), yaml(is));
    StringBuilder sizes = new StringBuilder("measure,unit,S,M\n");
    for (String row : List.of("r1", "r2", "r3")) {
      sizes.append(row).append(",mm,").append(is.get(new Fact.Cell(row, "S"))).append(',');
      sizes.append(is.get(new Fact.Cell(row, "M"))).append('\n');
    }
    Files.writeString(folder.resolve("sizes.csv"), sizes);
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    assertFalse(findings.hasErrors(), () -> findings.sorted() + yaml(is));
    Variant variant =
        new Variant("M", new TreeMap<>(Map.of("lined", is.get(new Fact.Choice("lined")))));
    read = source;
    return new PatternEvaluator(source, variant, new Findings());
  }

  private PatternSource read;

  /** Everything that a pattern has in the graph, asked for in the order stated. */
  private Map<Node<?>, Object> values(PatternEvaluator evaluator) {
    Map<Node<?>, Object> values = new LinkedHashMap<>();
    for (MeasureSource measure : read.measures()) {
      values.put(
          new NamedValues.Measure(measure.ref()),
          value(() -> evaluator.scope().value(measure.name())));
    }
    List<ThingSource> things = new ArrayList<>(read.materials());
    things.addAll(read.hardware());
    for (ThingSource thing : things) {
      for (String property : List.of("usable_width", "visible_width")) {
        if (thing.properties().containsKey(property)) {
          values.put(
              new NamedValues.Property(thing.ref(), property),
              value(() -> evaluator.property(thing, property)));
        }
      }
    }
    for (PanelSource panel : read.panels()) {
      SourceText name = panel.name();
      values.put(new PanelShapes.Shape(panel.ref()), value(() -> evaluator.shapes().shape(name)));
      values.put(
          new PanelMarks.Marked(panel.ref(), true), value(() -> evaluator.marks().panel(name)));
    }
    return values;
  }

  private interface Asking {
    Object value();
  }

  private static Object value(Asking asking) {
    try {
      return asking.value();
    } catch (FindingException | DemandGraph.Unavailable e) {
      return "none";
    }
  }

  @Test
  void whatIsNotRecordedChangesNothing() throws IOException {
    int same = 0;
    int changed = 0;
    int failed = 0;
    for (long seed = 1; seed <= 20; seed++) {
      Written written = new Written(seed);
      PatternEvaluator before = evaluator(written.stated);
      Map<Node<?>, Object> values = values(before);
      for (Fact fact : List.copyOf(written.stated.keySet())) {
        Map<Fact, String> edit = written.edited(fact);
        Map<Node<?>, Object> after = values(evaluator(edit));
        for (Map.Entry<Node<?>, Object> one : values.entrySet()) {
          Node<?> node = one.getKey();
          boolean equal = one.getValue().equals(after.get(node));
          if (one.getValue().equals("none")) {
            failed++;
          }
          if (before.dependencies(node).contains(fact)) {
            changed += equal ? 0 : 1;
          } else {
            same++;
            assertTrue(
                equal,
                () ->
                    node.named()
                        + " doesn't say that it depends on "
                        + fact
                        + " in\n"
                        + yaml(written.stated)
                        + "edited to "
                        + edit.get(fact));
          }
        }
      }
    }
    // Nothing would be tried if everything depended on everything, or nothing on anything.
    assertTrue(same > 2000 && changed > 500 && failed > 100, same + " " + changed + " " + failed);
  }

  @Test
  void namesWhatIsStatedDownToCellsOfTheSizeTable() throws IOException {
    Written written = new Written(1);
    written.stated.put(measure("m1"), "if(lined, r1, r2) + zip.visible_width");
    written.stated.put(measure("m2"), "2 * m1");
    written.stated.put(property("zip", "visible_width"), "r3 / 10");
    written.stated.put(panelFact("p1"), "{width: m2, height: 'if(size = M, 100 mm, r2)'}");
    written.stated.put(new Fact.Choice("lined"), "yes");
    PatternEvaluator evaluator = evaluator(written.stated);
    values(evaluator);
    Set<String> expected =
        Set.of(
                panelFact("p1"),
                measure("m2"),
                measure("m1"),
                new Fact.Choice("lined"),
                new Fact.Cell("r1", "M"),
                property("zip", "visible_width"),
                new Fact.Cell("r3", "M"),
                new Fact.Size())
            .stream()
            .map(Object::toString)
            .collect(Collectors.toSet());
    Set<String> shape =
        evaluator.dependencies(new PanelShapes.Shape(Ref.of(Ref.Kind.PANEL, "p1"))).stream()
            .filter(fact -> !(fact instanceof Fact.Stated it && it.what().kind() == Ref.Kind.EDGE))
            .filter(fact -> !fact.toString().contains("NOTCH"))
            .map(Object::toString)
            .collect(Collectors.toSet());
    assertTrue(shape.containsAll(expected), shape.toString());
    assertFalse(shape.contains(new Fact.Cell("r1", "S").toString()));
    assertEquals(
        2,
        evaluator.dependencies(new NamedValues.Measure(Ref.of(Ref.Kind.MEASURE, "m2"))).stream()
            .filter(Fact.Stated.class::isInstance)
            .count());
  }
}
