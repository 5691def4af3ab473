package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapmark.geometry.Box;
import org.lapmark.grade.piece.Piece;
import org.lapmark.packing.Search;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.PieceArt;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** A piece that reaches a sliver beyond so many pages takes no further one where turning helps. */
class SliverTest {
  private static final double SLIVER = 2.4;

  private static SheetLayout layout(Paper paper, List<Piece> pieces) {
    return SheetLayout.of(pieces, paper, Tiling.DEFAULT, Search.DEFAULT);
  }

  private static Paper paper(String id) {
    return List.of(Paper.A4, Paper.LETTER, Paper.SHARED, Paper.A0).stream()
        .filter(paper -> paper.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "a4, 1, 20",
    "a4, 1, 60",
    "a4, 2, 40",
    "letter, 1, 20",
    "letter, 1, 60",
    "letter, 2, 40",
    "shared, 1, 40",
    "shared, 2, 30",
    "a0, 1, 60",
    "a0, 1, 200"
  })
  void aStripSlightlyLongerThanItsPagesIsTurned(String id, int pages, double width) {
    Paper paper = paper(id);
    TileGrid grid = Tiling.DEFAULT.grid(paper);
    double length = (pages - 1) * grid.stepY() + grid.height() - 2 * grid.edge() + SLIVER;
    Piece strip = SamplePatterns.rectangle(1, "Strip", width, length);
    assertEquals(pages, layout(paper, List.of(strip)).cells().size());
    // One that is as wide as the page can't be turned out of it.
    Piece wide = SamplePatterns.rectangle(1, "Sheet", grid.width() - 2, length);
    assertTrue(layout(paper, List.of(wide)).cells().size() > pages);
  }

  @Test
  void noPageShowsASliverAlone() {
    GeometryFactory geometry = new GeometryFactory();
    for (int index : List.of(2, 9, 21, 33)) {
      SheetLayout layout = layout(Paper.A4, GeneratedPatterns.pattern(index).pieces());
      for (Cell cell : layout.cells()) {
        Box core = cell.core();
        Envelope shown = new Envelope();
        for (PieceArt art : layout.art()) {
          Envelope own = new Envelope(core.minX(), core.maxX(), core.minY(), core.maxY());
          shown.expandToInclude(
              art.polygon().intersection(geometry.toGeometry(own)).getEnvelopeInternal());
        }
        double least = Math.min(shown.getWidth(), shown.getHeight());
        assertTrue(least > 4 * SLIVER, index + ", " + cell.code() + ": " + shown);
      }
    }
  }
}
