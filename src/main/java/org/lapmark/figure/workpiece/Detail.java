package org.lapmark.figure.workpiece;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.scene.Words;

/** Something that is drawn on a piece, in its coordinates. */
public interface Detail {
  /**
   * Draws it.
   *
   * @param laid the piece
   * @param above what lies on the piece
   */
  void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink);

  /** A sentence about it; nothing if the picture alone shows it. */
  Optional<String> inWords(Words words);
}
