package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.KeyTable;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Laid;
import org.lapmark.geometry.Point;
import org.lapmark.measure.TemplateText;

/**
 * A label of a place on a piece.
 *
 * @param text the text, or null
 * @param number the number in a ring, or 0
 * @param place what it names
 */
record Label(TemplateText text, int number, Place place) {
  static final KeyTable KEYS = KeyTable.of("label", "text", "number", "edge", "along", "inside");

  private static final int MOST = 99;

  static Label read(Keys keys) {
    int number = keys.one("text", "number").equals("number") ? keys.count("number", MOST) : 0;
    return keys.whole(new Label(keys.label("text"), number, Place.read(keys)));
  }

  Detail stage(Staging staging, Subject on, Laid laid) {
    Point point = place.stage(staging, on).point();
    on.checkSeen(laid, place.edge().position(), List.of(laid.map().apply(point)));
    return new Callout(number > 0 ? "" : staging.text(text), number, point);
  }

  /** A label of a point, or a number in a ring. */
  private record Callout(String words, int number, Point point) implements Detail {
    @Override
    public void draw(Laid laid, List<Laid> above, FlatInk ink) {
      Point anchor = laid.map().apply(point);
      if (number > 0) {
        ink.canvas().ring(number, anchor);
      } else {
        ink.canvas().wish(words, List.of(anchor), null);
      }
    }

    @Override
    public Optional<String> inWords(Words sentences) {
      return Optional.empty();
    }
  }
}
