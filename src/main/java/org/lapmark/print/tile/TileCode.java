package org.lapmark.print.tile;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/** The codes of joined tiles in large, where they stay visible when all is joined. */
record TileCode(DraftSheet sheet) {
  /** How far a code keeps from lines and words where there is room, in millimetres. */
  private static final double APART = 3;

  void draw() {
    for (DraftTile tile : sheet.tiles().values()) {
      if (sheet.joins().stream()
          .anyMatch(join -> join.first() == tile.cell() || join.second() == tile.cell())) {
        draw(tile);
      }
    }
  }

  private void draw(DraftTile tile) {
    FreeSpace.Finder finder = tile.space().finder(null, true);
    // Away from other words where there is room, so that it isn't read as one of them.
    for (double apart : new double[] {APART, 0}) {
      for (String role : List.of("tile-code", "tile-code-small")) {
        TextBlock block = sheet.setting().line(tile.cell().code(), role);
        Optional<Box> found =
            finder.find(
                block.width() + 2 * apart,
                block.height() + 2 * apart,
                tile.cell().core().centre(),
                tile.room());
        if (found.isPresent()) {
          tile.write(block, found.get().expanded(-apart), false);
          return;
        }
      }
    }
  }
}
