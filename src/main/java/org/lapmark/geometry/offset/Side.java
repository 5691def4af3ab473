package org.lapmark.geometry.offset;

import org.lapmark.geometry.Path;

/**
 * One side of an outline. Where its distance changes it does so evenly along the side's length.
 *
 * @param path the side, on a closed outline that runs clockwise on paper
 * @param distance how far its start moves in millimetres along the side's normal, positive outwards
 * @param endDistance how far its end moves
 * @param fold whether it is a fold: then it doesn't move, and its line goes straight on
 * @param joint how it is joined to the next side, when moved outwards
 */
public record Side(Path path, double distance, double endDistance, boolean fold, Joint joint) {
  /**
   * A side that moves by one distance.
   *
   * @param path the side
   * @param distance how far it moves in millimetres, positive outwards
   */
  public Side(Path path, double distance) {
    this(path, distance, distance, false, Joint.USUAL);
  }

  /**
   * A fold.
   *
   * @param path the side
   * @return the side, which doesn't move
   */
  public static Side onFold(Path path) {
    return new Side(path, 0, 0, true, Joint.USUAL);
  }
}
