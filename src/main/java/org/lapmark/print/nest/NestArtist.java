package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.arrange.TestSquare;
import org.lapmark.print.line.CommonLines;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.CheckLine;
import org.lapmark.print.sheet.CuttingRoles;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.SheetSubject;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Draws the pieces of all sizes stacked, each size on its layer and in its dash. What sizes have in
 * common is drawn once; a cutting line of several sizes is solid. Used for one plan.
 */
public final class NestArtist implements SheetSubject {
  /** What is drawn once, as the smallest size has it, for it says the same in every size. */
  private static final List<String> ONCE = List.of("grainline", "on-fold-sign");

  /** Lines that differ less in length, in millimetres, are alike. */
  private static final double SAME = 0.01;

  private static final String STITCHING = "stitching-line";

  private static final double LEGEND_ROW = 4.6;
  private static final int LEGEND_ROWS = 5;
  private static final double LEGEND_SAMPLE = 13;

  private final Typesetting setting;
  private final Nest nest;
  private final List<String> layers;
  private final Map<Integer, List<Polygon>> outlines = new TreeMap<>();
  private int count;

  public NestArtist(Typesetting setting, Nest nest) {
    this.setting = setting;
    this.nest = nest;
    this.layers =
        nest.sizes().stream()
            .map(size -> setting.wording().text("projector.layer.size", Map.of("size", size)))
            .toList();
  }

  /** All layers in their order. */
  public List<String> layers() {
    List<String> all = new ArrayList<>(layers);
    all.add(stitchingLayer());
    return all;
  }

  public List<String> hidden() {
    return List.of(stitchingLayer());
  }

  /** Every size's own pieces where a sheet has them. */
  public Map<String, List<PlacedPiece>> placed(SheetPlan sheet) {
    Map<String, List<PlacedPiece>> bySize = new LinkedHashMap<>();
    for (int i = 0; i < sheet.pieces().size(); i++) {
      for (NestedPiece.Member member : nest.pieces().get(i).members()) {
        bySize
            .computeIfAbsent(nest.sizes().get(member.size()), unused -> new ArrayList<>())
            .add(
                new PlacedPiece(
                    member.piece(), sheet.pieces().get(i).placement().after(member.stack())));
      }
    }
    return bySize;
  }

  private String stitchingLayer() {
    return setting.text("nest.layer.stitching");
  }

  @Override
  public GradedPattern pattern() {
    return nest.patterns().get(0);
  }

