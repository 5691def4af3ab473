package org.lapmark.print.tile;

import org.lapmark.geometry.Affine;
import org.lapmark.print.piece.MarkLabels;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/** Words beside darts, pleats and the like, once on every tile that shows where they stand. */
record MarkWords(DraftSheet sheet) {
  void draw() {
    // Marks of several sizes stand beside each other; words between them would be in the way.
    if (!sheet.subject().hasMarkWords()) {
      return;
    }
    MarkLabels labels = labels(sheet);
    for (int i = 0; i < sheet.layout().art().size(); i++) {
      PieceArt art = sheet.layout().art().get(i);
      Affine map = sheet.layout().pieces().get(i).placement();
      for (DraftTile tile : sheet.tiles().values()) {
        if (tile.pieces().contains(i)) {
          labels.on(art, map, tile.space(), tile.room()).forEach(tile::add);
        }
      }
    }
  }

  static MarkLabels labels(DraftSheet sheet) {
    return new MarkLabels(sheet.setting(), sheet.subject().pattern().source().masthead().form());
  }
}
