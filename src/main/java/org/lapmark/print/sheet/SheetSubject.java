package org.lapmark.print.sheet;

import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;

/** What a sheet shows: the pieces of one size, or those of all sizes stacked. */
public interface SheetSubject {
  /** The pattern, for what all sizes have in common. */
  GradedPattern pattern();

  /** The size, or the sizes in one phrase. */
  String size();

  /** The key of words that are another for one size and for several. */
  String key(String key);

  /** What is arranged. */
  List<Piece> pieces();

  /** All lines of a piece that is arranged, in its own coordinates. */
  List<Path> lines(Piece piece);

  /** The sides that a test square may have, the preferred one first, in millimetres. */
  List<Double> squares();

  /** The lettering of pieces. */
  PieceLabel label();

  /** Whether words stand beside marks; between those of several sizes they'd be in the way. */
  boolean hasMarkWords();

  /** Draws the pieces where they were arranged. */
  Drawn drawn(SheetLayout layout, boolean projected);

  /**
   * What is drawn of a layout.
   *
   * @param layout the layout with its pieces as they are drawn
   * @param names what is written along lines, tile by tile
   * @param checks the lines that prove joins right
   */
  record Drawn(SheetLayout layout, List<LineName> names, List<CheckLine> checks) {
    /** Copies the lists. */
    public Drawn {
      names = List.copyOf(names);
      checks = List.copyOf(checks);
    }
  }

  /**
   * Something written at a line.
   *
   * @param cell the tile
   * @param item the lettering or line
   * @param box the room it takes
   * @param layering its layers
   */
  record LineName(Cell cell, Item item, Box box, Layering layering) {}

  /** The layers that a piece's lettering belongs to in a projector's picture. */
  Layering layering(PieceArt art);

  /** The layers that a piece's line belongs to in a projector's picture. */
  Layering layering(PieceArt.Stroke stroke);

  /** A part of a piece on a tile, in words. */
  String part(PieceArt art, Cell cell);

  /** Explains the lines in a box. */
  List<Item> legend(Box box);
}
