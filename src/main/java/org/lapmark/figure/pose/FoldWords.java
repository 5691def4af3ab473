package org.lapmark.figure.pose;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;

/**
 * Says how a piece is folded; the piece itself is drawn so.
 *
 * @param edge an edge of what is folded over, or the corner that is turned back
 * @param peel whether it is a corner that is turned back
 */
record FoldWords(String edge, boolean peel) implements Detail {
  @Override
  public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {}

  @Override
  public Optional<String> inWords(Words words) {
    return Optional.of(
        peel
            ? words.word("alt.peeled", "corner", edge.replace('_', ' '))
            : words.word("alt.folded", "edge", words.edge(edge)));
  }
}
