package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;

/**
 * Says that a piece is folded; the piece itself is drawn so.
 *
 * @param edge an edge of what is folded over
 */
record FoldWords(String edge) implements Detail {
  @Override
  public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {}

  @Override
  public Optional<String> inWords(Words words) {
    return Optional.of(words.word("alt.folded", "edge", edge));
  }
}
