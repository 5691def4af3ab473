package org.lapmark.print.tile;

import com.ibm.icu.text.ListFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.lapmark.wording.Wording;

/** A tile in words, for readers who can't see it. */
record TileAlternative(DraftSheet sheet) {
  String of(DraftTile tile) {
    Wording wording = sheet.setting().wording();
    ListFormatter list = ListFormatter.getInstance(wording.locale());
    List<String> sides = sides(tile.cell());
    String joins =
        sides.isEmpty()
            ? wording.text("tile.alternative.alone")
            : wording.text("tile.alternative.joins", Map.of("sides", list.format(sides)));
    return wording.text(
        sheet.subject().key("tile.alternative"),
        Map.of(
            "code",
            tile.cell().code(),
            "size",
            sheet.subject().size(),
            "content",
            list.format(content(tile, list)),
            "joins",
            joins));
  }

  private List<String> content(DraftTile tile, ListFormatter list) {
    Wording wording = sheet.setting().wording();
    List<String> content = new ArrayList<>();
    for (int i : tile.pieces()) {
      PieceArt art = sheet.layout().art().get(i);
      String named = sheet.subject().part(art, tile.cell());
      List<String> marks =
          sheet.subject().hasMarkWords() ? MarkWords.labels(sheet).words(art.piece()) : List.of();
      content.add(
          marks.isEmpty()
              ? named
              : wording.text(
                  "tile.alternative.marked", Map.of("piece", named, "marks", list.format(marks))));
    }
    if (tile.isBlank()) {
      content.add(wording.text("tile.alternative.blank"));
    }
    if (tile.cell() == sheet.layout().cells().get(0)) {
      content.add(
          wording.text(
              TestSquares.isSmall(sheet.layout().square())
                  ? "tile.alternative.square.small"
                  : "tile.alternative.square"));
    }
    return content;
  }

  private List<String> sides(Cell cell) {
    List<String> sides = new ArrayList<>();
    for (Join join : sheet.joins()) {
      if (join.second() == cell) {
        sides.add(side(join.sideways() ? "left" : "above", join.first()));
      }
    }
    for (Join join : sheet.joins()) {
      if (join.first() == cell) {
        sides.add(side(join.sideways() ? "right" : "below", join.second()));
      }
    }
    return sides;
  }

  private String side(String side, Cell other) {
    return sheet.setting().wording().text("tile.side." + side, Map.of("code", other.code()));
  }
}
