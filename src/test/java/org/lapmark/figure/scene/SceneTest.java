package org.lapmark.figure.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.lapmark.figure.DemoFigures.picture;
import static org.lapmark.figure.DemoFigures.scene;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;

/**
 * What a picture shows is a value: numbers and words, drawn at any scale and never changed by it.
 */
class SceneTest {
  private static final PatternSource SOURCE = DemoFigures.source();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "pieces: [{piece: 3, show: [stitching, notches, grain, marks], turned: [bottom],"
            + " side: wrong, lines: [{sew: top, text: sew}], things: [{piece: 4, edge: top}],"
            + " clips: [{edge: top, every: 10 mm, depth: 5 mm}],"
            + " labels: [{number: 1, edge: left}, {text: end, edge: right}],"
            + " dimensions: [{width: cut}, {along: top}, {allowance: left, beside: above}]}]",
        "pieces: [{piece: 1, around: {seam: end_seam},"
            + " things: [{band: all, width: 5 mm, cloth: lining}]}]",
        "layers: [{piece: 3, edge: bottom}, {zip: zip, length: zip_length, side: wrong},"
            + " {piece: 3, cloth: lining, edge: bottom, side: wrong}]",
        "section: {layers: [{cloth: main, line: [[0 mm, 0], [bag_width, 0]]}],"
            + " stitches: [{at: 30 mm, levels: [0, 0], text: sew}],"
            + " labels: [{at: [9 mm, 0], text: raw}], dimensions: [{from: 0 mm, to: bag_width}]}",
        "article: {panel: end, length: bag_width, cloth: main, piping: yes, seams: [60 mm],"
            + " baste: 6 mm, dimensions: [length, height, depth], labels: [{text: x, rim: 1/2}]}",
        "rings: {cloth: main, hoops: [{round: bag_width, level: 90 mm},"
            + " {round: 560 mm, level: 0 mm, rows: [5 mm]}], cord: {hoop: 2, drop: 90 mm},"
            + " labels: [{text: brim, hoop: 2, at: 0.1}]}"
      })
  void theSameIsEqualAndDrawnAtAnyScale(String block) {
    EvaluatedPattern medium = DemoFigures.pattern(SOURCE, "M");
    Scene scene = scene(picture(block), medium);
    assertEquals(scene, scene(picture("# put down again\n" + block), medium));
    assertEquals(scene, scene(picture(block), DemoFigures.pattern(SOURCE, "M")));
    assertNotEquals(scene, scene(picture(block), DemoFigures.pattern(SOURCE, "S")));
    Canvas large = DemoFigures.canvas();
    Canvas small = DemoFigures.canvas();
    Canvas again = DemoFigures.canvas();
    scene.draw(large, 1);
    scene.draw(small, 0.4);
    scene.draw(again, 1);
    assertEquals(large.items(), again.items());
    assertTrue(small.bounds().width() < large.bounds().width());
    assertEquals(scene, scene(picture(block), medium));
    List<String> words = scene.inWords(DemoFigures.staging(medium).words());
    assertFalse(words.isEmpty());
    words.forEach(sentence -> assertTrue(sentence.endsWith("."), sentence));
  }
}
