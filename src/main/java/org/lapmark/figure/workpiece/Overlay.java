package org.lapmark.figure.workpiece;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Path;

/** Something that lies on a piece, in its coordinates. */
public interface Overlay {
  /** What it is called in the picture; empty where it isn't named. */
  String name();

  /** What it is called where the picture is said in words; empty where it isn't. */
  String said();

  /** What of the piece it hides from labels. */
  Optional<Path> cover();

  /** Whether the piece's marks are on it. */
  default boolean isGround() {
    return false;
  }

  /** Sentences about it; none if the picture alone shows it. */
  default List<String> inWords(Words words) {
    return said().isEmpty() ? List.of() : List.of(words.word("alt.thing", "what", said()));
  }

  /**
   * Draws it.
   *
   * @param laid the piece
   * @return its outline on paper
   */
  Path draw(PlacedBody laid, FlatInk ink);
}
