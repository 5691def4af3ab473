package org.lapmark.print.tile;

import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Path;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.line.Dashes;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.DraftTile;
import org.lapmark.print.sheet.SheetSubject;

/** The lines of the pieces, and what is written along them. */
record PieceLines(DraftSheet sheet) {
  /** How closely lines are followed to keep free of them, in millimetres. */
  private static final double CHORD = 0.2;

  void draw() {
    sheet.tiles().values().forEach(this::draw);
  }

  private void draw(DraftTile tile) {
    Layering.Sorter sorter = new Layering.Sorter();
    List<PieceArt> pieces = sheet.layout().art();
    for (int i = 0; i < pieces.size(); i++) {
      PieceArt art = pieces.get(i);
      if (tile.cell().shown().overlaps(art.bounds())) {
        if (tile.cell().core().overlaps(art.bounds())
            && art.polygon().intersects(Cell.polygon(tile.cell().core()))) {
          tile.pieces().add(i);
        }
        art.strokes().forEach(stroke -> draw(stroke, tile, sorter));
      }
    }
    for (SheetSubject.LineName name : sheet.drawn().names()) {
      if (name.cell() == tile.cell()) {
        sorter.add(name.layering(), name.item());
        tile.take(name.box());
      }
    }
    sorter.items().forEach(tile::add);
  }

  private void draw(PieceArt.Stroke stroke, DraftTile tile, Layering.Sorter sorter) {
    List<Path> parts =
        Dashes.inside(stroke.path(), sheet.setting().style(stroke.role()), tile.cell().shown());
    if (!parts.isEmpty()) {
      sorter.add(stroke.layering(), new Item.Shape(parts, stroke.role()));
    }
    CurveClip.inside(stroke.path(), tile.cell().shown()).forEach(part -> tile.take(part, CHORD));
  }
}
