package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.lapmark.figure.operation.Operation;
import org.lapmark.figure.read.FigureExamples;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Severity;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyWords;
import org.lapmark.source.key.Table;

/** What hints show as an example can be written so. */
class ExamplesTest {
  /** Where the keys of each map stand, and those that it can’t do without. */
  private record Spot(String frame, String... needed) {}

  private static final FigureExamples WORDS = new FigureExamples();
  private static final Map<String, Spot> SPOTS = spots();

  private static final Map<String, Table> TABLES = Table.reachable(List.of(FigureSource.TABLE));

  private static Map<String, Spot> spots() {
    Map<String, Spot> spots = new TreeMap<>();
    spots.put("figure", new Spot("{%s}", "pieces"));
    spots.put("picture", new Spot("{frames: [{%s}]}", "pieces"));
    spots.put("view", new Spot("layers: [{%s}]", "piece"));
    String view = "pieces: [{piece: 1, ";
    spots.put("line", new Spot(view + "lines: [{%s}]}]", "sew", "distance"));
    spots.put("fold", new Spot(view + "folds: [{%s}]}]", "edge", "over"));
    spots.put("gathered", new Spot(view + "gathered: {%s}}]", "edge", "to"));
    spots.put("rolled", new Spot(view + "rolled: {%s}}]", "edge", "inset"));
    spots.put("pins", new Spot(view + "pins: [{%s}]}]", "edge", "every"));
    spots.put("gap", new Spot(view + "lines: [{sew: top, gaps: [{%s}]}]}]", "from", "to"));
    spots.put("tack", new Spot(view + "tacks: [{%s}]}]", "box", "edge"));
    spots.put("label", new Spot(view + "labels: [{%s}]}]", "text", "edge"));
    spots.put("dimension", new Spot(view + "dimensions: [{%s}]}]", "width"));
    spots.put("thing", new Spot(view + "things: [{%s}]}]", "length", "width", "edge", "cloth"));
    spots.put(
        "through",
        new Spot(
            view + "things: [{width: 25 mm, length: 90 mm, edge: top, through: {%s}}]}]",
            "hardware"));
    spots.put("clips", new Spot(view + "clips: [{%s}]}]", "edge", "every", "depth"));
    spots.put("around", new Spot(view + "around: {%s}}]", "seam"));
    spots.put("section", new Spot("section: {%s}", "layers"));
    spots.put("layer", new Spot("section: {layers: [{%s}]}", "cloth", "line"));
    String section = "section: {layers: [{cloth: main, line: [[0 mm, 0], [40 mm, 0]]}], ";
    spots.put("cord", new Spot(section + "cords: [{%s}]}", "at"));
    spots.put("stitch", new Spot(section + "stitches: [{%s}]}", "at", "levels"));
    spots.put("note", new Spot(section + "labels: [{%s}]}", "at", "text"));
    spots.put("distance", new Spot(section + "dimensions: [{%s}]}", "from", "to"));
    spots.put("article", new Spot("article: {%s}", "panel", "length", "cloth"));
    String article = "article: {panel: end, length: 200 mm, cloth: main, ";
    spots.put("opening", new Spot(article + "zip: {%s}}", "from", "to", "length"));
    spots.put("straps", new Spot(article + "straps: {%s}}", "at", "places", "width", "cloth"));
    spots.put("sign", new Spot(article + "labels: [{%s}]}", "text", "rim"));
    spots.put("rings", new Spot("rings: {%s}", "cloth", "hoops"));
    String hoops = "{round: 300 mm, level: 90 mm}";
    spots.put(
        "hoop", new Spot("rings: {cloth: main, hoops: [" + hoops + ", {%s}]}", "round", "level"));
    String rings = "rings: {cloth: main, hoops: [" + hoops + ", " + hoops + "], ";
    spots.put("hung", new Spot(rings + "cord: {%s}}", "hoop", "drop"));
    spots.put("mark", new Spot(rings + "labels: [{%s}]}", "text", "hoop", "at"));
    spots.put("boxed_corner", new Spot("boxed_corner: {%s}", "piece", "seam", "base"));
    spots.put("operation", new Spot("operation: {%s}", "hem"));
    Table operation = Operation.KIND.key().form().tables().get(0);
    for (Key<?> kind : operation.keys()) {
      for (Table table : kind.form().tables()) {
        spots.put(
            table.id(),
            new Spot(
                "operation: {" + kind.name() + ": {%s}}", table.required().toArray(String[]::new)));
      }
    }
    return spots;
  }

