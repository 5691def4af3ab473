package org.lapmark.print;

import java.lang.management.ManagementFactory;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.lapmark.grade.Piece;
import org.lapmark.packing.Search;
import org.lapmark.packing.TileGrid;

/**
 * Prints how the generated patterns come out on A4: pages and the bound, joins and those of a
 * carpet, processor time of arranging: {@code mvn -q -Parranging test-compile exec:java}.
 */
public final class ArrangingReport {
  private ArrangingReport() {}

  /**
   * How one pattern came out.
   *
   * @param pieces the number of pieces
   * @param quality pages, joins and bound
   * @param carpet what it is compared with
   * @param seconds processor time of arranging
   */
  record Row(int pieces, PlanQuality quality, Carpet carpet, double seconds) {
    double ratio() {
      return (double) quality.pages() / quality.bound();
    }
  }

  static Row row(int index) {
    Paper paper = Paper.A4;
    TileGrid grid = Tiling.DEFAULT.grid(paper);
    List<Piece> pieces =
        GeneratedPatterns.pattern(index).pieces().stream()
            .sorted(Comparator.comparingInt(Piece::number))
            .toList();
    Carpet carpet = Carpet.of(pieces, grid, Tiling.DEFAULT.gap());
    long start = processorTime();
    SheetLayout layout = SheetLayout.of(pieces, paper, Tiling.DEFAULT, Search.DEFAULT);
    double seconds = (processorTime() - start) * 1e-9;
    return new Row(pieces.size(), layout.quality(paper, Tiling.DEFAULT), carpet, seconds);
  }

  private static long processorTime() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  public static void main(String[] args) {
    int step = args.length > 0 ? Integer.parseInt(args[0]) : 1;
    double ratios = 0;
    int count = 0;
    int joins = 0;
    int carpetJoins = 0;
    double most = 0;
    for (int i = 0; i < GeneratedPatterns.COUNT; i += step) {
      Row row = row(i);
      ratios += row.ratio();
      joins += row.quality().joins();
      carpetJoins += row.carpet().joins();
      most = Math.max(most, row.seconds());
      count++;
      System.out.printf(
          Locale.ROOT,
          "%2d %2d pieces: %3d pages, bound %3d (%.2f), carpet %3d; joins %3d, carpet %3d; %.3f s%n",
          i,
          row.pieces(),
          row.quality().pages(),
          row.quality().bound(),
          row.ratio(),
          row.carpet().pages(),
          row.quality().joins(),
          row.carpet().joins(),
          row.seconds());
    }
    System.out.printf(
        Locale.ROOT,
        "mean %.3f of the bound; joins %d, carpet %d (%.1f %% fewer); most %.3f s%n",
        ratios / count,
        joins,
        carpetJoins,
        100.0 * (carpetJoins - joins) / carpetJoins,
        most);
  }
}
