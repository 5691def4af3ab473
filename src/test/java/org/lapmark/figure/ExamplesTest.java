package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.figure.read.KeyWords;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Severity;

/** What hints show as an example can be written so. */
class ExamplesTest {
  /** Where the keys of each map stand, and those that it can’t do without. */
  private record Spot(String frame, String... needed) {}

  private static final KeyWords WORDS = new KeyWords();
  private static final Map<String, Spot> SPOTS = spots();

  /** Keys of which one excludes the others. */
  private static final List<Set<String>> ONE_OF =
      List.of(
          Set.of(
              "figure/frames",
              "figure/pieces",
              "figure/layers",
              "figure/section",
              "figure/article",
              "figure/rings"),
          Set.of("view/piece", "view/zip"),
          Set.of("line/sew", "line/baste", "line/topstitch", "line/edge"),
          Set.of("label/text", "label/number"),
          Set.of("dimension/width", "dimension/height", "dimension/along", "dimension/allowance"),
          Set.of("thing/piece", "thing/band", "thing/length"),
          Set.of("layer/cloth", "layer/zip"));

  private static Map<String, Spot> spots() {
    Map<String, Spot> spots = new TreeMap<>();
    spots.put("figure", new Spot("{%s}", "pieces"));
    spots.put("view", new Spot("layers: [{%s}]", "piece"));
    String view = "pieces: [{piece: 1, ";
    spots.put("line", new Spot(view + "lines: [{%s}]}]", "sew", "distance"));
    spots.put("label", new Spot(view + "labels: [{%s}]}]", "text", "edge"));
    spots.put("dimension", new Spot(view + "dimensions: [{%s}]}]", "width"));
    spots.put("thing", new Spot(view + "things: [{%s}]}]", "length", "width", "edge", "cloth"));
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
    if (where.equals("view") && key.equals("cropped")) {
      entry.put("edge", example("view/edge"));
    }
    ONE_OF.stream()
        .filter(keys -> keys.contains(where + "/" + key))
        .forEach(keys -> entry.keySet().removeIf(one -> keys.contains(where + "/" + one)));
    entry.put(key, value);
    return String.format(SPOTS.get(where).frame, String.join(", ", entry.values())) + "\n";
  }

  private static String example(String what) {
    return WORDS.example(what).orElseThrow(() -> new AssertionError("no example of " + what));
  }

  private static List<Finding> found(String block) {
    Findings findings = new Findings();
    FigureSource.parse(DemoFigures.block(block), findings);
    return findings.sorted();
  }

  @Test
  void everyExampleCanBeReadWhereItBelongs() {
    for (String what : WORDS.keys()) {
      String[] parts = what.split("/");
      String block = block(parts[0], parts[1], example(what));
      assertTrue(example(what).startsWith(parts[1] + ": "), what);
      List<String> errors = new ArrayList<>();
      for (Finding finding : found(block)) {
        if (finding.severity() == Severity.ERROR) {
          errors.add(FindingText.message(finding));
        }
      }
      assertEquals(List.of(), errors, block);
    }
  }

  @Test
  void everyKeyHasAnExampleWhichTheHintShows() {
    SPOTS.forEach(
        (where, spot) -> {
          Finding unknown = found(block(where, "qqqqqqqq", "qqqqqqqq: 1")).get(0);
          Set<String> known =
              new TreeSet<>(Arrays.asList(unknown.arguments().get("known").toString().split(", ")));
          assertFalse(known.isEmpty());
          for (String key : known) {
            assertTrue(WORDS.meaning(where + "/" + key).orElse("").endsWith("."), where + key);
            String example = example(where + "/" + key);
            List<Finding> findings = found(block(where, key, key + ": [[{x: [y]}]]"));
            assertTrue(
                findings.stream().anyMatch(one -> FindingText.hint(one).contains(example))
                    || key.equals("section")
                    || key.equals("article")
                    || key.equals("rings"),
                where + "/" + key + findings);
          }
        });
  }
}
