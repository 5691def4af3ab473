package org.lapmark.print.sheet;

import java.util.List;
import java.util.Map;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.arrange.TestSquare;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.piece.Typesetting;

/** The pieces of one size, as they are. */
public record OneSize(Typesetting setting, GradedPattern pattern) implements SheetSubject {
  @Override
  public String size() {
    return pattern.variant().size();
  }

  @Override
  public String key(String key) {
    return key;
  }

  @Override
  public List<Piece> pieces() {
    return pattern.pieces().stream().filter(piece -> piece.statedSize().isEmpty()).toList();
  }

  @Override
  public List<Path> lines(Piece piece) {
    return SheetLayout.lines(piece);
  }

  @Override
  public List<Double> squares() {
    return List.of(TestSquare.SIDE, TestSquare.SMALL_SIDE);
  }

  @Override
  public PieceLabel label() {
    return new PieceLabel(setting, pattern);
  }

  @Override
  public boolean hasMarkWords() {
    return true;
  }

  @Override
  public Drawn drawn(SheetLayout layout, boolean projected) {
    return new Drawn(layout, List.of(), CheckLine.of(layout));
  }

  @Override
  public Layering layering(PieceArt art) {
    return layer();
  }

  @Override
  public Layering layering(PieceArt.Stroke stroke) {
    return layer();
  }

  private Layering layer() {
    return new Layering(
        List.of(setting.wording().text("projector.layer.size", Map.of("size", size()))), "");
  }

  @Override
  public String part(PieceArt art, Cell cell) {
    return setting
        .wording()
        .text(
            "tile.alternative." + PiecePart.of(art, cell).key(),
            Map.of("number", Integer.toString(art.piece().number()), "name", art.piece().name()));
  }

  @Override
  public List<Item> legend(Box box) {
    return List.of();
  }
}