  @Override
  public String size() {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      all.add(i);
    }
    return NestLabel.sizes(setting.wording(), nest, all);
  }

  @Override
  public String key(String key) {
    return "nest." + key;
  }

  @Override
  public List<Piece> pieces() {
    return nest.pieces().stream().map(NestedPiece::extent).toList();
  }

  @Override
  public List<Path> lines(Piece piece) {
    return nest.pieces().stream()
        .filter(nested -> nested.number() == piece.number())
        .flatMap(nested -> nested.members().stream())
        .map(member -> PieceArt.of(new PlacedPiece(member.piece(), member.stack())))
        .flatMap(art -> art.strokes().stream())
        .map(PieceArt.Stroke::path)
        .toList();
  }

  /** Its square has the legend in it. */
  @Override
  public List<Double> squares() {
    return List.of(TestSquare.SIDE);
  }

  @Override
  public PieceLabel label() {
    return new NestLabel(setting, nest);
  }

  @Override
  public Layering layering(PieceArt art) {
    return layering(sizesOf(art.piece().number()), "");
  }

  @Override
  public Layering layering(PieceArt.Stroke stroke) {
    return stroke.layering();
  }

  private List<Integer> sizesOf(int number) {
    return nest.pieces().stream()
        .filter(piece -> piece.number() == number)
        .flatMap(piece -> piece.members().stream())
        .map(NestedPiece.Member::size)
        .toList();
  }

  /** What all sizes have is on no layer. */
  private Layering layering(List<Integer> sizes, String within) {
    return new Layering(
        sizes.size() == layers.size() ? List.of() : sizes.stream().map(layers::get).toList(),
        within);
  }

  @Override
  public boolean hasMarkWords() {
    return false;
  }

  @Override
  public Drawn drawn(SheetLayout layout, boolean projected) {
    List<NestedLines> all = new ArrayList<>();
    for (int i = 0; i < nest.pieces().size(); i++) {
      all.add(nested(nest.pieces().get(i), layout.pieces().get(i)));
    }
    NestNames names =
        new NestNames(
            setting,
            nest.sizes(),
            layout,
            projected,
            owners -> NestLabel.sizes(setting.wording(), nest, owners),
            this::layering);
    List<CheckLine> checks = CheckLine.of(drawn(layout, all, line -> List.of(line.path())));
    names.place(all, checks);
    return new Drawn(drawn(layout, all, names::parts), names.items(), checks);
  }

  /** The layout with all lines of the nest; those to be cut along are broken for names. */
  private SheetLayout drawn(
      SheetLayout layout, List<NestedLines> all, Function<NestedLines.Cutting, List<Path>> broken) {
    List<PieceArt> art = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      NestedPiece piece = nest.pieces().get(i);
      PieceArt extent = layout.art().get(i);
      List<PieceArt.Stroke> strokes = new ArrayList<>(all.get(i).others());
      for (NestedLines.Cutting line : all.get(i).cutting()) {
        String role = CuttingRoles.of(line.owners());
        for (Path part : broken.apply(line)) {
          strokes.add(new PieceArt.Stroke(part, role, layering(line.owners(), "")));
        }
      }
      List<Point> inner = extent.outline();
      if (!piece.core().isEmpty()) {
        inner = new ArrayList<>();
        for (Coordinate coordinate : piece.core().get(0).getExteriorRing().getCoordinates()) {
          inner.add(
              layout.pieces().get(i).placement().apply(new Point(coordinate.x, coordinate.y)));
        }
      }
      art.add(new PieceArt(extent.piece(), strokes, inner, extent.polygon(), extent.bounds()));
    }
    return new SheetLayout(
        layout.pieces(),
        art,
        layout.square(),
        layout.endSquare(),
        layout.cells(),
        layout.joins(),
        layout.columns(),
        layout.rows(),
        layout.arranged());
  }

  private NestedLines nested(NestedPiece piece, PlacedPiece placed) {
    Map<String, List<CommonLines.Owned>> byRole = new LinkedHashMap<>();
    Map<String, List<PieceArt.Stroke>> once = new LinkedHashMap<>();
    List<Polygon> polygons = new ArrayList<>();
    for (NestedPiece.Member member : piece.members()) {
      PieceArt art =
          PieceArt.of(new PlacedPiece(member.piece(), placed.placement().after(member.stack())));
      polygons.add(art.polygon());
      for (String role : ONCE) {
        List<PieceArt.Stroke> strokes =
            art.strokes().stream().filter(stroke -> stroke.role().equals(role)).toList();
        if (!strokes.isEmpty()
            && (!once.containsKey(role) || length(strokes) < length(once.get(role)) - SAME)) {
          once.put(role, strokes);
        }
      }
      for (PieceArt.Stroke stroke : art.strokes()) {
        if (!ONCE.contains(stroke.role())) {
          byRole
              .computeIfAbsent(stroke.role(), unused -> new ArrayList<>())
              .add(new CommonLines.Owned(member.size(), stroke.path()));
        }
      }
    }
    outlines.put(piece.number(), polygons);
    List<Integer> sizes = sizesOf(piece.number());
    List<PieceArt.Stroke> others = new ArrayList<>();
    List<NestedLines.Mark> marks = new ArrayList<>();
    once.values()
        .forEach(
            strokes ->
                strokes.forEach(
                    stroke ->
                        others.add(
                            new PieceArt.Stroke(
                                stroke.path(), stroke.role(), layering(sizes, "")))));
    List<NestedLines.Cutting> cutting = new ArrayList<>();
    byRole.forEach(
        (role, lines) -> {
          for (CommonLines.Shared shared : CommonLines.of(lines)) {
            if (role.equals(CuttingRoles.ALONE)) {
              cutting.add(new NestedLines.Cutting(count++, shared.owners(), shared.path()));
              continue;
            }
            boolean stitching = role.equals(STITCHING);
            others.add(
                new PieceArt.Stroke(
                    shared.path(),
                    role,
                    layering(shared.owners(), stitching ? stitchingLayer() : "")));
            if (!stitching && shared.owners().size() < sizes.size()) {
              marks.add(new NestedLines.Mark(shared.owners(), shared.path(), role));
            }
          }
        });
    return new NestedLines(others, marks, cutting);
  }

  private static double length(List<PieceArt.Stroke> strokes) {
    return strokes.stream().mapToDouble(stroke -> stroke.path().length()).sum();
  }

  @Override
  public String part(PieceArt art, Cell cell) {
    Box core = cell.core();
    Geometry window =
        new GeometryFactory()
            .toGeometry(new Envelope(core.minX(), core.maxX(), core.minY(), core.maxY()));
    List<Integer> sizes = sizesOf(art.piece().number());
    List<Polygon> polygons = outlines.get(art.piece().number());
    List<Integer> here = new ArrayList<>();
    for (int i = 0; i < polygons.size(); i++) {
      if (polygons.get(i).intersects(window)) {
        here.add(sizes.get(i));
      }
    }
    return setting
        .wording()
        .text(
            cell.shown().contains(art.bounds())
                ? "nest.alternative.whole"
                : "nest.alternative.part",
            Map.of(
                "number",
                Integer.toString(art.piece().number()),
                "name",
                art.piece().name(),
                "count",
                here.size(),
                "sizes",
                NestLabel.sizes(setting.wording(), nest, here)));
  }

  @Override
  public List<Item> legend(Box box) {
    List<Item> items = new ArrayList<>();
    Style style = setting.style("size-legend");
    double middle = (setting.lettering().ascent(style) - setting.lettering().descent(style)) / 2;
    int columns = Math.max(1, Math.min(4, (layers.size() + LEGEND_ROWS - 1) / LEGEND_ROWS));
    int rows = (layers.size() + columns - 1) / columns;
    double width = box.width() / columns;
    for (int i = 0; i < layers.size(); i++) {
      double x = box.minX() + (i / rows) * width;
      double y = box.minY() + (i % rows + 0.5) * LEGEND_ROW;
      sample(items, x, y, CuttingRoles.own(i));
      items.add(
          new Item.Lettering(
              layers.get(i),
              new Point(x + LEGEND_SAMPLE + 2, y + middle),
              Item.Alignment.START,
              0,
              "size-legend"));
    }
    double y = box.minY() + rows * LEGEND_ROW;
    sample(items, box.minX(), y + LEGEND_ROW / 2, CuttingRoles.COMMON);
    for (String key : List.of("nest.legend.common", "nest.legend.close", "nest.legend.layers")) {
      boolean first = key.equals("nest.legend.common");
      double left = first ? LEGEND_SAMPLE + 2 : 0;
      TextBlock block =
          setting.block(
              List.of(new TextBlock.Text(setting.text(key), "size-legend")), box.width() - left);
      items.addAll(
          block.in(
              Box.at(box.minX() + left, y + (first ? 0.8 : 0), block.width(), block.height()),
              false));
      y += Math.max(first ? LEGEND_ROW : 0, block.height()) + 0.7;
    }
    return items;
  }

  private static void sample(List<Item> items, double x, double y, String role) {
    Line line = new Line(new Point(x, y), new Point(x + LEGEND_SAMPLE, y));
    items.add(new Item.Shape(List.of(new Path(List.of(line))), role));
  }
}
