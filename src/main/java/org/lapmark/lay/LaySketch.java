package org.lapmark.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.PolygonExtracter;

/** A way to draw a layout. */
final class LaySketch {
  /** A scale larger by no more than this is no better. */
  private static final double LITTLE = 1.05;

  private static final double HATCH = 1.6;
  private static final double KEY_GAP = 5;
  private static final double FLATNESS = 0.02;

  private final LayWords words;
  private final Lay lay;
  private final boolean turned;
  private final double scale;
  private final LayRows rows;
  private final double room;
  private final double text;
  private final GeometryFactory factory = new GeometryFactory();
  private final Set<Integer> named = new LinkedHashSet<>();
  private Board board;

  /**
   * Prepares a drawing.
   *
   * @param words the words on paper
   * @param board an empty board
   * @param lay the layout
   * @param turned whether the cloth runs down the page
   * @param scale how large it is drawn
   * @param rows its rows
   * @param room how far right something beyond the end of a row may stand, in millimetres
   */
  LaySketch(
      LayWords words,
      Board board,
      Lay lay,
      boolean turned,
      double scale,
      LayRows rows,
      double room) {
    this.words = words;
    this.board = board;
    this.lay = lay;
    this.turned = turned;
    this.scale = scale;
    this.rows = rows;
    this.room = room;
    this.text = board.height(Board.LABEL);
  }

  int rows() {
    return rows.count();
  }

  /** Larger by more than a little, or else lower. */
  boolean betterThan(LaySketch other) {
    return scale > other.scale * LITTLE
        || (scale > other.scale / LITTLE && clothHeight() < other.clothHeight());
  }

  private double clothHeight() {
    return scale * (turned ? lay.length() : rows() * lay.width().usable());
  }

  boolean hasRoomForNumbers() {
    Affine map = Affine.scaling(scale, scale);
    return lay.placements().stream()
        .allMatch(
            placement -> {
              LabelFit fit = new LabelFit(polygon(placement.outline().transformed(map)));
              Board.Block number = LayLabels.number(words, placement);
              return fit.place(
                      board.width(number) + LayLabels.INSIDE,
                      board.height(number) + LayLabels.INSIDE)
                  .isPresent();
            });
  }

  Drawing draw(double width) {
    Board page = board.another();
    for (int row = 0; row < rows(); row++) {
      // Each row is drawn by itself, since what stands above its cloth is known only then.
      board = board.another();
      row(row);
      double y = row == 0 ? 0 : page.bounds().maxY() + 2 * Board.AIR - board.bounds().minY();
      page.addAll(board, new Point(0, y));
    }
    board = page;
    if (rows() > 1) {
      String all =
          words
              .wording()
              .text(
                  "lay.length-in-all",
                  Map.of("length", LengthText.atLeast(lay.length(), words.form())));
      double y = board.bounds().maxY() + 2 * Board.AIR + text / 2;
      board.text(
          all,
          new Point(board.bounds().minX() + board.width(all, Board.LABEL) / 2, y),
          0,
          Board.LABEL);
    }
    key(width);
    Box bounds = board.bounds();
    Affine shift = Affine.translation(Board.EDGE - bounds.minX(), Board.EDGE - bounds.minY());
    return new Drawing(
        Math.max(width, bounds.width() + 2 * Board.EDGE),
        bounds.height() + 2 * Board.EDGE,
        board.items().stream().map(item -> item.transformed(shift)).toList());
  }

  private void row(int row) {
    double from = rows.from(row);
    double across = lay.width().usable() * scale;
    double along = rows.length(row) * scale;
    Box cloth = turned ? Box.at(0, 0, across, along) : Box.at(0, 0, along, across);
    Affine map =
        turned
            ? new Affine(0, scale, -scale, 0, across, -from * scale)
            : new Affine(scale, 0, 0, scale, -from * scale, 0);
    board.shape(Path.rectangle(cloth), "lay-cloth");
    Map<Placement, Geometry> seen = new LinkedHashMap<>();
    List<Item> items = new ArrayList<>();
    Geometry window = factory.toGeometry(envelope(cloth));
    for (Placement placement : lay.placements()) {
      Path outline = placement.outline().transformed(map);
      if (!outline.bounds().overlaps(cloth.expanded(-Path.JOIN_TOLERANCE))) {
        continue;
      }
      Geometry whole = polygon(outline);
      boolean inside = cloth.expanded(1e-3).contains(outline.bounds());
      Geometry part = inside ? whole : areas(whole.intersection(window));
      if (part.getArea() > 0) {
        seen.put(placement, part);
        piece(placement, outline, items);
        fold(placement, map, items);
      }
    }
    Path clip = rows() > 1 ? Path.rectangle(cloth) : null;
    board.add(new Item.Group(clip, Affine.IDENTITY, null, items), cloth);
    edges(row, cloth);
    // Beyond the end of a cloth that lies along the page there is room.
    double right = turned ? cloth.maxX() : Math.max(cloth.maxX(), room);
    LayLabels.Taken taken = new LayLabels(words, board, rows, named, right).write(row, seen, cloth);
    new LayDimensions(lay, words, board, turned).draw(cloth, rows.length(row), row == 0, taken);
  }

