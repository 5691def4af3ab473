package org.lapmark.print.tile;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Finds free paper near a piece that is too small for its lettering: with a leader where one can be
 * drawn that is short and crosses nothing, else as it comes. Used for one sheet.
 */
final class LabelsOutside {
  private static final double LEADER_DOT = 0.6;
  private static final double LONGEST_LEADER = 30;

  /** How far from a piece its lettering is looked for a place, in millimetres. */
  private static final double FAR = 300;

  /** How far a leader reaches into a piece, in millimetres. */
  private static final double LEADER_REACH = 2;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final DraftSheet sheet;

  /** Where the pieces' lettering stands so far, by tile. */
  private final Map<Cell, List<Box>> lettered = new LinkedHashMap<>();

  LabelsOutside(DraftSheet sheet) {
    this.sheet = sheet;
    sheet.tiles().keySet().forEach(cell -> lettered.put(cell, new ArrayList<>()));
  }

  /**
   * A place for lettering outside its piece.
   *
   * @param tile the tile
   * @param form the lettering
   * @param box its place
   * @param dot the point in the piece that it speaks of
   * @param clear whether its leader is short and crosses nothing
   */
  record Note(DraftTile tile, PieceLabel.Form form, Box box, Point dot, boolean clear) {}

  /** Puts lettering in its place. */
  void put(PieceLabel.Form form, DraftTile tile, Box box) {
    tile.write(form.block(), box, form.turned());
    lettered.get(tile.cell()).add(box);
  }

  /** Puts lettering in its place outside of its piece. */
  void write(Note note, boolean led) {
    if (led) {
      Path line = leader(note.box(), note.dot());
      note.tile().add(new Item.Shape(List.of(line), "leader"));
      note.tile().add(new Item.Shape(List.of(Path.circle(note.dot(), LEADER_DOT)), "leader-dot"));
      note.tile().take(line, 0.2);
    }
    put(note.form(), note.tile(), note.box());
  }

  /** A place with a clear leader, else the first place that there is. */
  Optional<Note> find(List<Supplier<PieceLabel.Form>> forms, PieceArt art, List<DraftTile> tiles) {
    Note first = null;
    for (DraftTile tile : tiles) {
      Geometry part = art.polygon().intersection(Cell.polygon(tile.room()));
      if (part.isEmpty()) {
        continue;
      }
      Coordinate inner = part.getInteriorPoint().getCoordinate();
      Point dot = new Point(inner.x, inner.y);
      FreeSpace.Finder finder = offPieces(tile, dot);
      for (Supplier<PieceLabel.Form> supplier : forms) {
        PieceLabel.Form form = supplier.get();
        if (form.turned()) {
          continue;
        }
        Optional<Box> box = finder.find(form.width(), form.height(), dot, tile.room());
        if (box.isEmpty()) {
          continue;
        }
        Point tip = tip(leader(box.get(), dot), art);
        Note note = new Note(tile, form, box.get(), tip, isClear(tile, box.get(), tip, art));
        if (note.clear()) {
          return Optional.of(note);
        }
        first = first == null ? note : first;
      }
    }
    return Optional.ofNullable(first);
  }

  /** The paper of a tile around a point, off all pieces. */
  private FreeSpace.Finder offPieces(DraftTile tile, Point dot) {
    Box around = new Box(dot.x(), dot.y(), dot.x(), dot.y()).expanded(FAR);
    FreeSpace space = tile.space().part(around);
    BitSet pieces = new BitSet();
    for (PieceArt other : sheet.layout().art()) {
      if (other.bounds().overlaps(tile.cell().shown()) && other.bounds().overlaps(around)) {
        pieces.or(space.inside(other.outline()));
      }
    }
    return space.finder(pieces, false);
  }

  /** The point of a leader just inside the outline. */
  private static Point tip(Path leader, PieceArt art) {
    double length = leader.length();
    for (double at = 0; at < length; at += 0.25) {
      Point point = leader.atLength(at);
      if (art.polygon().contains(FACTORY.createPoint(new Coordinate(point.x(), point.y())))) {
        return leader.atLength(Math.min(length, at + LEADER_REACH));
      }
    }
    return leader.end();
  }

  private boolean isClear(DraftTile tile, Box box, Point dot, PieceArt own) {
    Path line = leader(box, dot);
    if (line.length() > LONGEST_LEADER) {
      return false;
    }
    Geometry segment =
        FACTORY.createLineString(
            line.flattened(1).stream()
                .map(point -> new Coordinate(point.x(), point.y()))
                .toArray(Coordinate[]::new));
    SheetLayout layout = sheet.layout();
    return !segment.intersects(Cell.polygon(layout.square()))
        && layout.art().stream().noneMatch(art -> art != own && art.polygon().intersects(segment))
        && lettered.get(tile.cell()).stream()
            .noneMatch(other -> segment.intersects(Cell.polygon(other)));
  }

  private static Path leader(Box box, Point dot) {
    Point from =
        new Point(
            Math.max(box.minX(), Math.min(box.maxX(), dot.x())),
            Math.max(box.minY(), Math.min(box.maxY(), dot.y())));
    Point start = from.plus(dot.minus(from).unit().times(Math.min(0.8, from.distance(dot))));
    return Path.polyline(List.of(start, dot));
  }
}
