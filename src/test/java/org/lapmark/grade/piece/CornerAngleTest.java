package org.lapmark.grade.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.panel.cutting.CuttingLine;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.source.read.PatternReader;

/** Every way to cut a corner, as a designer states it in a folder. */
class CornerAngleTest {
  private static EvaluatedPattern pattern;

  @BeforeAll
  static void read() throws IOException {
    Findings findings = new Findings();
    Path folder = Path.of("src", "test", "resources", "org", "lapmark", "grade", "corners");
    pattern = Grader.grade(PatternReader.read(folder, findings), Variant.ofSize("M"), findings);
    assertEquals(List.of(), findings.sorted());
  }

  private static PieceShape shape(int number) {
    return pattern.pieces().stream()
        .filter(piece -> piece.number() == number)
        .findFirst()
        .orElseThrow()
        .shape();
  }

  private static org.lapmark.geometry.Path span(PieceShape shape, String edge) {
    return shape.cuttingLine().spans().stream()
        .filter(span -> span.edge().equals(edge))
        .map(CuttingLine.Span::path)
        .findFirst()
        .orElseThrow();
  }

  private static Point p(double x, double y) {
    return new Point(x, y);
  }

  /** Folds what lies outside the hem back over it; the hem's line goes on straight. */
  private static Point folded(PieceShape shape, Point point) {
    org.lapmark.geometry.Path hem = shape.panel().line("hem");
    for (Point end : List.of(hem.start(), hem.end())) {
      boolean first = end == hem.start();
      Point along = hem.tangentAtLength(first ? 0 : hem.length() - 1e-9).times(first ? -1 : 1);
      double beyond = point.minus(end).dot(along);
      if (beyond > 0) {
        Point foot = end.plus(along.times(beyond));
        return foot.plus(foot.minus(point));
      }
    }
    Point foot = hem.atLength(hem.nearestLength(point));
    return foot.plus(foot.minus(point));
  }

  @Test
  void hemsOfFlaredAndTaperedPiecesFoldOntoTheirSides() {
    for (int number : new int[] {1, 2}) {
      PieceShape shape = shape(number);
      org.lapmark.geometry.Path line = shape.cuttingLine().path();
      List<Curve> hem = span(shape, "hem").curves();
      int onTheSide = 0;
      for (Curve curve : hem) {
        for (int i = 0; i <= 10; i++) {
          Point at = curve.at(i / 10.0);
          double depth = shape.panel().line("hem").distance(at);
          Point back = folded(shape, at);
          // The corner c of piece 2 is folded twice, and has a test of its own.
          if (number == 2 && at.x() > 110) {
            continue;
          }
          assertTrue(line.encloses(back) || line.distance(back) < 0.02, () -> at + " to " + back);
          onTheSide += depth < 29.9 && span(shape, "left").distance(back) < 0.02 ? 1 : 0;
          onTheSide += depth < 29.9 && span(shape, "right").distance(back) < 0.02 ? 1 : 0;
        }
      }
      assertTrue(onTheSide >= (number == 1 ? 15 : 8), "only " + onTheSide);
    }
    // The flared one is narrower at its raw edge than at its fold, the tapered one wider.
    assertTrue(span(shape(1), "hem").bounds().minX() < 30);
    assertTrue(span(shape(2), "hem").start().x() > 175);
  }

  @Test
  void hemFoldedTwiceFollowsTheSideTwice() {
    PieceShape shape = shape(2);
    org.lapmark.geometry.Path right = span(shape, "right");
    int checked = 0;
    for (Curve curve : span(shape, "hem").curves()) {
      for (int i = 0; i <= 10; i++) {
        Point at = curve.at(i / 10.0);
        double depth = at.y() - 160;
        if (at.x() > 150 && depth < 29.9) {
          // Into the second fold at 15 mm first, then over the hem's own line.
          Point once = depth > 15 ? p(at.x(), 320 + 30 - at.y()) : at;
          assertEquals(0, right.distance(folded(shape, once)), 0.02, at.toString());
          checked++;
        }
      }
    }
    assertTrue(checked > 20, "only " + checked);
  }

