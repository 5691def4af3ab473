package org.lapmark.figure.flat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.workpiece.Cloth;
import org.lapmark.figure.workpiece.Crease;
import org.lapmark.figure.workpiece.FoldedCloth;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Folding keeps cloth: what is folded over is as large as it was, and lies on the rest. */
class FoldsTest {
  private static final Box BOX = Box.at(0, 0, 160, 80);

  private static Cloth cloth() {
    Path outline = Path.rectangle(BOX);
    return new Cloth(
        outline,
        outline,
        java.util.Optional.empty(),
        Texture.values()[0],
        Side.RIGHT,
        0,
        List.of());
  }

  private static double area(FoldedCloth folded) {
    return folded.layers().stream().mapToDouble(layer -> Math.abs(layer.path().signedArea())).sum();
  }

  @Property(tries = 200)
  void noClothIsLost(
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double x,
      @ForAll @DoubleRange(min = 0.1, max = 0.9) double y,
      @ForAll @DoubleRange(min = 0, max = 6.28) double angle,
      @ForAll @DoubleRange(min = 0.2, max = 1) double by) {
    Point on = new Point(160 * x, 80 * y);
    Point away = new Point(StrictMath.cos(angle), StrictMath.sin(angle));
    FoldedCloth folded = FoldedCloth.of(cloth(), List.of(new Crease(on, away, by)));
    assertEquals(2, folded.layers().size());
    double over = Math.abs(folded.layers().get(1).path().signedArea()) / by;
    assertEquals(160 * 80, Math.abs(folded.layers().get(0).path().signedArea()) + over, 1e-6);
    // Nothing lies beyond the line.
    for (Point point : folded.outline().flattened(0.01)) {
      assertTrue(point.minus(on).dot(away) < 1e-6);
    }
  }

  @Test
  void aStripIsFoldedInFour() {
    Point down = new Point(0, 1);
    FoldedCloth folded =
        FoldedCloth.of(
            cloth(),
            List.of(
                new Crease(new Point(0, 20), down.times(-1), 1),
                new Crease(new Point(0, 60), down, 1),
                new Crease(new Point(0, 40), down.times(-1), 1)));
    assertEquals(4, folded.layers().size());
    assertEquals(160 * 80, area(folded), 1e-6);
    Box box = folded.outline().bounds();
    assertEquals(40, box.minY(), 1e-9);
    assertEquals(60, box.maxY(), 1e-9);
    assertEquals(
        List.of(false, true, false, true),
        folded.layers().stream().map(FoldedCloth.Layer::isTurned).toList());
  }
}
