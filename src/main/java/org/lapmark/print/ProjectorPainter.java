package org.lapmark.print;

import java.util.ArrayList;
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
import org.lapmark.grade.GradedPattern;
import org.locationtech.jts.geom.Coordinate;

/**
 * Draws the pieces for a projector, in thick plain lines: one picture on white and one on black,
 * each with a grid of 10 cm and one of 5 in that can be switched off as layers.
 */
final class ProjectorPainter {
  private static final double METRIC_GRID = 100;
  private static final double INCH_GRID = 127;

  private final SheetPlanner planner;
  private final GradedPattern pattern;
  private final Paper paper;
  private final Tiling tiling;
  private final SheetLayout layout;

  ProjectorPainter(
      SheetPlanner planner, GradedPattern pattern, Paper paper, Tiling tiling, SheetLayout layout) {
    this.planner = planner;
    this.pattern = pattern;
    this.paper = paper;
    this.tiling = tiling;
    this.layout = layout;
  }

  SheetPlan plan() {
    List<Tile> tiles = new ArrayList<>();
    for (boolean inverted : new boolean[] {false, true}) {
      for (Cell cell : layout.cells()) {
        tiles.add(tile(cell, inverted));
      }
    }
    return new SheetPlan(
        paper,
        layout.columns(),
        layout.rows(),
        layout.pieces(),
        tiles,
        layout.quality(paper, tiling),
        Optional.of(layout.arranged()));
  }

  private String text(String key) {
    return planner.wording().text(key);
  }

  private Tile tile(Cell cell, boolean inverted) {
    String role = inverted ? "projector-inverted-" : "projector-";
    Box page = new Box(0, 0, paper.width(), paper.height());
    List<Item> items = new ArrayList<>();
    if (inverted) {
      items.add(new Item.Shape(List.of(Path.rectangle(page)), "projector-black"));
    }
    items.add(layer(text("projector.grid.metric"), grid(METRIC_GRID, role + "grid")));
    items.add(layer(text("projector.grid.inch"), grid(INCH_GRID, role + "grid-inch")));
    Point shift =
        new Point(
            paper.window().minX() - cell.window().minX(),
            paper.window().minY() - cell.window().minY());
    List<Item> pieces = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    for (PieceArt art : layout.art()) {
      if (!cell.shown().overlaps(art.bounds())) {
        continue;
      }
      numbers.add(art.piece().number());
      piece(art, cell, shift, role, pieces);
    }
    items.add(
        layer(
            planner
                .wording()
                .text("projector.layer.size", Map.of("size", pattern.variant().size())),
            pieces));
    String code = inverted ? cell.code() + "i" : cell.code();
    return new Tile(
        code,
        cell.column(),
        cell.row(),
        cell.window(),
        new Drawing(paper.width(), paper.height(), items),
        numbers,
        planner
            .wording()
            .text(
                inverted ? "projector.alternative.inverted" : "projector.alternative.white",
                Map.of("size", pattern.variant().size(), "count", numbers.size())),
        cell.core(),
        List.of());
  }

  private static Item layer(String name, List<Item> items) {
    return new Item.Group(null, Affine.translation(0, 0), name, items);
  }

  private List<Item> grid(double step, String role) {
    Box box = paper.window();
    List<Path> lines = new ArrayList<>();
    for (double x = box.minX(); x <= box.maxX() + 1e-9; x += step) {
      lines.add(line(x, box.minY(), x, box.maxY()));
    }
    for (double y = box.minY(); y <= box.maxY() + 1e-9; y += step) {
      lines.add(line(box.minX(), y, box.maxX(), y));
    }
    return List.of(new Item.Shape(lines, role));
  }

  private static Path line(double x1, double y1, double x2, double y2) {
    return new Path(List.of(new Line(new Point(x1, y1), new Point(x2, y2))));
  }

  private void piece(PieceArt art, Cell cell, Point shift, String role, List<Item> items) {
    Affine map = Affine.translation(shift.x(), shift.y());
    for (PieceArt.Stroke stroke : art.strokes()) {
      List<Path> parts =
          CurveClip.inside(stroke.path(), cell.shown()).stream()
              .map(part -> part.transformed(map))
              .toList();
      if (!parts.isEmpty()) {
        boolean cutting = stroke.role().equals("cutting-line");
        items.add(new Item.Shape(parts, role + (cutting ? "cutting" : "inner")));
      }
    }
    Coordinate inner = art.polygon().getInteriorPoint().getCoordinate();
    Point at = new Point(inner.x, inner.y).plus(shift);
    String number = Integer.toString(art.piece().number());
    items.add(new Item.Lettering(number, at, Item.Alignment.MIDDLE, 0, role + "number"));
  }
}
