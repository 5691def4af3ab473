package org.lapmark.print.map;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.paper.Correction;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.locationtech.jts.geom.Coordinate;

/** Draws a sheet in small. */
public final class PageMap {
  /** The largest scale: a sheet of one page isn't drawn larger than this. */
  static final double MOST = 0.3;

  private static final double CLEAR = 0.5;

  private final Typesetting setting;
  private final SheetPlan plan;
  private final Map<String, Integer> pages;

  public PageMap(Typesetting setting, SheetPlan plan, Map<String, Integer> pages) {
    this.setting = setting;
    this.plan = plan;
    this.pages = pages;
  }

  public Drawing draw(double width, double height) {
    if (plan.tiles().isEmpty()) {
      return new Drawing(width, 0, List.of());
    }
    Box sheet = plan.tiles().get(0).window();
    for (Tile tile : plan.tiles()) {
      sheet = sheet.union(tile.window());
    }
    double margin = 0.5;
    double scale =
        Math.min(
            MOST,
            Math.min((width - 2 * margin) / sheet.width(), (height - 2 * margin) / sheet.height()));
    Affine map =
        Affine.translation(margin, margin)
            .after(Affine.scaling(scale, scale))
            .after(Affine.translation(-sheet.minX(), -sheet.minY()));
    double drawnWidth = sheet.width() * scale + 2 * margin;
    double drawnHeight = sheet.height() * scale + 2 * margin;
    List<Item> items = new ArrayList<>();
    // What words may cover at need, and what they may not.
    FreeSpace lines = new FreeSpace(new Box(0, 0, drawnWidth, drawnHeight));
    FreeSpace words = new FreeSpace(new Box(0, 0, drawnWidth, drawnHeight));
    for (PlacedPiece placed : plan.pieces()) {
      PieceArt art = PieceArt.of(placed);
      // The cutting line of a piece with a fold doesn't close.
      Path outline =
          placed.piece().isFolded()
              ? Path.polyline(art.outline())
              : art.strokes().get(art.strokes().size() - 1).path();
      items.add(new Item.Shape(List.of(outline.transformed(map)), "map-piece"));
      lines.takeLine(art.outline().stream().map(map::apply).toList(), CLEAR);
    }
    testSquare(map)
        .ifPresent(
            square -> {
              items.add(new Item.Shape(List.of(square), "map-square"));
              // A code inside would be taken for the square's name.
              lines.takeBox(square.bounds().expanded(CLEAR));
            });
    for (Tile tile : plan.tiles()) {
      tile(tile, map, items);
    }
    for (Tile tile : plan.tiles()) {
      code(tile, map, lines, words, items);
    }
    for (Tile tile : plan.tiles()) {
      Box core = core(tile);
      Point right = map.apply(new Point(core.maxX(), core.minY()));
      Point end = map.apply(new Point(core.maxX(), core.maxY()));
      lines.takeLine(List.of(right, end, map.apply(new Point(core.minX(), core.maxY()))), CLEAR);
    }
    for (PlacedPiece placed : plan.pieces()) {
      number(placed, map, lines, words, items);
    }
    return new Drawing(drawnWidth, drawnHeight, items);
  }

  private Optional<Path> testSquare(Affine map) {
    Tile first = plan.tiles().get(0);
    Correction correction = plan.paper().correction();
    Affine toSheet =
        Affine.translation(
                first.window().minX() - plan.paper().asPrinted().window().minX(),
                first.window().minY() - plan.paper().asPrinted().window().minY())
            .after(Affine.scaling(correction.scaleX(), correction.scaleY()));
    return first.page().items().stream()
        .filter(item -> item instanceof Item.Shape shape && shape.role().equals("test-square"))
        .map(item -> ((Item.Shape) item).paths().get(0))
        .map(path -> path.transformed(map.after(toSheet)))
        .findFirst();
  }

  private boolean joined(Tile tile, int columns, int rows) {
    return plan.tiles().stream()
        .anyMatch(
            other ->
                other.column() == tile.column() + columns
                    && other.row() == tile.row() + rows
                    && tile.joined().contains(other.code()));
  }

  /**
   * What a tile shows that no neighbour does, in sheet coordinates; the caption's strip is part of
   * it where nothing lies above.
   */
  private Box core(Tile tile) {
    Box core = tile.core();
    double top = joined(tile, 0, -1) ? core.minY() : tile.window().minY();
    return new Box(core.minX(), top, core.maxX(), core.maxY());
  }

