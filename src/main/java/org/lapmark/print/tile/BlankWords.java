package org.lapmark.print.tile;

import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/** Says that nobody needs a tile. */
record BlankWords(DraftSheet sheet) {
  /** How wide the words are, in millimetres. */
  private static final double WIDTH = 90;

  void draw() {
    TextBlock block =
        sheet.setting().block(sheet.setting().text("tile.blank"), "test-square-text", WIDTH);
    for (DraftTile tile : sheet.tiles().values()) {
      if (tile.isBlank()) {
        tile.space()
            .finder(null, true)
            .find(block.width(), block.height(), tile.cell().core().centre(), tile.room())
            .ifPresent(box -> tile.write(block, box, false));
      }
    }
  }
}
