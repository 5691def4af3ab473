package org.lapmark.figure.article;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;

class ArticleTest {
  private static final EvaluatedPattern PATTERN = DemoFigures.pattern(DemoFigures.source(), "M");

  private static Canvas drawn(String panel) {
    return DemoFigures.drawn(
        DemoFigures.picture("article: {panel: " + panel + ", length: 100 mm, cloth: main}\n"),
        PATTERN);
  }

  /**
   * Of a box of 100, 60 and 240 mm three faces are seen: nine edges, with their true projections.
   */
  @Test
  void ofABoxTheNineEdgesTowardsTheReaderAreDrawn() {
    Canvas canvas = drawn("rear_strip");
    double turn = Math.toRadians(33);
    double tilt = Math.toRadians(24);
    Point across = new Point(Math.cos(turn), Math.sin(turn) * Math.sin(tilt)).times(100);
    Point forward = new Point(-Math.sin(turn), Math.cos(turn) * Math.sin(tilt)).times(240);
    Point down = new Point(0, Math.cos(tilt)).times(60);
    // Four round the near end, two along the far one, and three along the length.
    double whole =
        2 * (forward.norm() + down.norm()) + forward.norm() + down.norm() + 3 * across.norm();
    double length =
        canvas.lines().stream().mapToDouble(line -> line.from().distance(line.to())).sum();
    assertEquals(whole, length, 0.01);
    Box box = canvas.bounds();
    assertEquals(Math.abs(across.x()) + Math.abs(forward.x()), box.width(), 1e-6);
    assertEquals(across.y() + forward.y() + down.y(), box.height(), 1e-6);
  }

  /** Where the surface turns away, the outline runs on in the direction of the length. */
  @Test
  void theOutlineOfACurvedArticleTouchesBothEnds() {
    Canvas canvas = drawn("end");
    Box near =
        PATTERN
            .panels()
            .get("end")
            .outline()
            .transformed(
                new Affine(
                    -Math.sin(Math.toRadians(33)),
                    Math.cos(Math.toRadians(33)) * Math.sin(Math.toRadians(24)),
                    0,
                    Math.cos(Math.toRadians(24)),
                    0,
                    0))
            .bounds();
    Box all = canvas.bounds();
    assertEquals(near.width() + 100 * Math.cos(Math.toRadians(33)), all.width(), 1e-3);
    assertTrue(all.height() > near.height());
  }
}
