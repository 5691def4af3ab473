package org.lapmark.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.TextBlock;

/** A tile while it is drawn, in millimetres of the sheet. */
public final class DraftTile {
  /** The paper kept free around lines and lettering, in millimetres. */
  public static final double CLEAR = 1.2;

  /** How far lettering keeps from the lines on which tiles meet, in millimetres. */
  private static final double FROM_EDGE = 1.5;

  private final Cell cell;
  private final boolean blank;
  private final FreeSpace space;
  private final List<Item> items = new ArrayList<>();
  private final List<Integer> pieces = new ArrayList<>();

  DraftTile(Cell cell, boolean blank) {
    this.cell = cell;
    this.blank = blank;
    this.space = new FreeSpace(cell.shown());
  }

  public Cell cell() {
    return cell;
  }

  /** Whether it shows the inside of a piece and no line, so that nobody needs it. */
  public boolean isBlank() {
    return blank;
  }

  /** What is drawn so far. */
  public List<Item> items() {
    return items;
  }

  /** Where neither lines nor lettering are so far. */
  public FreeSpace space() {
    return space;
  }

  /** The pieces that it shows part of, by their places in the layout. */
  public List<Integer> pieces() {
    return pieces;
  }

  /** Where it may have lettering. */
  public Box room() {
    return cell.core().expanded(-FROM_EDGE);
  }

  public void add(Item item) {
    items.add(item);
  }

  /** Writes in a box, which nothing else may take. */
  public void write(TextBlock block, Box box, boolean turned) {
    items.addAll(block.in(box, turned));
    take(box);
  }

  /** Keeps a box free of what is still to come. */
  public void take(Box box) {
    space.takeBox(box.expanded(CLEAR));
  }

  /** Keeps the paper around a line free, followed to within so many millimetres. */
  public void take(Path line, double chord) {
    space.takeLine(line.flattened(chord), CLEAR);
  }
}
