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

  /** All that it hides from labels. */
  default List<Path> covers() {
    return cover().stream().toList();
  }

  /** What it takes up, also beside the piece. */
  default List<Path> reach() {
    return covers();
  }

  /** Draws what of it lies under the piece. */
  default void drawBehind(PlacedBody laid, FlatInk ink) {}

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

  /**
   * Something that lies on the side of the piece that faces away from the reader: seen where it
   * reaches beyond the piece, and dotted where it doesn't.
   *
   * @param what what lies there
   */
  record Behind(Overlay what) implements Overlay {
    @Override
    public String name() {
      return what.name();
    }

    @Override
    public String said() {
      return what.said();
    }

    @Override
    public Optional<Path> cover() {
      return Optional.empty();
    }

    @Override
    public List<Path> reach() {
      return what.reach();
    }

    @Override
    public List<String> inWords(Words words) {
      return said().isEmpty() ? List.of() : List.of(words.word("alt.behind", "what", said()));
    }

    @Override
    public void drawBehind(PlacedBody laid, FlatInk ink) {
      what.draw(laid, ink);
    }

    @Override
    public Path draw(PlacedBody laid, FlatInk ink) {
      Path shape = what.draw(laid, new FlatInk(ink.canvas().another(), ink.scale()));
      ink.within(laid.outline(), List.of(shape), "figure-under");
      return shape;
    }
  }
}
