package org.lapmark.print.sheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.Typesetting;

/**
 * A sheet while its tiles are drawn: each thing that they show draws itself on the tiles, clear of
 * what is there already.
 *
 * @param setting what it takes to write
 * @param subject what is shown
 * @param paper the paper
 * @param tiling how tiles lie and meet
 * @param drawn the pieces as they are drawn
 * @param tiles the tiles in the order of the layout
 */
public record DraftSheet(
    Typesetting setting,
    SheetSubject subject,
    Paper paper,
    Tiling tiling,
    SheetSubject.Drawn drawn,
    Map<Cell, DraftTile> tiles) {
  /** Copies the map, keeping its order. */
  public DraftSheet {
    tiles = Collections.unmodifiableMap(new LinkedHashMap<>(tiles));
  }

  /**
   * A sheet on which nothing is drawn yet.
   *
   * @param setting what it takes to write
   * @param subject what is shown
   * @param paper the paper
   * @param tiling how tiles lie and meet
   * @param drawn the pieces as they are drawn
   * @param blank the tiles that show no line
   * @return the sheet
   */
  public static DraftSheet of(
      Typesetting setting,
      SheetSubject subject,
      Paper paper,
      Tiling tiling,
      SheetSubject.Drawn drawn,
      List<Cell> blank) {
    Map<Cell, DraftTile> tiles = new LinkedHashMap<>();
    drawn
        .layout()
        .cells()
        .forEach(cell -> tiles.put(cell, new DraftTile(cell, blank.contains(cell))));
    return new DraftSheet(setting, subject, paper, tiling, drawn, tiles);
  }

  public SheetLayout layout() {
    return drawn.layout();
  }

  public List<Join> joins() {
    return layout().joins();
  }

  public DraftTile on(Cell cell) {
    return tiles.get(cell);
  }
}