  /** Where a shape only touches the end of a row, lines and points come with the areas. */
  private Geometry areas(Geometry geometry) {
    return factory.buildGeometry(PolygonExtracter.getPolygons(geometry));
  }

  private void piece(Placement placement, Path outline, List<Item> items) {
    String role = placement.reversed() ? "lay-piece-reversed" : "lay-piece";
    items.add(new Item.Shape(List.of(outline), role));
    if (placement.reversed()) {
      Box box = outline.bounds();
      List<Path> lines = new ArrayList<>();
      for (double x = Math.ceil((box.minX() - box.height()) / HATCH) * HATCH;
          x < box.maxX();
          x += HATCH) {
        lines.add(
            new Path(
                List.of(
                    new Line(new Point(x, box.maxY()), new Point(x + box.height(), box.minY())))));
      }
      items.add(
          new Item.Group(
              outline, Affine.IDENTITY, null, List.of(new Item.Shape(lines, "lay-hatch"))));
      items.add(new Item.Shape(List.of(outline), "lay-outline"));
    }
  }

  /** Where a piece is folded whose paper is a half. */
  private void fold(Placement placement, Affine map, List<Item> items) {
    Affine place = map.after(placement.map());
    List<Path> folds =
        placement
            .piece()
            .half()
            .map(half -> List.of(new Path(List.of(half.fold()))))
            .orElse(placement.piece().shape().folds());
    folds.forEach(fold -> items.add(new Item.Shape(List.of(fold.transformed(place)), "lay-fold")));
  }

  private void edges(int row, Box cloth) {
    Point topLeft = new Point(cloth.minX(), cloth.minY());
    Point topRight = new Point(cloth.maxX(), cloth.minY());
    Point bottomLeft = new Point(cloth.minX(), cloth.maxY());
    Point bottomRight = new Point(cloth.maxX(), cloth.maxY());
    String selvedge = lay.cloth().hasGrain() ? "lay-selvedge" : "lay-frame";
    String first = row == 0 ? "lay-frame" : "lay-break";
    String last = row == rows() - 1 ? "lay-frame" : "lay-break";
    board.line(topLeft, turned ? topRight : bottomLeft, first);
    board.line(turned ? bottomLeft : topRight, bottomRight, last);
    board.line(topLeft, turned ? bottomLeft : topRight, selvedge);
    board.line(turned ? topRight : bottomLeft, bottomRight, selvedge);
  }

  /** What isn't written inside the pieces, in lines below. */
  private void key(double width) {
    Map<Integer, String> names = new LinkedHashMap<>();
    boolean reversed = false;
    for (Placement placement : lay.placements()) {
      reversed |= placement.reversed();
      if (!named.contains(placement.piece().number())) {
        names.put(placement.piece().number(), placement.piece().name());
      }
    }
    List<String> entries = new ArrayList<>();
    names.forEach(
        (number, name) ->
            entries.add(
                words
                    .wording()
                    .text(
                        "lay.key-piece",
                        Map.of("number", Integer.toString(number), "name", name))));
    if (reversed) {
      entries.add(words.wording().text("lay.key-reversed"));
    }
    double left = board.bounds().minX();
    double x = left;
    double y = board.bounds().maxY() + 2 * Board.AIR + text / 2;
    for (String entry : entries) {
      double wide = board.width(entry, Board.LABEL);
      if (x > left && x + wide > left + width - 2 * Board.EDGE) {
        x = left;
        y += text + Board.AIR / 2;
      }
      board.text(entry, new Point(x + wide / 2, y), 0, Board.LABEL);
      x += wide + KEY_GAP;
    }
  }

  private Geometry polygon(Path path) {
    List<Point> points = path.flattened(FLATNESS);
    Coordinate[] ring = new Coordinate[points.size()];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
    }
    ring[ring.length - 1] = ring[0].copy();
    return factory.createPolygon(ring);
  }

  private static Envelope envelope(Box box) {
    return new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY());
  }
}