  @Test
  void squareCornersEndWhereTheSeamLineMeetsTheOtherCut() {
    PieceShape shape = shape(3);
    Point[] corners = {p(60, 10), p(140, 140), p(10, 150)};
    org.lapmark.geometry.Path line = shape.cuttingLine().path();
    // At a the allowance of the left side ends square to it.
    Point along = corners[0].minus(corners[2]).unit();
    Point out = p(along.y(), -along.x());
    Point normal = p(corners[1].minus(corners[0]).y(), -corners[1].minus(corners[0]).x()).unit();
    double ahead = 10 / along.dot(normal);
    Point foot = corners[0].plus(along.times(ahead));
    assertEquals(0, line.distance(foot), 1e-6);
    assertEquals(0, line.distance(foot.plus(out.times(10))), 1e-6);
    assertEquals(0, line.distance(foot.plus(out.times(5))), 1e-6);
    assertFalse(line.encloses(foot.plus(along.times(0.1)).plus(out.times(5))));
    assertTrue(line.encloses(foot.minus(along.times(0.1)).plus(out.times(5))));
  }

  @Test
  void bluntCornersReachAsFarAsTheAllowance() {
    PieceShape shape = shape(4);
    org.lapmark.geometry.Path line = shape.cuttingLine().path();
    Point a = p(60, 10);
    Point b = p(10, 150);
    Point c = p(140, 140);
    for (List<Point> corner : List.of(List.of(a, b, c), List.of(b, c, a))) {
      Point at = corner.get(0);
      Point inwards = corner.get(1).minus(at).unit().plus(corner.get(2).minus(at).unit()).unit();
      // The cut is square to the line from corner to tip.
      for (double aside : new double[] {-3, 0, 3}) {
        Point cut = at.minus(inwards.times(10)).plus(inwards.quarterTurn().times(aside));
        assertEquals(0, line.distance(cut), 1e-6);
      }
    }
    // Corner c keeps its tip, which lies at less than twice the allowance.
    Point left = a.minus(c).unit();
    Point right = b.minus(c).unit();
    double half = StrictMath.acos(left.dot(right)) / 2;
    Point away = left.plus(right).unit().times(-10 / StrictMath.sin(half));
    assertTrue(away.norm() < 20);
    assertEquals(0, line.distance(c.plus(away)), 1e-6);
  }

  @Test
  void foldsGoOnStraightAndRawEdgesDoNot() {
    PieceShape folded = shape(5);
    assertTrue(folded.isFold("fold"));
    assertEquals(10, folded.bounds().minX(), 1e-9);
    PieceShape raw = shape(6);
    assertFalse(raw.isFold("fold"));
    assertEquals(0, raw.bounds().minX(), 1e-6);
    // The neighbour's allowance ends beside the raw edge, square to where they meet.
    assertTrue(raw.cuttingLine().path().distance(p(0, 30)) < 1e-6);
    assertTrue(raw.cuttingLine().path().distance(p(5, 30)) < 1e-6);
  }

  @Test
  void allowanceThatChangesIsAsStatedAtBothEnds() {
    PieceShape shape = shape(5);
    assertEquals(20, shape.allowances().get("side"));
    org.lapmark.geometry.Path side = shape.panel().line("side");
    org.lapmark.geometry.Path cut = span(shape, "side");
    for (int i = 1; i < 10; i++) {
      double at = side.length() * i / 10;
      Point out = side.tangentAtLength(at).quarterTurn().times(-1);
      assertEquals(0, cut.distance(side.atLength(at).plus(out.times(10 + i))), 1e-6);
    }
    // The tip lies where the changing line, drawn on, meets the top's.
    assertEquals(0, span(shape, "top").end().y(), 1e-6);
  }
}
