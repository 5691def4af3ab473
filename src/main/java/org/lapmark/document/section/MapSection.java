package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.document.manual.PageRanges;
import org.lapmark.drawing.Drawing;
import org.lapmark.grade.Piece;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.wording.Wording;

/** Where each tile is, and on which pages each piece. */
final class MapSection implements Section {
  /** The map; absent when no piece needs paper. */
  record Values(Optional<PageMap> map) {}

  /**
   * Where the tiles are, apart when that is in a file of their own, how many are saved, which show
   * no line, and how many of those were left out.
   */
  record PageMap(
      Pictures.Picture drawing,
      boolean apart,
      int firstPage,
      int lastPage,
      int tiles,
      int joins,
      int saved,
      int blank,
      String blankPages,
      int leftOut,
      List<PiecePages> pieces) {}

  /** On which tiles and pages a printed piece is. */
  record PiecePages(int number, String name, String tiles, String pages) {}

  @Override
  public String id() {
    return "map";
  }

  @Override
  public boolean isIn(Content content) {
    return content.map();
  }

  @Override
  public Record values(Setting setting) {
    return new Values(setting.map().map(drawing -> pageMap(setting, drawing)));
  }

  private static PageMap pageMap(Setting setting, Drawing drawing) {
    SheetPlan plan = setting.plan();
    Wording wording = setting.wording();
    int firstTilePage = setting.firstTilePage();
    Map<Integer, List<Integer>> indexes = new TreeMap<>();
    for (int i = 0; i < plan.tiles().size(); i++) {
      for (int number : plan.tiles().get(i).pieces()) {
        indexes.computeIfAbsent(number, key -> new ArrayList<>()).add(i);
      }
    }
    List<PiecePages> pieces = new ArrayList<>();
    for (Piece piece : setting.manual().pattern().pieces()) {
      List<Integer> tiles = indexes.getOrDefault(piece.number(), List.of());
      if (!tiles.isEmpty()) {
        String codes =
            String.join(
                wording.text("list.between"),
                tiles.stream().map(i -> plan.tiles().get(i).code()).toList());
        String pages =
            PageRanges.text(tiles.stream().map(i -> firstTilePage + i).toList(), wording);
        pieces.add(new PiecePages(piece.number(), piece.name(), codes, pages));
      }
    }
    List<Integer> blank = new ArrayList<>();
    for (int i = 0; i < plan.tiles().size(); i++) {
      if (plan.tiles().get(i).blank()) {
        blank.add(firstTilePage + i);
      }
    }
    int last = firstTilePage + plan.tiles().size() - 1;
    return new PageMap(
        setting.pictures().add("map", drawing, "", ""),
        setting.apart(),
        firstTilePage,
        last,
        plan.tiles().size(),
        plan.quality().joins(),
        plan.quality().savedPages(),
        blank.size(),
        PageRanges.text(blank, wording),
        plan.quality().leftOutPages(),
        pieces);
  }
}
