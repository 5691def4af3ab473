package org.lapmark.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.lapmark.geometry.Affine;
import org.lapmark.packing.strip.Pose;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Proves by going through all cases that shapes can't do with fewer tiles, in whatever way they are
 * arranged in the turns that they are allowed. It is meant for few shapes on few tiles.
 *
 * <p>Tiles between which a shape crosses a line belong to one group; groups have nothing to do with
 * each other. A group of {@code n} tiles hangs together, and its shapes lie in the union of its
 * {@code n} windows, less {@link TileGrid#edge}: what is trimmed where it has neighbours in an
 * island is given back to it. So an arrangement on {@code k} tiles divides the shapes into sets,
 * each of which fits in such a union, of {@code k} windows in all. What is shown here is that there
 * is no such division, and every step errs on the side of there being one:
 *
 * <ul>
 *   <li>Only the {@link #MOST} largest shapes are divided. The others count by their area alone.
 *   <li>Shapes lie apart by the gap, so that shapes grown by half of it don't overlap; their areas
 *       together are no more than those of the unions, grown likewise.
 *   <li>Whether a set fits in a union is tried for every shape at every point of a lattice in every
 *       turn. A shape anywhere has a lattice point so near that the grown shape, taken off by half
 *       a step on all sides and laid there, lies within the grown shape where it really is. If
 *       those smaller shapes, as whole cells inside them, can't lie clear of each other within the
 *       union, the real ones can't.
 *   <li>A trial that takes too long counts as one that fits, and so does one in the union of more
 *       than {@link #LARGEST} windows.
 * </ul>
 *
 * <p>Where all turns come in pairs half a turn apart, a union and its half turn are tried once, and
 * in a union that is its own half turn one shape is tried in half of its turns.
 */
public final class PageBound {
  /** So many shapes are divided; each further one doubles the number of sets. */
  private static final int MOST = 7;

  /** Unions of more windows than this are so many that shapes count as fitting by their area. */
  private static final int LARGEST = 5;

  /** How much is added to all room and taken off all distances, in millimetres. */
  private static final double TOLERANCE = 0.02;

  /** What chords leave of the gap at rounded corners. */
  private static final double ROUNDING = 0.98;

  /** Cells around a union's box, so that no shape reaches beyond what is looked at. */
  private static final int AROUND = 10;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final TileGrid grid;
  private final double grow;
  private final int half;
  private final long patience;
  private final List<List<Cells>> shapes = new ArrayList<>();
  private final double[] areas;
  private final double allAreas;
  private final boolean halfTurns;
  private final Clash[][][][] clashes;
  private final int[] least;
  private final boolean[] sure;
  private final List<List<Union>> unions = new ArrayList<>();
  private final Map<Union, Free[]> places = new HashMap<>();
  private long tries;

  /**
   * A turned shape taken off by half a step, as the cells inside it, which count from the corner of
   * the box around the shape itself.
   */
  private record Cells(double angle, int top, int[][] rows, double width, double height) {}

  /** Windows by row and column that hang together, from the top left. */
  private record Union(Set<List<Integer>> windows, boolean ownHalfTurn) {
    int rows() {
      return 1 + windows.stream().mapToInt(w -> w.get(0)).max().orElseThrow();
    }

    int columns() {
      return 1 + windows.stream().mapToInt(w -> w.get(1)).max().orElseThrow();
    }

    boolean whole() {
      return windows.size() == rows() * columns();
    }
  }

  /**
   * From where to where, in steps, one shape overlaps another: a row of bits for every step down.
   */
  private record Clash(int down, int across, long[][] rows) {}

  private PageBound(List<Shape> all, TileGrid grid, double gap, int half, long patience) {
    this.grid = grid;
    this.grow = gap / 2 * ROUNDING;
    this.half = half;
    this.patience = patience;
    List<Shape> sorted =
        all.stream()
            .sorted(Comparator.comparingDouble((Shape shape) -> -shape.outline().getArea()))
            .toList();
    allAreas = sorted.stream().mapToDouble(this::grownArea).sum();
    List<Shape> divided = sorted.subList(0, Math.min(MOST, sorted.size()));
    areas = divided.stream().mapToDouble(this::grownArea).toArray();
    halfTurns =
        divided.stream()
            .allMatch(
                shape ->
                    shape.angles().stream()
                        .allMatch(angle -> shape.angles().contains((angle + 180) % 360)));
    for (Shape shape : divided) {
      List<Cells> turns = new ArrayList<>();
      for (double angle : shape.angles().stream().sorted().toList()) {
        Cells cells = cells(shape.outline(), angle);
        if (turns.stream().noneMatch(other -> alike(cells, other))) {
          turns.add(cells);
        }
      }
      shapes.add(turns);
    }
    int count = divided.size();
    clashes = new Clash[count][count][][];
    least = new int[1 << count];
    Arrays.fill(least, 1);
    sure = new boolean[1 << count];
  }

  /**
   * The least number of tiles that can't be excluded.
   *
   * @param shapes the shapes
   * @param grid the tiles
   * @param gap the least distance between two shapes
   * @param reached a number of tiles that is reached, above which there is nothing to find out
   * @param half half a step of the lattice, in whole millimetres
   * @param patience how many places of shapes are tried for a set in all unions of as many windows
   * @return at most {@code reached}
   */
  public static int of(
      List<Shape> shapes, TileGrid grid, double gap, int reached, int half, long patience) {
    return new PageBound(shapes, grid, gap, half, patience).least(reached);
  }

  private int least(int reached) {
    int all = (1 << shapes.size()) - 1;
    for (int tiles = 1; tiles < reached; tiles++) {
      if (reachable(all, tiles, 0)) {
        return tiles;
      }
    }
    return reached;
  }

  /** Whether a set may lie on so many tiles, with room for all beside what others have. */
  private boolean reachable(int set, int tiles, double room) {
    if (room + tiles * capacity(1) < allAreas) {
      return false;
    }
    if (set == 0) {
      return true;
    }
    int first = Integer.lowestOneBit(set);
    int others = set ^ first;
    int rest = others;
    while (true) {
      int limit = tiles - (int) Math.ceil(area(rest) / capacity(1));
      // With fewer tiles than it needs a set doesn't fit; with more, one apart has more room.
      int need = limit < 1 ? 1 : need(others ^ rest | first, limit);
      if (need <= limit && reachable(rest, tiles - need, room + capacity(need))) {
        return true;
      }
      if (rest == 0) {
        return false;
      }
      rest = (rest - 1) & others;
    }
  }

  private double area(int set) {
    double area = 0;
    for (int i = 0; i < areas.length; i++) {
      area += (set >> i & 1) != 0 ? areas[i] : 0;
    }
    return area;
  }

  /** The least number of windows in whose union a set may fit; more than a limit if beyond it. */
  private int need(int set, int limit) {
    if (sure[set] || least[set] > limit) {
      return least[set];
    }
    int tiles = least[set];
    for (int i = 0; i < shapes.size() && Integer.bitCount(set) > 1; i++) {
      if ((set >> i & 1) != 0) {
        tiles = Math.max(tiles, need(set ^ 1 << i, limit));
      }
    }
    while (tiles <= limit && !mayFit(set, tiles)) {
      tiles++;
    }
    least[set] = tiles;
    sure[set] = tiles <= limit;
    return tiles;
  }

  /** The room of as many windows that hang together, grown as the shapes are. */
  private double capacity(int tiles) {
    double width = grid.width() + 2 * outward();
    double height = grid.height() + 2 * outward();
    // Each window overlaps the one it hangs on at least along its shorter side.
    double shared = Math.min(width, height) * (grid.overlap() + 2 * outward());
    return tiles * width * height - (tiles - 1) * Math.max(0, shared);
  }

  private double outward() {
    return grow - grid.edge() + TOLERANCE;
  }

  private double grownArea(Shape shape) {
    return shape.outline().buffer(grow).getArea();
  }

  private boolean mayFit(int set, int tiles) {
    double area = area(set);
    if (area > capacity(tiles)) {
      return false;
    }
    if (tiles > LARGEST) {
      return true;
    }
    tries = 0;
    for (Union union : unions(tiles)) {
      if (area <= grownUnion(union).getArea() && new Trial(set, union).fits()) {
        return true;
      }
    }
    return false;
  }

  private Geometry grownUnion(Union union) {
    Geometry sum = FACTORY.createPolygon();
    for (List<Integer> window : union.windows()) {
      double x = window.get(1) * grid.stepX();
      double y = window.get(0) * grid.stepY();
      Envelope box = new Envelope(x, x + grid.width(), y, y + grid.height());
      box.expandBy(outward());
      sum = sum.union(FACTORY.toGeometry(box));
    }
    return sum;
  }

  private List<Union> unions(int tiles) {
    while (unions.size() < tiles) {
      Set<Set<List<Integer>>> larger = new LinkedHashSet<>();
      if (unions.isEmpty()) {
        larger.add(moved(Set.of(List.of(0, 0)), false));
      }
      // One that was dropped as the half turn of another grows as that one does.
      for (Union union : unions.isEmpty() ? List.<Union>of() : unions.get(unions.size() - 1)) {
        for (List<Integer> window : union.windows()) {
          for (int[] step : new int[][] {{0, 1}, {1, 0}, {0, -1}, {-1, 0}}) {
            Set<List<Integer>> grown = new LinkedHashSet<>(union.windows());
            grown.add(List.of(window.get(0) + step[0], window.get(1) + step[1]));
            Set<List<Integer>> one = moved(grown, false);
            if (one.size() == union.windows().size() + 1
                && !(halfTurns && larger.contains(moved(grown, true)))) {
              larger.add(one);
            }
          }
        }
      }
      unions.add(larger.stream().map(set -> new Union(set, set.equals(moved(set, true)))).toList());
    }
    return unions.get(tiles - 1);
  }

  private static Set<List<Integer>> moved(Set<List<Integer>> windows, boolean turned) {
    int sign = turned ? -1 : 1;
    int row = windows.stream().mapToInt(w -> sign * w.get(0)).min().orElseThrow();
    int column = windows.stream().mapToInt(w -> sign * w.get(1)).min().orElseThrow();
    Set<List<Integer>> moved =
        new TreeSet<>(
            Comparator.<List<Integer>>comparingInt(w -> w.get(0)).thenComparingInt(w -> w.get(1)));
    for (List<Integer> window : windows) {
      moved.add(List.of(sign * window.get(0) - row, sign * window.get(1) - column));
    }
    return moved;
  }

  private Cells cells(Polygon outline, double angle) {
    Polygon turned = Pose.mapped(outline, Affine.rotation(angle));
    Envelope box = turned.getEnvelopeInternal();
    Geometry grown = turned.buffer(grow);
    Envelope around = new Envelope(box);
    around.expandBy(grow + 2);
    // Cells that the outside doesn't touch are inside.
    Raster outside =
        Raster.of(FACTORY.toGeometry(around).difference(grown), box.getMinX(), box.getMinY());
    int margin = (int) Math.ceil(grow + 2) + 1;
    int wide = (int) Math.ceil(box.getWidth()) + 2 * margin;
    int high = outside.height();
    boolean[][] inside = new boolean[high][wide];
    for (int row = 0; row < high; row++) {
      int[] runs = outside.rows()[row];
      for (int i = 1; i + 1 < runs.length; i += 2) {
        Arrays.fill(inside[row], runs[i] + margin, runs[i + 1] + margin, true);
      }
    }
    int[][] rows = new int[high][];
    for (int row = 0; row < high; row++) {
      boolean[] kept = new boolean[wide + 1];
      for (int x = half; x < wide - half; x++) {
        kept[x] = row >= half && row < high - half && all(inside, row, x);
      }
      rows[row] =
          IntStream.range(1, wide + 1)
              .filter(x -> kept[x] != kept[x - 1])
              .map(x -> x - margin)
              .toArray();
    }
    return new Cells(angle, outside.top(), rows, box.getWidth(), box.getHeight());
  }

  private boolean all(boolean[][] inside, int row, int x) {
    for (int dy = -half; dy <= half; dy++) {
      for (int dx = -half; dx <= half; dx++) {
        if (!inside[row + dy][x + dx]) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean alike(Cells one, Cells other) {
    return Math.abs(one.width() - other.width()) < 1e-6
        && Math.abs(one.height() - other.height()) < 1e-6
        && one.top() == other.top()
        && Arrays.deepEquals(one.rows(), other.rows());
  }

  private Clash clash(int shape, int turn, int other, int otherTurn) {
    if (clashes[shape][other] == null) {
      clashes[shape][other] = new Clash[shapes.get(shape).size()][shapes.get(other).size()];
    }
    Clash[][] known = clashes[shape][other];
    if (known[turn][otherTurn] == null) {
      known[turn][otherTurn] =
          clash(shapes.get(shape).get(turn), shapes.get(other).get(otherTurn), 2 * half);
    }
    return known[turn][otherTurn];
  }

  private static Clash clash(Cells still, Cells moving, int step) {
    int down = Math.floorDiv(still.top() - moving.top() - moving.rows().length, step);
    int last = Math.floorDiv(still.top() + still.rows().length - moving.top(), step) + 1;
    int across = Math.floorDiv((int) -moving.width() - 10, step);
    int right = Math.floorDiv((int) still.width() + 10, step) + 1;
    long[][] rows = new long[last - down + 1][(right - across) / 64 + 1];
    for (int dy = down; dy <= last; dy++) {
      for (int i = 0; i < still.rows().length; i++) {
        int k = i + still.top() - moving.top() - dy * step;
        if (k < 0 || k >= moving.rows().length) {
          continue;
        }
        int[] a = still.rows()[i];
        int[] b = moving.rows()[k];
        for (int p = 0; p < a.length; p += 2) {
          for (int q = 0; q < b.length; q += 2) {
            int from = -Math.floorDiv(-(a[p] - b[q + 1] + 1), step);
            int to = Math.floorDiv(a[p + 1] - b[q] - 1, step);
            for (int dx = from; dx <= to; dx++) {
              rows[dy - down][(dx - across) >> 6] |= 1L << (dx - across);
            }
          }
        }
      }
    }
    return new Clash(down, across, rows);
  }

  /** Places of lattice points for every turn of a shape that is still to be laid. */
  private record Free(int shape, long[][] turns) {
    long count() {
      long sum = 0;
      for (long[] turn : turns) {
        for (long word : turn) {
          sum += Long.bitCount(word);
        }
      }
      return sum;
    }
  }

  /** Whether a set of shapes may lie in a union of windows. */
  private final class Trial {
    private final int set;
    private final Union union;
    private final int step = 2 * half;
    private final double wide;
    private final double high;
    private final int words;
    private final int down;

    Trial(int set, Union union) {
      this.set = set;
      this.union = union;
      double margin = 2 * (TOLERANCE - grid.edge());
      wide = (union.columns() - 1) * grid.stepX() + grid.width() + margin;
      high = (union.rows() - 1) * grid.stepY() + grid.height() + margin;
      words = (int) Math.ceil(wide / step) / 64 + 1;
      down = (int) Math.ceil(high / step) + 1;
    }

    boolean fits() {
      List<Free> loose = new ArrayList<>();
      for (int shape = 0; shape < shapes.size(); shape++) {
        if ((set >> shape & 1) != 0) {
          Free free = places.computeIfAbsent(union, key -> new Free[shapes.size()])[shape];
          if (free == null) {
            free = places(shape);
            places.get(union)[shape] = free;
          }
          if (free.count() == 0) {
            return false;
          }
          loose.add(free);
        }
      }
      return fits(loose, halfTurns && union.ownHalfTurn());
    }

    private Free places(int shape) {
      List<Cells> turns = shapes.get(shape);
      long[][] free = new long[turns.size()][down * words];
      int[][] taken = union.whole() ? null : outside();
      for (int t = 0; t < turns.size(); t++) {
        Cells cells = turns.get(t);
        double slackX = wide - cells.width();
        double slackY = high - cells.height();
        if (slackX < 0 || slackY < 0) {
          continue;
        }
        int across = Math.max(1, (int) Math.ceil(slackX / step));
        int deep = Math.max(1, (int) Math.ceil(slackY / step));
        for (int y = 0; y < deep; y++) {
          for (int x = 0; x < across; x++) {
            if (taken == null || clear(taken, cells, x * step, y * step)) {
              free[t][y * words + (x >> 6)] |= 1L << x;
            }
          }
        }
      }
      return new Free(shape, free);
    }

    /**
     * How many cells that lie outside the union, at least in part, come before one in its row; the
     * rows begin above the union's box, and each to the left of it.
     */
    private int[][] outside() {
      int[][] before = new int[(int) high + 2 * AROUND][(int) wide + 2 * AROUND + 1];
      for (int row = 0; row < before.length; row++) {
        for (int i = 0; i + 1 < before[row].length; i++) {
          int x = i - AROUND;
          int y = row - AROUND;
          boolean out = out(x, y) || out(x + 1, y) || out(x, y + 1) || out(x + 1, y + 1);
          before[row][i + 1] = before[row][i] + (out ? 1 : 0);
        }
      }
      return before;
    }

    /** Whether a corner of a cell lies outside the grown union. */
    private boolean out(int cellX, int cellY) {
      double x = cellX + half + grid.edge() - TOLERANCE;
      double y = cellY + half + grid.edge() - TOLERANCE;
      for (List<Integer> window : union.windows()) {
        double left = window.get(1) * grid.stepX() - outward();
        double top = window.get(0) * grid.stepY() - outward();
        if (x >= left
            && x <= left + grid.width() + 2 * outward()
            && y >= top
            && y <= top + grid.height() + 2 * outward()) {
          return false;
        }
      }
      return true;
    }

    private boolean clear(int[][] before, Cells cells, int x, int y) {
      for (int i = 0; i < cells.rows().length; i++) {
        int[] runs = cells.rows()[i];
        int[] row = before[y + cells.top() + i + AROUND];
        for (int k = 0; k < runs.length; k += 2) {
          if (row[x + runs[k] + AROUND] != row[x + runs[k + 1] + AROUND]) {
            return false;
          }
        }
      }
      return true;
    }

    /** Lays the shape with the fewest places at each of them. */
    private boolean fits(List<Free> loose, boolean halfOfTurns) {
      int fewest = 0;
      for (int i = 1; i < loose.size(); i++) {
        if (loose.get(i).count() < loose.get(fewest).count()) {
          fewest = i;
        }
      }
      if (loose.size() == 1) {
        return true;
      }
      Free next = loose.get(fewest);
      List<Free> others = new ArrayList<>(loose);
      others.remove(fewest);
      for (int t = 0; t < next.turns().length; t++) {
        if (halfOfTurns && shapes.get(next.shape()).get(t).angle() >= 180) {
          continue;
        }
        for (int w = 0; w < next.turns()[t].length; w++) {
          long bits = next.turns()[t][w];
          while (bits != 0) {
            int x = (w % words) * 64 + Long.numberOfTrailingZeros(bits);
            bits &= bits - 1;
            if (++tries > patience) {
              return true;
            }
            List<Free> left = new ArrayList<>();
            for (Free other : others) {
              Free rest = without(other, next.shape(), t, x, w / words);
              if (rest == null) {
                break;
              }
              left.add(rest);
            }
            if (left.size() == others.size() && fits(left, false)) {
              return true;
            }
          }
        }
      }
      return false;
    }

    /** What is free of a shape's places beside another one; null for none. */
    private Free without(Free other, int shape, int turn, int x, int y) {
      long[][] turns = new long[other.turns().length][];
      long any = 0;
      for (int t = 0; t < turns.length; t++) {
        long[] free = other.turns()[t].clone();
        Clash clash = clash(shape, turn, other.shape(), t);
        int shift = x + clash.across();
        int first = Math.max(0, y + clash.down());
        int last = Math.min(down - 1, y + clash.down() + clash.rows().length - 1);
        for (int row = first; row <= last; row++) {
          long[] blocked = clash.rows()[row - y - clash.down()];
          for (int w = 0; w < words; w++) {
            if (free[row * words + w] != 0) {
              free[row * words + w] &= ~bits(blocked, 64 * w - shift);
            }
          }
        }
        for (long word : free) {
          any |= word;
        }
        turns[t] = free;
      }
      return any == 0 ? null : new Free(other.shape(), turns);
    }
  }

  /** 64 bits from a place that may lie before or behind all of them. */
  private static long bits(long[] row, int start) {
    int word = start >> 6;
    int offset = start & 63;
    long low = word >= 0 && word < row.length ? row[word] >>> offset : 0;
    long high =
        offset > 0 && word + 1 >= 0 && word + 1 < row.length ? row[word + 1] << (64 - offset) : 0;
    return low | high;
  }
}
