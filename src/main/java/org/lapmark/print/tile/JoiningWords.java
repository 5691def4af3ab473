package org.lapmark.print.tile;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.join.JoinNotes;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/** How to join the tiles, beside a square that has no room for so many words. */
record JoiningWords(DraftSheet sheet) {
  /** How wide the words are tried, in millimetres. */
  private static final double[] WIDTHS = {90, 60, 42};

  static String text(DraftSheet sheet) {
    return sheet
        .setting()
        .text(
            sheet.joins().isEmpty()
                ? "tile.square.apart"
                : "tile.square.join." + JoinNotes.way(sheet.tiling().joins()));
  }

  void draw() {
    SheetLayout layout = sheet.layout();
    if (!TestSquares.isSmall(layout.square())) {
      return;
    }
    DraftTile tile = sheet.on(layout.cells().get(0));
    FreeSpace space = tile.space();
    BitSet pieces = new BitSet();
    for (PieceArt art : layout.art()) {
      if (art.bounds().overlaps(tile.cell().shown())) {
        pieces.or(space.inside(art.outline()));
      }
    }
    // Off the pieces, if there is room.
    FreeSpace.Finder off = space.finder(pieces, false);
    FreeSpace.Finder anywhere = space.finder(null, true);
    for (FreeSpace.Finder finder : List.of(off, anywhere)) {
      for (double width : WIDTHS) {
        TextBlock block = sheet.setting().block(text(sheet), "test-square-text", width);
        Optional<Box> found =
            finder.find(block.width(), block.height(), layout.square().centre(), tile.room());
        if (found.isPresent()) {
          tile.write(block, found.get(), false);
          return;
        }
      }
    }
  }
}
