package org.lapmark.print.tile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.lapmark.source.Masthead;
import org.lapmark.wording.Wording;

/** The line at the top of a page: its code, the pattern and what the page shows. */
record TileCaption(DraftSheet sheet) {
  private static final String CODE = "tile-label-bold";

  /** The caption in the page's own coordinates. */
  List<Item> on(DraftTile tile) {
    Paper paper = sheet.paper();
    Typesetting setting = sheet.setting();
    String code = tile.cell().code();
    Box box = paper.window();
    double inset = paper.filling().isPaged() ? 0 : 1;
    double baseline = box.minY() + setting.lettering().ascent(setting.style(CODE)) + inset / 2;
    double left = box.minX() + inset + setting.width(code, CODE) + 3;
    String text = "";
    String role = "tile-label";
    search:
    for (String candidate : captions(tile)) {
      for (String size : List.of("tile-label", "tile-label-7")) {
        text = candidate;
        role = size;
        if (setting.width(candidate, size) <= box.maxX() - left) {
          break search;
        }
      }
    }
    while (text.length() > 1 && setting.width(text, role) > box.maxX() - left) {
      text = text.substring(0, text.offsetByCodePoints(text.length(), -2)) + "…";
    }
    return List.of(
        new Item.Lettering(code, new Point(box.minX() + inset, baseline), Alignment.START, 0, CODE),
        new Item.Lettering(text, new Point(left, baseline), Alignment.START, 0, role));
  }

  /** Ever shorter captions. */
  private List<String> captions(DraftTile tile) {
    Wording wording = sheet.setting().wording();
    Masthead masthead = sheet.subject().pattern().source().masthead();
    Map<String, Object> arguments = new LinkedHashMap<>();
    arguments.put("title", masthead.title().text());
    arguments.put("size", sheet.subject().size());
    arguments.put("edition", masthead.edition().text());
    List<String> captions = new ArrayList<>();
    List<Piece> pieces =
        tile.pieces().stream().map(i -> sheet.layout().pieces().get(i).piece()).toList();
    for (boolean names : new boolean[] {true, false}) {
      List<String> list =
          pieces.stream().map(piece -> names ? named(piece) : "" + piece.number()).toList();
      String text =
          pieces.isEmpty()
              ? wording.text("tile.caption.square")
              : wording.text(
                  "tile.caption.pieces",
                  Map.of("count", pieces.size(), "pieces", String.join(", ", list)));
      Map<String, Object> all = new LinkedHashMap<>(arguments);
      all.put("pieces", text);
      captions.add(wording.text(sheet.subject().key("tile.caption"), all));
    }
    captions.add(wording.text(sheet.subject().key("tile.caption.short"), arguments));
    if (sheet.paper().isCorrected()) {
      captions.replaceAll(this::corrected);
    }
    return captions;
  }

  private String corrected(String caption) {
    return sheet
        .setting()
        .wording()
        .text(
            "tile.caption.corrected",
            Map.of(
                "across",
                sheet.paper().correction().across(),
                "down",
                sheet.paper().correction().down(),
                "caption",
                caption));
  }

  private String named(Piece piece) {
    return sheet
        .setting()
        .wording()
        .text(
            "tile.piece", Map.of("number", Integer.toString(piece.number()), "name", piece.name()));
  }
}
