package org.lapmark.print;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.packing.PageBound;
import org.lapmark.packing.Search;
import org.lapmark.packing.Shape;
import org.lapmark.packing.TileGrid;
import org.lapmark.print.arrange.PlanQuality;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.arrange.Turns;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.PieceArt;
import org.locationtech.jts.geom.Polygon;

/**
 * Prints how the generated patterns come out on A4: pages and the bound, joins and those of a
 * carpet, processor time of arranging: {@code mvn -q -Parranging test-compile exec:java}. Behind
 * them come small patterns of the same kind, for which no fewer pages than a {@link PageBound} can
 * be had, and how many of them come out on just as many.
 */
public final class ArrangingReport {
  /** So many pieces has each of the small patterns. */
  private static final int FEW = 5;

  /** The most pages, by the plain bound, of a small pattern. */
  private static final int SMALL = 6;

  /** As many pieces as a {@link PageBound} looks at one by one. */
  private static final int MANY = 7;

  /**
   * Half steps of the lattices on which is shown what can't be, in millimetres; the finer one is
   * for what the coarser one leaves open.
   */
  private static final List<Integer> HALF_STEPS = List.of(3, 2);

  private static final long PATIENCE = 20_000;

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
    return row(GeneratedPatterns.pattern(index));
  }

  private static Row row(EvaluatedPattern pattern) {
    Paper paper = Paper.A4;
    TileGrid grid = Tiling.DEFAULT.grid(paper);
    List<Piece> pieces =
        pattern.pieces().stream().sorted(Comparator.comparingInt(Piece::number)).toList();
    Carpet carpet = Carpet.of(pieces, grid, Tiling.DEFAULT.gap());
    long start = processorTime();
    SheetLayout layout = SheetLayout.of(pieces, paper, Tiling.DEFAULT, Search.DEFAULT);
    double seconds = (processorTime() - start) * 1e-9;
    return new Row(pieces.size(), layout.quality(paper, Tiling.DEFAULT), carpet, seconds);
  }

  /**
   * The least number of pages of a pattern that can't be excluded, in the turns that are tried.
   *
   * @param pattern the pattern
   * @param reached the pages on which it came out
   */
  static int leastPages(EvaluatedPattern pattern, int reached) {
    TileGrid grid = Tiling.DEFAULT.grid(Paper.A4);
    List<Shape> shapes =
        pattern.pieces().stream()
            .map(
                piece -> {
                  Polygon shape = PieceArt.shape(piece);
                  return new Shape(shape, Turns.of(shape, grid), false);
                })
            .toList();
    int least = 0;
    for (int half : HALF_STEPS) {
      if (least < reached) {
        double gap = Tiling.DEFAULT.gap();
        least = Math.max(least, PageBound.of(shapes, grid, gap, reached, half, PATIENCE));
      }
    }
    return least;
  }

  /** Small patterns against what can't be had with fewer pages. */
  private static void small(int step) {
    List<EvaluatedPattern> patterns = new ArrayList<>();
    for (int i = 0; i < GeneratedPatterns.COUNT; i += step) {
      EvaluatedPattern pattern = GeneratedPatterns.pattern(i);
      if (pattern.pieces().size() > FEW && pattern.pieces().size() <= MANY) {
        patterns.add(pattern);
      }
      patterns.add(GeneratedPatterns.pattern(i, FEW));
    }
    int count = 0;
    int proved = 0;
    double plain = 0;
    double tighter = 0;
    double best = 0;
    for (EvaluatedPattern pattern : patterns) {
      Row row = row(pattern);
      PlanQuality quality = row.quality();
      if (quality.bound() > SMALL) {
        continue;
      }
      // The area over the net window proves nothing: an outer page has more room than that.
      int least = Math.max(leastPages(pattern, quality.pages()), quality.forcedPages());
      count++;
      proved += least == quality.pages() ? 1 : 0;
      plain += row.ratio();
      tighter += (double) quality.pages() / least;
      best += (double) least / quality.bound();
      System.out.printf(
          Locale.ROOT,
          "small %2d pieces: %3d pages, bound %3d, at least %3d%n",
          row.pieces(),
          quality.pages(),
          quality.bound(),
          least);
    }
    System.out.printf(
        Locale.ROOT,
        "%d small ones: mean %.3f of the bound, and none in these turns is below %.3f of it;"
            + " mean %.3f of what can't be excluded; %d proved to be on as few as can be%n",
        count,
        plain / count,
        best / count,
        tighter / count,
        proved);
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
    small(step);
  }
}
