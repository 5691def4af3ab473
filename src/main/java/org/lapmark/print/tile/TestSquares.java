package org.lapmark.print.tile;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.arrange.TestSquare;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;

/** The test square with the words in it, and that at the other end of a large sheet. */
record TestSquares(DraftSheet sheet) {
  private static final String TEXT = "test-square-text";
  private static final double MARGIN = 7;
  private static final double SMALL_MARGIN = 4;

  void draw() {
    SheetLayout layout = sheet.layout();
    draw(layout.cells().get(0), layout.square());
    layout
        .endSquare()
        .ifPresent(
            box ->
                layout.cells().stream()
                    .filter(cell -> cell.core().contains(box.expanded(-0.01)))
                    .findFirst()
                    .ifPresent(cell -> draw(cell, box)));
  }

  private void draw(Cell cell, Box box) {
    DraftTile tile = sheet.on(cell);
    tile.add(new Item.Shape(List.of(Path.rectangle(box)), "test-square"));
    tile.take(box);
    boolean small = isSmall(box);
    double margin = small ? SMALL_MARGIN : MARGIN;
    double y = box.minY() + margin;
    for (TextBlock.Text text : texts(box, small)) {
      TextBlock block = sheet.setting().block(List.of(text), box.width() - 2 * margin);
      block
          .in(Box.at(box.minX() + margin, y, block.width(), block.height()), false)
          .forEach(tile::add);
      y += block.height() + (small ? 1.5 : 3);
    }
    if (box == sheet.layout().square() && !small) {
      sheet
          .subject()
          .legend(new Box(box.minX() + margin, y, box.maxX() - margin, box.maxY() - 4))
          .forEach(tile::add);
    }
  }

  /** Whether a square has no room for words on joining. */
  static boolean isSmall(Box square) {
    return square.width() < TestSquare.SIDE - 1;
  }

  /** The square's name, then what to do with it. */
  private List<TextBlock.Text> texts(Box box, boolean small) {
    String key = small ? "tile.square.small." : "tile.square.";
    List<TextBlock.Text> texts = new ArrayList<>();
    texts.add(new TextBlock.Text(sheet.setting().text(key + "name"), "test-square-name"));
    texts.add(new TextBlock.Text(sheet.setting().text(key + "check"), TEXT));
    if (sheet.layout().art().stream()
        .anyMatch(art -> art.polygon().intersects(Cell.polygon(box)))) {
      texts.add(new TextBlock.Text(sheet.setting().text(key + "inside"), TEXT));
    }
    if (!sheet.paper().filling().isPaged()) {
      texts.add(new TextBlock.Text(sheet.setting().text("tile.square.frame"), TEXT));
    }
    if (!small) {
      texts.add(new TextBlock.Text(JoiningWords.text(sheet), TEXT));
    }
    return texts;
  }
}
