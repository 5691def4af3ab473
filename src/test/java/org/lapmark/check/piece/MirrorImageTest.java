package org.lapmark.check.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapmark.check.piece.MirrorImage.Difference;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.NotchSet;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.cutting.PieceShape;

/** Which pieces are the same as their mirror images. */
class MirrorImageTest {
  /** An isosceles trapezium, turned: its axis lies askew. */
  private static final Path TRAPEZIUM =
      Path.polyline(
              List.of(
                  new Point(0, 0),
                  new Point(120, 0),
                  new Point(90, 70),
                  new Point(30, 70),
                  new Point(0, 0)))
          .transformed(Affine.rotation(33));

  private static PieceShape piece(Path outline, double first, Mark... marks) {
    List<Edge> edges = new ArrayList<>();
    Map<String, Double> allowances = new java.util.LinkedHashMap<>();
    int count = outline.curves().size();
    for (int i = 0; i < count; i++) {
      edges.add(
          new Edge(
              "e" + i, "c" + i, "c" + (i + 1) % count, new Path(List.of(outline.curves().get(i)))));
      allowances.put("e" + i, i == 0 ? first : 10.0);
    }
    return PieceShape.of(new Panel("panel", edges, Map.of(), List.of(marks)), allowances);
  }

  @Test
  void shapesCount() {
    assertEquals(Difference.NONE, MirrorImage.of(piece(TRAPEZIUM, 10)));
    assertEquals(Difference.NONE, MirrorImage.of(piece(TRAPEZIUM, 15)), "of the base");
    Path askew =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(120, 0),
                new Point(90, 70),
                new Point(20, 70),
                new Point(0, 0)));
    assertEquals(Difference.SHAPE, MirrorImage.of(piece(askew, 10)));
    // A parallelogram can be turned onto itself, but never turned over.
    Path parallelogram =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(130, 60),
                new Point(30, 60),
                new Point(0, 0)));
    assertEquals(Difference.SHAPE, MirrorImage.of(piece(parallelogram, 10)));
  }

  @Test
  void allowancesCount() {
    Path kite =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(50, 30),
                new Point(0, 120),
                new Point(-50, 30),
                new Point(0, 0)));
    assertEquals(Difference.NONE, MirrorImage.of(piece(kite, 10)));
    assertEquals(Difference.SHAPE, MirrorImage.of(piece(kite, 15)));
  }

  @Test
  void notchesCount() {
    assertEquals(
        Difference.NONE, MirrorImage.of(piece(TRAPEZIUM, 10, new Mark.Notch("e0", 60, 2))));
    assertEquals(
        Difference.NOTCHES, MirrorImage.of(piece(TRAPEZIUM, 10, new Mark.Notch("e0", 50, 1))));
    assertEquals(
        Difference.NONE,
        MirrorImage.of(
            piece(TRAPEZIUM, 10, new Mark.Notch("e0", 50, 1), new Mark.Notch("e0", 70, 1))));
    NotchSet unequal = new NotchSet(3, List.of(6.0, 12.0), NotchSet.Cut.SLIT);
    assertEquals(
        Difference.NOTCHES,
        MirrorImage.of(piece(TRAPEZIUM, 10, new Mark.Notch("e0", 60, unequal))));
  }

  @Test
  void marksCount() {
    Point middle = TRAPEZIUM.curves().get(0).at(0.5);
    Point inwards = TRAPEZIUM.tangentAtLength(60).quarterTurn();
    Point onAxis = middle.plus(inwards.times(30));
    assertEquals(
        Difference.NONE,
        MirrorImage.of(piece(TRAPEZIUM, 10, new PointMark.DrillPoint("stud", onAxis))));
    Mark aside =
        new PointMark.DrillPoint("stud", onAxis.plus(TRAPEZIUM.tangentAtLength(60).times(12)));
    assertEquals(Difference.MARKS, MirrorImage.of(piece(TRAPEZIUM, 10, aside)));
    Mark across =
        new LineMark.FoldLine(
            "fold",
            new Path(
                List.of(
                    new Line(
                        onAxis.minus(TRAPEZIUM.tangentAtLength(60).times(20)),
                        onAxis.plus(TRAPEZIUM.tangentAtLength(60).times(20))))));
    assertEquals(Difference.NONE, MirrorImage.of(piece(TRAPEZIUM, 10, across)));
  }

  @Test
  void aCircleIsWhatItsNotchesMakeOfIt() {
    Path circle =
        new Path(
            List.of(
                Arc.ofCircle(new Point(0, 0), 80, 0, Math.PI),
                Arc.ofCircle(new Point(0, 0), 80, Math.PI, Math.PI)));
    assertEquals(Difference.NONE, MirrorImage.of(piece(circle, 10)));
    assertEquals(
        Difference.NONE,
        MirrorImage.of(
            piece(circle, 10, new Mark.Notch("e0", 17.3, 1), new Mark.Notch("e1", 90.1, 1))));
    assertEquals(
        Difference.NOTCHES,
        MirrorImage.of(
            piece(
                circle,
                10,
                new Mark.Notch("e0", 17.3, 1),
                new Mark.Notch("e0", 60, 1),
                new Mark.Notch("e1", 90.1, 1))));
  }
}
