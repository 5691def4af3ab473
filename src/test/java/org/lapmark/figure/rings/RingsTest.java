package org.lapmark.figure.rings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.stage.Picture;
import org.lapmark.geometry.Box;
import org.lapmark.grade.EvaluatedPattern;

class RingsTest {
  private static final EvaluatedPattern PATTERN = DemoFigures.pattern(DemoFigures.source(), "M");
  private static final double TILT = Math.toRadians(22);

  private static Picture picture(String rings) {
    return DemoFigures.picture("rings: {cloth: main, " + rings + "}\n");
  }

  private static Canvas drawn(String rings) {
    return DemoFigures.drawn(picture(rings), PATTERN);
  }

  /** A drum 100 mm across and 80 mm high: as wide as it is, and its two ends foreshortened. */
  @Test
  void aDrumHasItsProjection() {
    String ring = "{round: pi * 100 mm, level: ";
    Box box = drawn("hoops: [" + ring + "80 mm}, " + ring + "0 mm}]").bounds();
    assertEquals(100, box.width(), 0.05);
    assertEquals(100 * Math.sin(TILT) + 80 * Math.cos(TILT), box.height(), 0.05);
  }

  /** On a steep cone a row goes all round but for what faces away; a brim's lies in front. */
  @Test
  void rowsLieWhereTheClothFacesTheReader() {
    String low = "{round: pi * 300 mm, level: 0 mm";
    String hoops = "hoops: [{round: pi * 200 mm, level: 60 mm}, " + low;
    double without = length(drawn(hoops + "}]"));
    double with = length(drawn(hoops + ", rows: [10 mm]}]"));
    // Less than the whole ring, 292 mm across, and more than its front half.
    double half = 0.5 * Math.PI * 292 * Math.sin(TILT);
    assertTrue(with - without > half, with - without + " " + half);
    assertTrue(with - without < Math.PI * 292);
  }

  private static double length(Canvas canvas) {
    return canvas.lines().stream().mapToDouble(line -> line.from().distance(line.to())).sum();
  }

  @Test
  void itIsTheFinishedArticleWithAndWithoutLettering() {
    String ring = "{round: pi * 100 mm, level: ";
    Picture figure =
        picture(
            "hoops: ["
                + ring
                + "80 mm}, "
                + ring
                + "0 mm}], cord: {hoop: 2, drop: 90 mm, text: cord},"
                + " labels: [{text: top, hoop: 1, at: 0.1, down: 0.5}]");
    assertTrue(figure.isFinishedArticle());
    assertEquals(2, DemoFigures.drawn(figure, PATTERN).wishes().size());
    assertEquals(0, DemoFigures.drawn(figure.unlettered(), PATTERN).wishes().size());
  }
}
