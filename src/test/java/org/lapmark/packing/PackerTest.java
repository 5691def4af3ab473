package org.lapmark.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class PackerTest {
  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final List<Double> QUARTERS = List.of(0.0, 90.0, 180.0, 270.0);
  private static final TileGrid A4 = new TileGrid(190, 272.5, 12, 0.5);
  private static final Search SHORT = new Search(3, 20, 20, 2_000_000, 1);

  private static Polygon polygon(double... xy) {
    Coordinate[] points = new Coordinate[xy.length / 2 + 1];
    for (int i = 0; i + 1 < points.length; i++) {
      points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    points[points.length - 1] = points[0].copy();
    return FACTORY.createPolygon(points);
  }

  private static Polygon rectangle(double width, double height) {
    return polygon(0, 0, width, 0, width, height, 0, height);
  }

  private static Polygon blob(double[] radii) {
    double[] xy = new double[2 * radii.length];
    for (int i = 0; i < radii.length; i++) {
      double angle = 2 * Math.PI * i / radii.length;
      xy[2 * i] = 17 + radii[i] * Math.cos(angle);
      xy[2 * i + 1] = -40 + radii[i] * Math.sin(angle);
    }
    return polygon(xy);
  }

  private static Polygon placed(Shape shape, Placement placement) {
    Coordinate[] points = shape.outline().getExteriorRing().getCoordinates();
    Coordinate[] moved = new Coordinate[points.length];
    for (int i = 0; i < points.length; i++) {
      Point point = placement.map().apply(new Point(points[i].x, points[i].y));
      moved[i] = new Coordinate(point.x(), point.y());
    }
    moved[points.length - 1] = moved[0].copy();
    return FACTORY.createPolygon(moved);
  }

  private static void assertSound(
      List<Shape> shapes, TileGrid grid, double gap, Arrangement arrangement) {
    assertEquals(shapes.size(), arrangement.placements().size());
    List<Polygon> placed = new ArrayList<>();
    for (int i = 0; i < shapes.size(); i++) {
      Polygon polygon = placed(shapes.get(i), arrangement.placements().get(i));
      placed.add(polygon);
      Island island = arrangement.islands().get(arrangement.placements().get(i).island());
      var box = polygon.getEnvelopeInternal();
      double right = (island.columns() - 1) * grid.stepX() + grid.width() - grid.edge();
      double bottom = (island.rows() - 1) * grid.stepY() + grid.height() - grid.edge();
      assertTrue(box.getMinX() >= grid.edge() - 1e-6, "left");
      assertTrue(box.getMinY() >= grid.edge() - 1e-6, "top");
      assertTrue(box.getMaxX() <= right + 1e-6, "right");
      assertTrue(box.getMaxY() <= bottom + 1e-6, "bottom");
    }
    for (int i = 0; i < placed.size(); i++) {
      for (int k = i + 1; k < placed.size(); k++) {
        if (arrangement.placements().get(i).island() == arrangement.placements().get(k).island()) {
          // A growth by 32-sided rounds falls short of the gap by less than 1 %.
          assertTrue(placed.get(i).distance(placed.get(k)) >= 0.99 * gap, i + " and " + k);
        }
      }
    }
  }

  @Provide
  Arbitrary<List<Shape>> shapes() {
    Arbitrary<Double> radius = Arbitraries.doubles().between(4, 120);
    Arbitrary<Polygon> blobs =
        radius.array(double[].class).ofMinSize(3).ofMaxSize(12).map(PackerTest::blob);
    Arbitrary<Polygon> rectangles =
        Combinators.combine(
                Arbitraries.doubles().between(5, 600), Arbitraries.doubles().between(5, 300))
            .as(PackerTest::rectangle);
    Arbitrary<List<Double>> angles =
        Arbitraries.of(List.of(0.0), List.of(0.0, 180.0), QUARTERS, List.of(0.0, 45.0, 90.0));
    return Combinators.combine(Arbitraries.oneOf(blobs, rectangles), angles)
        .as((polygon, turns) -> new Shape(polygon, turns, false))
        .list()
        .ofMinSize(1)
        .ofMaxSize(8);
  }

  @Property(tries = 120)
  void shapesLieApartInsideTheirIslands(@ForAll("shapes") List<Shape> shapes) {
    assertSound(shapes, A4, SHORT.gap(), Packer.pack(shapes, A4, SHORT));
  }

  @Property(tries = 30)
  void sameShapesAreArrangedAlike(@ForAll("shapes") List<Shape> shapes) {
    assertEquals(Packer.pack(shapes, A4, SHORT), Packer.pack(shapes, A4, SHORT));
  }

  @Property(tries = 60)
  void turnsAreThoseAllowed(@ForAll("shapes") List<Shape> shapes) {
    Arrangement arrangement = Packer.pack(shapes, A4, SHORT);
    for (int i = 0; i < shapes.size(); i++) {
      Affine map = arrangement.placements().get(i).map();
      assertTrue(
          shapes.get(i).angles().stream()
              .map(Affine::rotation)
              .anyMatch(turn -> turn.a() == map.a() && turn.b() == map.b() && turn.c() == map.c()));
    }
  }

  @Test
  void whatFillsAPageExactlyTakesOnePage() {
    List<Shape> shapes =
        List.of(
            new Shape(rectangle(145, 160), QUARTERS, false),
            new Shape(rectangle(100, 100), List.of(0.0), true));
    TileGrid grid = new TileGrid(190, 249.5, 12, 0.5);
    Arrangement arrangement = Packer.pack(shapes, grid, Search.DEFAULT);
    assertEquals(1, arrangement.tiles());
    assertEquals(0, arrangement.joins());
    assertSound(shapes, grid, Search.DEFAULT.gap(), arrangement);
  }

  @Test
  void smallShapesLieInsideOneTile() {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      shapes.add(new Shape(rectangle(90, 80), QUARTERS, false));
    }
    Arrangement arrangement = Packer.pack(shapes, A4, SHORT);
    assertEquals(0, arrangement.joins());
    assertEquals(2, arrangement.tiles());
  }

  @Test
  void aLongStripIsLaidAlongThePage() {
    List<Shape> shapes = List.of(new Shape(rectangle(700, 20), QUARTERS, false));
    Arrangement arrangement = Packer.pack(shapes, A4, SHORT);
    assertEquals(List.of(new Island(1, 3)), arrangement.islands());
    assertEquals(3, arrangement.tiles());
    assertEquals(2, arrangement.joins());
  }

  @Test
  void aHollowTakesASmallerShape() {
    Polygon u = polygon(0, 0, 30, 0, 30, 200, 150, 200, 150, 0, 180, 0, 180, 230, 0, 230);
    List<Shape> shapes =
        List.of(
            new Shape(u, List.of(0.0), false), new Shape(rectangle(110, 190), List.of(0.0), false));
    Arrangement arrangement = Packer.pack(shapes, A4, SHORT);
    assertEquals(1, arrangement.tiles());
    assertSound(shapes, A4, SHORT.gap(), arrangement);
  }

  @Test
  void tilesInsideARingOfLargeHollowAreNotCounted() {
    // A frame 900 wide and 1200 high with bars of 40: its middle touches no tile.
    Polygon frame =
        FACTORY.createPolygon(
            FACTORY.createLinearRing(rectangle(900, 1200).getExteriorRing().getCoordinates()),
            new org.locationtech.jts.geom.LinearRing[] {
              FACTORY.createLinearRing(
                  polygon(40, 40, 860, 40, 860, 1160, 40, 1160).getExteriorRing().getCoordinates())
            });
    Arrangement arrangement =
        Packer.pack(List.of(new Shape(frame, List.of(0.0), false)), A4, SHORT);
    Island island = arrangement.islands().get(0);
    assertEquals(
        island.columns() * island.rows() - (island.columns() - 2) * (island.rows() - 2),
        arrangement.tiles());
  }

  @Test
  void shapesShareTilesWhereThatSavesPages() {
    // Each alone takes two tiles; a carpet of them takes fewer.
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      shapes.add(new Shape(rectangle(200, 200), List.of(0.0), false));
    }
    Arrangement arrangement = Packer.pack(shapes, A4, Search.DEFAULT);
    assertTrue(arrangement.tiles() <= 4, arrangement.toString());
  }

  @Test
  void theFirstTileHoldsWhatMustLieThere() {
    List<Shape> shapes =
        List.of(
            new Shape(rectangle(500, 500), List.of(0.0), false),
            new Shape(rectangle(100, 100), List.of(0.0), true));
    Arrangement arrangement = Packer.pack(shapes, A4, SHORT);
    var box = placed(shapes.get(1), arrangement.placements().get(1)).getEnvelopeInternal();
    assertTrue(box.getMaxX() <= A4.seamX(1) && box.getMaxY() <= A4.seamY(1));
  }

  @Test
  void whatIsBeyondAllPaperIsRefused() {
    List<Shape> shapes = List.of(new Shape(rectangle(20_000, 20), List.of(0.0), false));
    assertThrows(IllegalArgumentException.class, () -> Packer.pack(shapes, A4, SHORT));
  }

  /** Whoever only wants to know whether shapes have places doesn't arrange them. */
  @ParameterizedTest
  @CsvSource({
    "100, 100, true",
    "4000, 4000, true",
    "10640, 100, true",
    "10690, 100, false",
    "100, 15580, true",
    "100, 15650, false"
  })
  void whatSurelyHasAPlaceHasOne(double width, double height, boolean isSure) {
    assertEquals(isSure, Packer.isSurelyPlaced(width + 2, height + 2, A4));
    List<Shape> shapes = List.of(new Shape(rectangle(width, height), List.of(0.0), false));
    if (isSure) {
      assertEquals(1, Packer.pack(shapes, A4, SHORT).placements().size());
    }
  }
}
