package org.lapmark.print.tile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.locationtech.jts.geom.Coordinate;

/**
 * The lettering of the pieces: in full on one tile, briefly on the others. What has no room in its
 * piece stands beside it.
 */
record PieceLabels(DraftSheet sheet) {
  void draw() {
    PieceLabel label = sheet.subject().label();
    LabelsOutside outside = new LabelsOutside(sheet);
    for (int i = 0; i < sheet.layout().art().size(); i++) {
      PieceArt art = sheet.layout().art().get(i);
      int index = i;
      List<DraftTile> tiles =
          sheet.tiles().values().stream()
              .filter(tile -> tile.pieces().contains(index))
              .sorted(
                  Comparator.<DraftTile>comparingInt(tile -> tile.isBlank() ? 1 : 0)
                      .thenComparingDouble(
                          tile -> tile.cell().core().centre().distance(middle(art))))
              .toList();
      List<Supplier<PieceLabel.Form>> full = label.full(art.piece());
      // On a tile that everybody prints, if there is room.
      List<DraftTile> printed = tiles.stream().filter(tile -> !tile.isBlank()).toList();
      Optional<DraftTile> home = inside(full, art, printed, outside);
      if (home.isEmpty() && printed.size() < tiles.size()) {
        home = inside(full, art, tiles, outside);
      }
      if (home.isEmpty()) {
        Optional<LabelsOutside.Note> note = outside.find(full, art, tiles);
        note.ifPresent(
            found -> {
              boolean numbered =
                  !found.clear()
                      && inside(label.number(art.piece()), art, List.of(found.tile()), outside)
                          .isPresent();
              outside.write(found, !numbered);
            });
        home = note.map(LabelsOutside.Note::tile);
      }
      for (DraftTile tile : tiles) {
        if (home.filter(tile::equals).isEmpty()) {
          inside(label.brief(art.piece()), art, List.of(tile), outside);
        }
      }
    }
  }

  private static Point middle(PieceArt art) {
    Coordinate centre = art.polygon().getCentroid().getCoordinate();
    return new Point(centre.x, centre.y);
  }

  /** Puts lettering inside a piece and inside one of some tiles; gives the tile. */
  private static Optional<DraftTile> inside(
      List<Supplier<PieceLabel.Form>> forms,
      PieceArt art,
      List<DraftTile> tiles,
      LabelsOutside outside) {
    List<FreeSpace.Finder> finders = new ArrayList<>();
    for (DraftTile tile : tiles) {
      FreeSpace space = tile.space().part(art.bounds());
      finders.add(space.finder(space.inside(art.outline()), true));
    }
    Point middle = middle(art);
    for (Supplier<PieceLabel.Form> supplier : forms) {
      PieceLabel.Form form = supplier.get();
      Box best = null;
      DraftTile home = null;
      for (int i = 0; i < tiles.size(); i++) {
        Optional<Box> found =
            finders.get(i).find(form.width(), form.height(), middle, tiles.get(i).room());
        if (found.isPresent()
            && (best == null
                || found.get().centre().distance(middle) < best.centre().distance(middle))) {
          best = found.get();
          home = tiles.get(i);
        }
      }
      if (best != null) {
        outside.put(form, home, best);
        return Optional.of(home);
      }
    }
    return Optional.empty();
  }
}