  private static String block(String where, String key, String value) {
    Map<String, String> entry = new LinkedHashMap<>();
    for (String needed : SPOTS.get(where).needed) {
      entry.put(needed, example(where + "/" + needed));
    }
    if (where.equals("view") && key.equals("zip")) {
      entry.put("length", example("view/length"));
    }
    if (where.equals("fold") && Set.of("from_edge", "from", "to_edge", "to").contains(key)) {
      entry.remove("edge");
      entry.put("from_edge", example("fold/from_edge"));
      entry.put("to_edge", example("fold/to_edge"));
    }
    if (where.equals("fold") && key.equals("corner")) {
      entry.put("inset", example("fold/inset"));
      entry.remove("over");
    }
    if (where.equals("thing") && key.equals("joined")) {
      entry.put("own_edge", example("thing/own_edge"));
    }
    if (where.equals("line") && key.equals("stitch")) {
      entry.remove("sew");
      entry.put("hand", example("line/hand"));
    }
    if (where.equals("view") && key.equals("cropped")) {
      entry.put("edge", example("view/edge"));
    }
    if (Set.of("mark", "held_by", "at").contains(key)) {
      entry.remove("edge");
    }
    for (Choice choice : TABLES.get(where).choices()) {
      if (choice.keys().contains(key)) {
        choice.keys().forEach(entry::remove);
        choice.ways().stream()
            .filter(way -> way.contains(key))
            .findFirst()
            .orElseThrow()
            .forEach(beside -> entry.put(beside, example(where + "/" + beside)));
      }
    }
    entry.put(key, value);
    return String.format(SPOTS.get(where).frame, String.join(", ", entry.values())) + "\n";
  }

  private static String example(String what) {
    return WORDS.of(what).orElseThrow(() -> new AssertionError("no example of " + what));
  }

  private static List<Finding> found(String block) {
    Findings findings = new Findings();
    FigureSource.parse(DemoFigures.block(block), findings);
    return findings.sorted();
  }

  private static void eachKey(BiConsumer<Table, Key<?>> look) {
    assertEquals(SPOTS.keySet(), TABLES.keySet());
    TABLES.values().forEach(table -> table.keys().forEach(key -> look.accept(table, key)));
  }

  @Test
  void everyExampleCanBeReadWhereItBelongs() {
    eachKey(
        (table, key) -> {
          String example = example(table.id() + "/" + key.name());
          String block = block(table.id(), key.name(), example);
          List<String> errors = new ArrayList<>();
          for (Finding finding : found(block)) {
            if (finding.severity() == Severity.ERROR) {
              errors.add(FindingText.message(finding));
            }
          }
          assertEquals(List.of(), errors, block);
        });
  }

  @Test
  void everyExampleIsShownByAHint() {
    eachKey(
        (table, key) -> {
          String name = key.name();
          List<Finding> findings = found(block(table.id(), name, name + ": [[{x: [y]}]]"));
          assertTrue(
              findings.stream()
                      .anyMatch(
                          one -> FindingText.hint(one).contains(example(table.id() + "/" + name)))
                  || List.of("section", "article", "rings", "boxed_corner", "operation")
                      .contains(name),
              table.id() + "/" + name + findings);
        });
  }

  @Test
  void everyKeyHasItsWordsAndEveryWordItsKey() {
    KeyWords words = new KeyWords(FigureExamples.class);
    Set<String> idle = words.all();
    idle.remove("*.printed");
    eachKey(
        (table, key) -> {
          assertTrue(words.meaning(table).orElse("").endsWith("."), table.id());
          assertTrue(words.meaning(table, key).orElse("").endsWith("."), table.id() + key.name());
          for (String owner : List.of(table.id(), "*")) {
            idle.remove(table.id());
            idle.remove(owner + "." + key.name());
            idle.remove(owner + "." + key.name() + ".example");
          }
        });
    assertEquals(Set.of(), idle);
  }
}
