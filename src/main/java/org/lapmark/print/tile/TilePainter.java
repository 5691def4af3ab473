package org.lapmark.print.tile;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.join.CheckLines;
import org.lapmark.print.join.JoinLines;
import org.lapmark.print.join.JoinNotes;
import org.lapmark.print.join.SplitMarks;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.lapmark.print.sheet.Tile;

/**
 * Draws the tiles of one sheet: one thing after the other, each where those before it leave room.
 */
public final class TilePainter {
  private final DraftSheet sheet;

  private TilePainter(DraftSheet sheet) {
    this.sheet = sheet;
  }

  /** The tiles of a sheet on which nothing is drawn yet, in its order. */
  public static List<Tile> paint(DraftSheet sheet) {
    new PieceLines(sheet).draw();
    new TestSquares(sheet).draw();
    new JoinLines(sheet).draw();
    CheckLines checks = new CheckLines(sheet);
    checks.draw();
    new SplitMarks(sheet).draw();
    checks.drawLengths();
    new PieceLabels(sheet).draw();
    new MarkWords(sheet).draw();
    new JoiningWords(sheet).draw();
    new JoinNotes(sheet).draw();
    new BlankWords(sheet).draw();
    new TileCode(sheet).draw();
    TilePainter painter = new TilePainter(sheet);
    return sheet.tiles().values().stream().map(painter::tile).toList();
  }

  private Tile tile(DraftTile draft) {
    Cell cell = draft.cell();
    Paper paper = paper(cell);
    Affine map =
        Affine.translation(
            paper.window().minX() - cell.window().minX(),
            paper.window().minY() - cell.window().minY());
    List<Item> page = new ArrayList<>(new TileFrame(sheet).on(draft, paper.window()));
    draft.items().forEach(item -> page.add(item.transformed(map)));
    page.addAll(new TileCaption(sheet).on(draft));
    return new Tile(
        cell.code(),
        cell.column(),
        cell.row(),
        cell.window(),
        new Drawing(paper.width(), paper.height(), page),
        draft.pieces().stream().map(i -> sheet.layout().pieces().get(i).piece().number()).toList(),
        new TileAlternative(sheet).of(draft),
        cell.core(),
        neighbours(cell),
        draft.isBlank());
  }

  /** A tile's own paper: off a roll, as long as the tile. */
  private Paper paper(Cell cell) {
    double margins = sheet.paper().height() - sheet.paper().window().height();
    return sheet.paper().cut(cell.window().height() + margins);
  }

  private List<String> neighbours(Cell cell) {
    List<Cell> cells = new ArrayList<>();
    List<Join> joins = sheet.joins();
    joins.stream().filter(join -> join.second() == cell).forEach(join -> cells.add(join.first()));
    joins.stream().filter(join -> join.first() == cell).forEach(join -> cells.add(join.second()));
    return cells.stream().map(Cell::code).toList();
  }
}
