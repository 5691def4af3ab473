package org.lapmark.figure.workpiece;

import java.util.Optional;
import org.lapmark.geometry.Path;

/** Something that lies on a piece, in its coordinates. */
public interface Overlay {
  /** What it is called in the picture; empty where it isn't named. */
  String name();

  /** What it is called where the picture is said in words; empty where it isn't. */
  String said();

  /** What of the piece it hides from labels. */
  Optional<Path> cover();

  /**
   * Draws it.
   *
   * @param laid the piece
   * @return its outline on paper
   */
  Path draw(PlacedBody laid, FlatInk ink);
}