  private void tile(Tile tile, Affine map, List<Item> items) {
    Box core = core(tile);
    Point a = map.apply(new Point(core.minX(), core.minY()));
    Point b = map.apply(new Point(core.maxX(), core.maxY()));
    boolean joinedLeft = joined(tile, -1, 0);
    boolean joinedTop = joined(tile, 0, -1);
    boolean joinedRight = joined(tile, 1, 0);
    boolean joinedBottom = joined(tile, 0, 1);
    side(items, new Point(a.x(), a.y()), new Point(a.x(), b.y()), joinedLeft, false);
    side(items, new Point(a.x(), a.y()), new Point(b.x(), a.y()), joinedTop, false);
    side(items, new Point(b.x(), a.y()), new Point(b.x(), b.y()), joinedRight, true);
    side(items, new Point(a.x(), b.y()), new Point(b.x(), b.y()), joinedBottom, true);
  }

  /** Draws an outer side, or the line of a join once. */
  private static void side(List<Item> items, Point a, Point b, boolean joined, boolean first) {
    if (!joined || first) {
      items.add(
          new Item.Shape(
              List.of(new Path(List.of(new Line(a, b)))), joined ? "map-join" : "map-tile"));
    }
  }

  /** In the upper left corner, or as near to it as no line of a piece runs. */
  private void code(Tile tile, Affine map, FreeSpace lines, FreeSpace words, List<Item> items) {
    Box core = core(tile);
    Point corner = map.apply(new Point(core.minX(), core.minY())).plus(new Point(1.2, 1));
    Point end = map.apply(new Point(core.maxX(), core.maxY())).minus(new Point(1, 1));
    List<TextBlock.Text> texts = new ArrayList<>();
    texts.add(new TextBlock.Text(tile.code(), "map-code"));
    Integer page = pages.get(tile.code());
    if (page != null) {
      texts.add(
          new TextBlock.Text(
              setting.wording().text("paper.map.page", Map.of("page", Integer.toString(page))),
              "map-page"));
    }
    if (tile.blank()) {
      texts.add(new TextBlock.Text(setting.text("paper.map.blank"), "map-page"));
    }
    TextBlock block = setting.block(texts, 1000);
    Box box = Box.at(corner.x(), corner.y(), block.width(), block.height());
    FreeSpace.Finder finder = lines.finder(null, true);
    if (!finder.isFree(box)) {
      Box within =
          new Box(
              corner.x(), corner.y(), Math.max(corner.x(), end.x()), Math.max(corner.y(), end.y()));
      box = finder.find(block.width(), block.height(), box.centre(), within).orElse(box);
    }
    items.addAll(block.in(box, false));
    lines.takeBox(box.expanded(CLEAR));
    words.takeBox(box.expanded(CLEAR));
  }

  /** Inside its piece, off lines or at least off words; beside it only where there is no room. */
  private void number(
      PlacedPiece placed, Affine map, FreeSpace lines, FreeSpace words, List<Item> items) {
    PieceArt art = PieceArt.of(placed);
    Coordinate inner = art.polygon().getInteriorPoint().getCoordinate();
    Coordinate centroid = art.polygon().getCentroid().getCoordinate();
    Coordinate chosen = art.polygon().contains(art.polygon().getCentroid()) ? centroid : inner;
    Point near = map.apply(new Point(chosen.x, chosen.y));
    TextBlock block =
        setting.block(
            List.of(new TextBlock.Text("" + placed.piece().number(), "map-number")), 1000);
    List<Point> outline = art.outline().stream().map(map::apply).toList();
    BitSet inside = lines.inside(outline);
    Optional<Box> box =
        lines
            .finder(inside, true)
            .find(block.width(), block.height(), near)
            .or(() -> words.finder(inside, true).find(block.width(), block.height(), near))
            .or(() -> words.finder(null, true).find(block.width(), block.height(), near));
    Box place =
        box.orElse(
            Box.at(
                near.x() - block.width() / 2,
                near.y() - block.height() / 2,
                block.width(),
                block.height()));
    items.addAll(block.in(place, false));
    lines.takeBox(place.expanded(CLEAR));
    words.takeBox(place.expanded(CLEAR));
  }
}
