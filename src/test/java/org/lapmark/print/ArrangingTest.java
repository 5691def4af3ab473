package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.arrange.PlanQuality;
import org.lapmark.print.arrange.Turns;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Every fifth of the generated patterns; {@link ArrangingReport} goes through all of them. */
class ArrangingTest {
  private static final TileGrid A4 = Tiling.DEFAULT.grid(Paper.A4);

  private static Polygon rectangle(double width, double height) {
    return new GeometryFactory()
        .createPolygon(
            new Coordinate[] {
              new Coordinate(0, 0),
              new Coordinate(width, 0),
              new Coordinate(width, height),
              new Coordinate(0, height),
              new Coordinate(0, 0)
            });
  }

  @Test
  void pagesAndJoinsStayBelowTheirBounds() {
    List<ArrangingReport.Row> rows =
        IntStream.iterate(3, i -> i < GeneratedPatterns.COUNT, i -> i + 5)
            .mapToObj(ArrangingReport::row)
            .toList();
    double mean = rows.stream().mapToDouble(ArrangingReport.Row::ratio).average().orElseThrow();
    int joins = rows.stream().mapToInt(row -> row.quality().joins()).sum();
    int carpet = rows.stream().mapToInt(row -> row.carpet().joins()).sum();
    assertTrue(mean <= 1.25, "pages are " + mean + " of the bound");
    assertTrue(joins <= 0.7 * carpet, joins + " joins where a carpet has " + carpet);
  }

  @Test
  void theFirstPatternsAreOnAsFewPagesAsCanBe() {
    for (int i = 0; i < 2; i++) {
      PlanQuality quality = ArrangingReport.row(i).quality();
      assertEquals(3, quality.bound());
      assertEquals(4, quality.pages());
      assertEquals(4, ArrangingReport.leastPages(GeneratedPatterns.pattern(i), 5));
    }
  }

  @Test
  void patternsAreSpreadFromFiveToSixtyPieces() {
    assertEquals(5, GeneratedPatterns.pattern(0).pieces().size());
    assertEquals(60, GeneratedPatterns.pattern(GeneratedPatterns.COUNT - 1).pieces().size());
    assertEquals(
        GeneratedPatterns.pattern(7).pieces().get(3).shape().cuttingLine(),
        GeneratedPatterns.all().get(7).pieces().get(3).shape().cuttingLine());
  }

  @Test
  void aStripThatFitsAPageOnlySlantedIsTriedSlanted() {
    assertEquals(List.of(0.0, 90.0, 180.0, 270.0), Turns.of(rectangle(20, 260), A4));
    assertEquals(6, Turns.of(rectangle(20, 300), A4).size());
    assertEquals(4, Turns.of(rectangle(20, 400), A4).size());
  }

  @Test
  void theBoundIsTheGreaterOfAreaAndTheMostDemandingPiece() {
    PlanQuality strip = PlanQuality.of(4, 3, List.of(rectangle(20, 900)), A4);
    assertEquals(1, strip.areaPages());
    assertEquals(4, strip.forcedPages());
    assertEquals(4, strip.bound());
    PlanQuality many = PlanQuality.of(4, 0, List.of(rectangle(170, 250), rectangle(170, 250)), A4);
    assertEquals(2, many.bound());
    assertEquals(1, many.forcedPages());
  }
}
