package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** Where figures draw what is attached. */
class AttachedFiguresTest {
  private static final double TAB = 25;
  private static final double RING = 26;

  @TempDir Path folder;

  private Drawing drawn(String hardware) throws IOException {
    Files.createDirectories(folder.resolve("steps"));
    Files.writeString(folder.resolve("sizes.csv"), "measure,unit,M\nlong,mm,200\n");
    Files.writeString(
        folder.resolve("steps/010-sew.md"),
        """
        ---
        id: sew
        title: Sew
        stage: Sewing
        ---
        Sew the tab to the front.

        ```figure
        caption: "The tab and its ring"
        pieces:
        - piece: 1
          name: no
          things: [{attachment: held}, {attachment: hung}]
        ```
        """);
    Files.writeString(
        folder.resolve("pattern.yaml"),
        """
        format: 1
        title: Case
        studio: Reed & Rye
        language: en-GB
        edition: {name: "1", date: 2026-03-01}
        materials:
          felt: {name: felt, usable_width: 90 cm, no_grain: yes}
        hardware:
          ring: {name: ring, kind: ring, inner_width: 30 mm, %s}
        panels:
          front: {rectangle: {width: long, height: 90 mm}}
          tab: {rectangle: {width: 25 mm, height: 40 mm}}
        pieces:
          - {number: 1, name: Front, panel: front, allowance: 10 mm, printed: yes, cut: [{material: felt, count: 1}]}
          - {number: 2, name: Tab, panel: tab, printed: yes, cut: [{material: felt, count: 1}]}
        attachments:
          held: {piece: 2, end: top, panel: front, edge: top, at: 1/2, length: 20 mm}
          hung: {thing: ring, held_by: held}
        """
            .formatted(hardware));
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    assertEquals(List.of(), findings.sorted());
    EvaluatedPattern pattern = DemoFigures.pattern(source, "M");
    FigureSource figure =
        FigureSource.parse(DemoFigures.blocks(source).get("sew-1"), findings).orElseThrow();
    Drawing drawing =
        DemoFigures.drawer()
            .draw(figure, pattern, source.masthead().form(), findings)
            .map(Figure::drawing)
            .orElse(null);
    said = findings.sorted().stream().map(one -> String.valueOf(one.arguments())).toList();
    return drawing;
  }

  private List<String> said;

  /** The boxes of all outlines, in millimetres of the drawing. */
  private static List<Box> outlines(List<Item> items) {
    List<Box> boxes = new ArrayList<>();
    for (Item item : items) {
      if (item instanceof Item.Group group) {
        boxes.addAll(outlines(group.items()));
      } else if (item instanceof Item.Shape shape && shape.role().equals("figure-outline")) {
        shape.paths().forEach(path -> boxes.add(path.bounds()));
      }
    }
    return boxes;
  }

  @Test
  void aRingHangsFromTheEndOfItsTab() throws IOException {
    List<Box> boxes = outlines(drawn("width: 26 mm, length: 15 mm").items());
    Box front = boxes.get(0);
    double scale = front.width() / 220;
    Box tab = only(boxes, TAB * scale);
    Box ring = only(boxes, RING * scale);
    assertEquals(front.minY(), tab.minY(), 1e-6, "the tab begins at the raw edge");
    assertEquals(20 * scale, tab.height(), 1e-6);
    assertEquals(tab.maxY(), ring.minY(), 1e-6, "the ring begins where the tab ends");
    assertEquals(tab.centre().x(), ring.centre().x(), 1e-6);
  }

  private static Box only(List<Box> boxes, double width) {
    List<Box> fitting =
        boxes.stream().filter(box -> Math.abs(box.width() - width) < 1e-6).distinct().toList();
    assertEquals(1, fitting.size(), boxes.toString());
    return fitting.get(0);
  }

  @Test
  void whatIsMissingOfAThingIsToldAtOnce() throws IOException {
    drawn("quantity: 1");
    assertEquals(2, said.size(), said.toString());
    assertTrue(said.stream().anyMatch(one -> one.contains("width")), said.toString());
    assertTrue(said.stream().anyMatch(one -> one.contains("length")), said.toString());
  }
}
