package org.lapmark.print.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** What sizes' lines have in common is drawn once, and everything is drawn. */
class CommonLinesTest {
  private static final double STEP = 0.83;

  @Test
  void sharedSidesAreGivenOnce() {
    Path small = Path.rectangle(new Box(0, 0, 100, 60));
    Path large = Path.rectangle(new Box(0, 0, 120, 80));
    List<CommonLines.Shared> stretches =
        CommonLines.of(List.of(new CommonLines.Owned(0, small), new CommonLines.Owned(1, large)));
    assertEquals(160, length(stretches, List.of(0, 1)), 1e-6);
    assertEquals(160, length(stretches, List.of(0)), 1e-6);
    assertEquals(240, length(stretches, List.of(1)), 1e-6);
    // The two shared sides meet in the corner where both lines begin.
    assertEquals(3, stretches.size());
  }

  @Test
  void whatIsTheSameInAllSizesIsOneClosedLine() {
    Path line = rounded(80, 50, 12);
    List<CommonLines.Owned> lines = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      lines.add(new CommonLines.Owned(i, line));
    }
    List<CommonLines.Shared> stretches = CommonLines.of(lines);
    assertEquals(1, stretches.size());
    assertTrue(stretches.get(0).path().isClosed());
    assertEquals(List.of(0, 1, 2, 3), stretches.get(0).owners());
  }

  @Test
  void linesAHairApartStayApart() {
    Path line = Path.rectangle(new Box(0, 0, 50, 50));
    Path near = Path.rectangle(new Box(0.004, 0.004, 50.004, 50.004));
    List<CommonLines.Shared> stretches =
        CommonLines.of(List.of(new CommonLines.Owned(0, line), new CommonLines.Owned(1, near)));
    assertEquals(0, length(stretches, List.of(0, 1)), 1e-9);
    assertEquals(400, stretches.stream().mapToDouble(one -> one.path().length()).sum(), 1e-6);
  }

  @Property(tries = 120, seed = "20261125")
  void everyLineIsDrawnOnceAndWhereItIs(@ForAll("outlines") List<Path> outlines) {
    List<CommonLines.Owned> lines = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      lines.add(new CommonLines.Owned(i, outlines.get(i)));
    }
    List<CommonLines.Shared> stretches = CommonLines.of(lines);
    for (CommonLines.Owned line : lines) {
      double drawn = 0;
      for (CommonLines.Shared stretch : stretches) {
        if (stretch.owners().contains(line.owner())) {
          drawn += stretch.path().length();
        }
      }
      // Each owner's stretches cover its line, and none twice.
      assertEquals(line.path().length(), drawn, 0.02);
      for (double at = 0.1; at < line.path().length(); at += STEP) {
        Point point = line.path().atLength(at);
        assertTrue(
            stretches.stream()
                .filter(stretch -> stretch.owners().contains(line.owner()))
                .anyMatch(stretch -> stretch.path().distance(point) <= CommonLines.TOLERANCE));
      }
    }
    for (CommonLines.Shared stretch : stretches) {
      for (double at = 0.1; at < stretch.path().length(); at += STEP) {
        Point point = stretch.path().atLength(at);
        for (int owner : stretch.owners()) {
          assertTrue(outlines.get(owner).distance(point) <= CommonLines.TOLERANCE);
        }
      }
    }
  }

  /** Rounded rectangles of few sizes, so that sides and corners often fall on each other. */
  @Provide
  Arbitrary<List<Path>> outlines() {
    Arbitrary<Path> one =
        Combinators.combine(
                Arbitraries.integers().between(3, 6),
                Arbitraries.integers().between(3, 5),
                Arbitraries.of(0.0, 5.0, 8.0))
            .as((width, height, radius) -> rounded(width * 10, height * 10, radius));
    return one.list().ofMinSize(2).ofMaxSize(5);
  }

  private static double length(List<CommonLines.Shared> stretches, List<Integer> owners) {
    return stretches.stream()
        .filter(stretch -> stretch.owners().equals(owners))
        .mapToDouble(stretch -> stretch.path().length())
        .sum();
  }

  private static Path rounded(double width, double height, double r) {
    if (r == 0) {
      return Path.rectangle(new Box(0, 0, width, height));
    }
    double quarter = Math.PI / 2;
    List<Curve> curves =
        List.of(
            new Line(new Point(r, 0), new Point(width - r, 0)),
            Arc.ofCircle(new Point(width - r, r), r, -quarter, quarter),
            new Line(new Point(width, r), new Point(width, height - r)),
            Arc.ofCircle(new Point(width - r, height - r), r, 0, quarter),
            new Line(new Point(width - r, height), new Point(r, height)),
            Arc.ofCircle(new Point(r, height - r), r, quarter, quarter),
            new Line(new Point(0, height - r), new Point(0, r)),
            Arc.ofCircle(new Point(r, r), r, 2 * quarter, quarter));
    return new Path(curves);
  }
}
