package org.lapmark.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class PageBoundTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final TileGrid GRID = new TileGrid(100, 120, 10, 0.5);
  private static final double GAP = 2;
  private static final List<Double> QUARTERS = List.of(0.0, 90.0, 180.0, 270.0);

  private static Shape shape(Polygon outline) {
    return new Shape(outline, QUARTERS, false);
  }

  private static Shape rectangle(double width, double height) {
    return shape((Polygon) FACTORY.toGeometry(new Envelope(0, width, 0, height)));
  }

  /** An angle whose arms are as wide as stated. */
  private static Shape angle(double width, double height, double arm) {
    double[] xy = {0, 0, arm, 0, arm, height - arm, width, height - arm, width, height, 0, height};
    Coordinate[] points = new Coordinate[7];
    for (int i = 0; i < 6; i++) {
      points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    points[6] = points[0].copy();
    return shape(FACTORY.createPolygon(points));
  }

  private static int bound(Shape... shapes) {
    return PageBound.of(List.of(shapes), GRID, GAP, 9, 1, 20_000);
  }

  @Test
  void oneShapeNeedsTheTilesThatItReaches() {
    assertEquals(1, bound(rectangle(99, 119)));
    assertEquals(1, bound(rectangle(119, 99)));
    assertEquals(2, bound(rectangle(50, 150)));
    assertEquals(2, bound(rectangle(99, 229)));
    assertEquals(3, bound(rectangle(50, 250)));
    assertEquals(4, bound(rectangle(150, 180)));
    // An angle goes round a corner and leaves the fourth window out.
    assertEquals(3, bound(angle(188, 228, 60)));
  }

  @Test
  void shapesThatCannotLieBesideEachOtherTakeATileEach() {
    assertEquals(1, bound(rectangle(90, 55), rectangle(90, 55)));
    assertEquals(2, bound(rectangle(65, 65), rectangle(65, 65)));
    // Three of 65 and their gaps do with the 229 of two windows, one below the other.
    assertEquals(2, bound(rectangle(65, 65), rectangle(65, 65), rectangle(65, 65)));
    List<Shape> squares = List.of(rectangle(80, 80), rectangle(80, 80), rectangle(80, 80));
    assertEquals(3, PageBound.of(squares, GRID, GAP, 9, 2, 1_000_000));
    // A trial that is broken off proves nothing.
    assertEquals(2, PageBound.of(squares, GRID, GAP, 9, 2, 100));
    assertEquals(2, bound(rectangle(90, 110), rectangle(90, 110)));
  }

  @Test
  void anglesThatGoIntoEachOtherShareATile() {
    assertEquals(1, bound(angle(90, 90, 25), angle(60, 60, 25)));
    assertEquals(2, bound(angle(90, 90, 55), angle(60, 60, 35)));
  }

  @Test
  void theTurnsThatAreAllowedCount() {
    Polygon wide = rectangle(110, 40).outline();
    assertEquals(1, bound(shape(wide)));
    assertEquals(2, bound(new Shape(wide, List.of(0.0, 180.0), false)));
    assertEquals(2, bound(new Shape(wide, List.of(0.0), false)));
  }

  @Test
  void manySmallShapesCountByTheirArea() {
    Shape[] shapes = new Shape[40];
    java.util.Arrays.fill(shapes, rectangle(30, 30));
    // Grown by nearly a millimetre all round 40,800 of the 12,000 that one window has.
    assertEquals(4, bound(shapes));
  }

  @Test
  void nothingMoreThanWhatIsReachedIsClaimed() {
    assertEquals(2, PageBound.of(List.of(rectangle(150, 180)), GRID, GAP, 2, 1, 100));
  }

  /** Cuts a box into so many by cuts that are a gap wide. */
  private static List<Envelope> cut(Envelope whole, int count, SplittableRandom random) {
    List<Envelope> boxes = new ArrayList<>(List.of(whole));
    while (boxes.size() < count) {
      boxes.sort((a, b) -> Double.compare(b.getArea(), a.getArea()));
      Envelope box = boxes.remove(0);
      boolean across = box.getWidth() > box.getHeight();
      double side = across ? box.getWidth() : box.getHeight();
      double at = side * (0.25 + 0.5 * random.nextDouble());
      double x = box.getMinX();
      double y = box.getMinY();
      boxes.add(
          across
              ? new Envelope(x, x + at - GAP / 2, y, box.getMaxY())
              : new Envelope(x, box.getMaxX(), y, y + at - GAP / 2));
      boxes.add(
          across
              ? new Envelope(x + at + GAP / 2, box.getMaxX(), y, box.getMaxY())
              : new Envelope(x, box.getMaxX(), y + at + GAP / 2, box.getMaxY()));
    }
    return boxes;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void whatWasCutFromFullTilesIsNeverSaidToNeedMore(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Shape> shapes = new ArrayList<>();
    int tiles = 0;
    for (int group = 0; group < 2; group++) {
      boolean two = random.nextBoolean();
      tiles += two ? 2 : 1;
      Envelope whole = new Envelope(0, 99, 0, two ? 229 : 119);
      for (Envelope box : cut(whole, 2 + random.nextInt(2), random)) {
        boolean turned = random.nextBoolean();
        shapes.add(
            rectangle(
                turned ? box.getHeight() : box.getWidth(),
                turned ? box.getWidth() : box.getHeight()));
      }
    }
    for (int half = 1; half <= 3; half++) {
      int bound = PageBound.of(shapes, GRID, GAP, 9, half, 20_000);
      assertTrue(bound <= tiles, bound + " where " + tiles + " do, half a step " + half);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
  void noArrangementIsBetterThanTheBound(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < 2 + seed % 4; i++) {
      double width = 25 + 75 * random.nextDouble();
      double height = 25 + 110 * random.nextDouble();
      shapes.add(
          random.nextBoolean()
              ? rectangle(width, height)
              : angle(width, height, (0.3 + 0.3 * random.nextDouble()) * Math.min(width, height)));
    }
    Search search = new Search(GAP, 2_000, 500, 5_000_000, seed);
    int tiles = Packer.pack(shapes, GRID, search).tiles();
    int bound = PageBound.of(shapes, GRID, GAP, tiles + 1, 2, 5_000);
    assertTrue(bound <= tiles, bound + " where " + tiles + " do");
  }
}
