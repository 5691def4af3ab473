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
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.Dashes;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.CuttingRoles;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.SheetSubject;
import org.lapmark.print.sheet.Tile;
import org.locationtech.jts.geom.Coordinate;

/**
 * Draws the pieces for a projector, in thick plain lines: one picture on white and one on black,
 * each with a grid of 10 cm and one of 5 in that can be switched off as layers.
 */
final class ProjectorPainter {
  private static final double METRIC_GRID = 100;
  private static final double INCH_GRID = 127;

  private final Typesetting setting;
  private final SheetSubject subject;
  private final Paper paper;
  private final Tiling tiling;
  private final SheetLayout layout;
  private final List<SheetSubject.LineName> names;

  ProjectorPainter(
      Typesetting setting,
      SheetSubject subject,
      Paper paper,
      Tiling tiling,
      SheetSubject.Drawn drawn) {
    this.setting = setting;
    this.subject = subject;
    this.paper = paper;
    this.tiling = tiling;
    this.layout = drawn.layout();
    this.names = drawn.names();
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
    return setting.text(key);
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
    Affine map = Affine.translation(shift.x(), shift.y());
    Layering.Sorter pieces = new Layering.Sorter();
    List<Integer> numbers = new ArrayList<>();
    for (PieceArt art : layout.art()) {
      if (!cell.shown().overlaps(art.bounds())) {
        continue;
      }
      numbers.add(art.piece().number());
      piece(art, cell, map, role, pieces);
    }
    for (SheetSubject.LineName name : names) {
      if (name.cell() == cell) {
        pieces.add(name.layering(), inRole(name.item().transformed(map), role));
      }
    }
    items.addAll(pieces.items());
    String code = inverted ? cell.code() + "i" : cell.code();
    return new Tile(
        code,
        cell.column(),
        cell.row(),
        cell.window(),
        new Drawing(paper.width(), paper.height(), items),
        numbers,
        setting
            .wording()
            .text(
                subject.key(
                    inverted ? "projector.alternative.inverted" : "projector.alternative.white"),
                Map.of("size", subject.size(), "count", numbers.size())),
        cell.core(),
        List.of(),
        false);
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

  private void piece(PieceArt art, Cell cell, Affine map, String role, Layering.Sorter items) {
    Layering last = subject.layering(art);
    for (PieceArt.Stroke stroke : art.strokes()) {
      String lineRole = role + lineRole(stroke.role());
      List<Path> parts =
          Dashes.inside(stroke.path(), setting.style(lineRole), cell.shown()).stream()
              .map(part -> part.transformed(map))
              .toList();
      if (!parts.isEmpty()) {
        items.add(subject.layering(stroke), new Item.Shape(parts, lineRole));
      }
    }
    Coordinate inner = art.polygon().getInteriorPoint().getCoordinate();
    Point at = map.apply(new Point(inner.x, inner.y));
    String number = Integer.toString(art.piece().number());
    items.add(last, new Item.Lettering(number, at, Item.Alignment.MIDDLE, 0, role + "number"));
  }

  /** Sizes and folds keep their dashes; all else is either a cutting line or within one. */
  private static String lineRole(String role) {
    if (role.startsWith(CuttingRoles.OWN)) {
      return role;
    }
    if (role.equals("on-fold")) {
      return "fold";
    }
    return CuttingRoles.isCutting(role) ? "cutting" : "inner";
  }

  private static Item inRole(Item item, String role) {
    if (item instanceof Item.Lettering text) {
      return new Item.Lettering(
          text.text(), text.anchor(), text.alignment(), text.angle(), role + text.role());
    }
    Item.Shape shape = (Item.Shape) item;
    return new Item.Shape(shape.paths(), role + shape.role());
  }
}
