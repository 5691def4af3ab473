package org.lapmark.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Value;
import org.lapmark.memory.Memory;
import org.lapmark.packing.Effort;
import org.lapmark.packing.strip.StripArrangement;
import org.lapmark.packing.strip.StripPacker;
import org.lapmark.packing.strip.StripSearch;
import org.lapmark.packing.strip.StripShape;
import org.lapmark.source.PieceSource;
import org.lapmark.source.ThingSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Lays the pieces of a pattern on cloth, material by material.
 *
 * <p>Pieces lie with their grainline along the cloth, inside its usable width, and at least {@link
 * #GAP} apart between their cutting lines (within 0.01 mm). On one-way cloth all lie the same way
 * up; elsewhere they may be turned by half; without a grain by quarters. Reversed pieces are
 * mirrored, since the cloth lies in one layer with its right side up. The search is bounded and
 * starts from a fixed seed: the same pattern gives the same layout.
 */
public final class LayPlanner {
  /** How far pieces lie apart, in millimetres. */
  public static final double GAP = 5;

  /** How many pieces of one material are laid out at most. */
  public static final int MOST_PIECES = 400;

  /** How many columns the search compares at most before it stops. */
  static final long WORK = 20_000_000;

  private static final int RUNS = 5000;
  private static final long SEED = 20_261_012;
  private static final double FLATNESS = 0.005;
  private static final double SAME_WIDTH = 0.05;

  private final EvaluatedPattern pattern;
  private final Findings findings;
  private final int runs;
  private final long work;
  private final Memory memory;
  private final GeometryFactory factory = new GeometryFactory();

  private LayPlanner(
      EvaluatedPattern pattern, Findings findings, int runs, long work, Memory memory) {
    this.runs = runs;
    this.work = work;
    this.memory = memory;
    this.pattern = pattern;
    this.findings = findings;
  }

  /** Shapes laid on a strip, and how. */
  private record Packing(List<StripShape> shapes, double width, StripSearch search) {
    Packing {
      shapes = List.copyOf(shapes);
    }

    /** The least effort that shows whether there is one at all takes no search. */
    StripArrangement made(Memory memory) {
      return search.runs() == 1
          ? StripPacker.inARow(shapes, width, search.gap())
          : remembered(memory);
    }

    private StripArrangement remembered(Memory memory) {
      return memory.of(
          this, made -> 1 + made.maps().size(), () -> StripPacker.pack(shapes, width, search));
    }
  }

  /** A piece's cut from the material at hand. */
  private record Wanted(Piece piece, Cut cut) {}

  /** A shape to place and what becomes its placement. */
  private record Item(Piece piece, boolean reversed, int part, int parts, Path shape) {}

  /**
   * Plans every material that a piece is cut from.
   *
   * @param pattern the pattern in one variant
   * @param findings where problems go
   * @return the materials in the order stated; one without a usable width has neither a layout nor
   *     lengths, one with a piece that doesn't fit a width has no layout for that width
   */
  public static List<ClothPlan> plan(EvaluatedPattern pattern, Findings findings) {
    return plan(pattern, findings, WORK);
  }

  static List<ClothPlan> plan(EvaluatedPattern pattern, Findings findings, long work) {
    return new LayPlanner(pattern, findings, RUNS, work, Memory.none()).plan();
  }

  /**
   * Plans every material that a piece is cut from.
   *
   * @param pattern the pattern in one variant
   * @param findings where problems go
   * @param effort how hard a short layout is searched for; what doesn't fit shows either way
   * @param memory what remembers layouts
   * @return the materials in the order stated; one without a usable width has neither a layout nor
   *     lengths, one with a piece that doesn't fit a width has no layout for that width
   */
  public static List<ClothPlan> plan(
      EvaluatedPattern pattern, Findings findings, Effort effort, Memory memory) {
    int runs = effort == Effort.FULL ? RUNS : 1;
    return new LayPlanner(pattern, findings, runs, WORK, memory).plan();
  }

  private List<ClothPlan> plan() {
    Map<String, List<Wanted>> wanted = new LinkedHashMap<>();
    for (Piece piece : pattern.pieces()) {
      for (Cut cut : piece.cuts()) {
        wanted.computeIfAbsent(cut.material(), id -> new ArrayList<>()).add(new Wanted(piece, cut));
      }
    }
    List<ClothPlan> plans = new ArrayList<>();
    for (ThingSource material : pattern.source().materials()) {
      List<Wanted> cuts = wanted.get(material.id().text());
      if (cuts != null) {
        plans.add(plan(material, cuts));
      }
    }
    return plans;
  }

  private ClothPlan plan(ThingSource material, List<Wanted> wanted) {
    ClothReader reader = new ClothReader(pattern, material, findings);
    Cloth cloth = reader.read(wanted.get(0).cut().materialName());
    if (!material.properties().containsKey(ClothReader.USABLE_WIDTH)
        && !material.properties().containsKey(ClothReader.OTHER_WIDTH)) {
      findings.add(
          LayCode.LAY_WIDTH_MISSING,
          reader.place(ClothReader.USABLE_WIDTH),
          "material",
          cloth.id());
    }
    int count = wanted.stream().mapToInt(one -> one.cut().count()).sum();
    if (cloth.widths().isEmpty()) {
      return new ClothPlan(cloth, List.of(), Optional.empty());
    }
    if (isPieceGoods(cloth, wanted)) {
      return new ClothPlan(cloth, List.of(), Optional.of(goods(cloth, wanted)));
    }
    if (count > MOST_PIECES) {
      findings.add(
          LayCode.LAY_TOO_MANY_PIECES,
          reader.place(ClothReader.USABLE_WIDTH),
          "material",
          cloth.id(),
          "count",
          count,
          "most",
          MOST_PIECES);
      return new ClothPlan(cloth, List.of(), Optional.empty());
    }
    List<Lay> lays = new ArrayList<>();
    for (ClothWidth width : cloth.widths()) {
      lay(cloth, width, wanted).ifPresent(lays::add);
    }
    return new ClothPlan(cloth, lays, Optional.empty());
  }

  private static boolean isPieceGoods(Cloth cloth, List<Wanted> wanted) {
    ClothWidth width = cloth.widths().get(0);
    return wanted.stream()
        .allMatch(
            one ->
                one.piece()
                    .rectangle()
                    .filter(size -> !size.bias() && isWidth(width, size.width()))
                    .isPresent());
  }

  private static boolean isWidth(ClothWidth width, double across) {
    if (width.stated() instanceof Value.NominalPair pair) {
      return Math.abs(across - pair.metric()) <= SAME_WIDTH
          || Math.abs(across - pair.inches()) <= SAME_WIDTH;
    }
    return Math.abs(across - width.usable()) <= SAME_WIDTH;
  }

  private static PieceGoods goods(Cloth cloth, List<Wanted> wanted) {
    double total = 0;
    for (Wanted one : wanted) {
      total += one.cut().count() * one.piece().rectangle().orElseThrow().height();
    }
    return new PieceGoods(total, cloth.goods(total));
  }

  private Optional<Lay> lay(Cloth cloth, ClothWidth width, List<Wanted> wanted) {
    double usable = width.usable() - 2 * cloth.selvedgeMargin();
    List<Item> items = new ArrayList<>();
    List<StripShape> shapes = new ArrayList<>();
    boolean fits = true;
    boolean curved = false;
    for (Wanted one : wanted) {
      List<Path> parts = parts(cloth, width, usable, one.piece());
      for (int copy = 0; copy < one.cut().count(); copy++) {
        boolean reversed = copy >= one.cut().count() - one.cut().reversed();
        for (int part = 0; part < parts.size(); part++) {
          Path shape = parts.get(part);
          items.add(new Item(one.piece(), reversed, part + 1, parts.size(), shape));
          shapes.add(
              new StripShape(
                  polygon(shape), Grain.poses(one.piece().shape().panel(), cloth, reversed)));
          curved |= shape.curves().stream().anyMatch(curve -> !(curve instanceof Line));
        }
      }
      StripShape last = shapes.isEmpty() ? null : shapes.get(shapes.size() - 1);
      if (parts.isEmpty() || (last != null && !StripPacker.fits(last, usable))) {
        tooWide(cloth, usable, one.piece(), parts.isEmpty() ? null : last);
        fits = false;
      }
    }
    if (!fits) {
      return Optional.empty();
    }
    // Chords may lie inside the true line by the flatness, on both sides of a gap.
    double gap = curved ? GAP + 2 * FLATNESS : GAP;
    StripArrangement arrangement =
        new Packing(shapes, usable, new StripSearch(gap, runs, work, SEED)).made(memory);
    Affine shift = Affine.translation(0, cloth.selvedgeMargin());
    List<Placement> placements = new ArrayList<>();
    double length = 0;
    for (int i = 0; i < items.size(); i++) {
      Item item = items.get(i);
      Placement placement =
          new Placement(
              item.piece(),
              item.reversed(),
              item.part(),
              item.parts(),
              item.shape(),
              shift.after(arrangement.maps().get(i)));
      placements.add(placement);
      length = Math.max(length, placement.outline().bounds().maxX());
    }
    return Optional.of(
        new Lay(cloth, pattern.variant(), width, length, placements, cloth.purchase(length)));
  }

  /** The shapes that a piece is cut as; none when its strip can't be joined on this width. */
  private List<Path> parts(Cloth cloth, ClothWidth width, double usable, Piece piece) {
    Path whole = piece.shape().opened();
    if (piece.rectangle().isEmpty() || !piece.rectangle().orElseThrow().bias() || cloth.noGrain()) {
      return List.of(whole);
    }
    StatedSize size = piece.rectangle().orElseThrow();
    BiasStrip strip = BiasStrip.on(usable, size.height(), size.width());
    if (strip.parts() == 1) {
      return List.of(whole);
    }
    if (strip.parts() == 0) {
      return List.of();
    }
    findings.add(
        LayCode.LAY_BIAS_STRIP_JOINED,
        place(piece),
        "size",
        pattern.variant().size(),
        "number",
        piece.number(),
        "piece",
        piece.name(),
        "material",
        cloth.id(),
        "width",
        ClothReader.tenth(width.usable()),
        "parts",
        strip.parts(),
        "length",
        ClothReader.tenth(strip.length()));
    Box bounds = whole.bounds();
    Path part = Path.rectangle(Box.at(bounds.minX(), bounds.minY(), size.width(), strip.length()));
    return Collections.nCopies(strip.parts(), part);
  }

  private void tooWide(Cloth cloth, double usable, Piece piece, StripShape shape) {
    StatedSize strip = piece.rectangle().orElse(null);
    boolean tooLong =
        shape == null && strip != null && BiasStrip.canBeJoined(usable, strip.width());
    double needed =
        shape == null
            ? strip == null ? 0 : tooLong ? strip.height() : strip.width() * Math.sqrt(2)
            : shape.poses().stream()
                .mapToDouble(pose -> piece.shape().opened().transformed(pose).bounds().height())
                .min()
                .orElseThrow();
    findings.add(
        LayCode.LAY_PIECE_TOO_WIDE,
        place(piece),
        "size",
        pattern.variant().size(),
        "number",
        piece.number(),
        "piece",
        piece.name(),
        "material",
        cloth.id(),
        "reason",
        tooLong ? "long" : "wide",
        "needed",
        ClothReader.tenth(needed),
        "most",
        BiasStrip.MOST_PARTS,
        "width",
        ClothReader.tenth(usable));
  }

  private Position place(Piece piece) {
    return pattern.source().pieces().stream()
        .filter(source -> source.number() == piece.number())
        .map(PieceSource::position)
        .findFirst()
        .orElseThrow();
  }

  private Polygon polygon(Path path) {
    List<Point> points = path.flattened(FLATNESS);
    Coordinate[] ring = new Coordinate[points.size()];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    ring[ring.length - 1] = ring[0].copy();
    return factory.createPolygon(ring);
  }
}
