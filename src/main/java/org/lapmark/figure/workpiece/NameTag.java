package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * The name of a piece or a zip, which stands where the piece is open to view.
 *
 * @param words the name
 * @param covers what on the piece hides it
 */
public record NameTag(String words, List<Path> covers) implements Detail {
  @Override
  public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
    List<List<Point>> hidden = new ArrayList<>();
    above.forEach(cover -> hidden.add(cover.polygon()));
    covers.forEach(cover -> hidden.add(cover.transformed(laid.map()).flattened(FlatInk.FLATNESS)));
    ink.canvas().name(words, laid.polygon(), hidden);
  }

  @Override
  public Optional<String> inWords(Words sentences) {
    return Optional.empty();
  }
}
