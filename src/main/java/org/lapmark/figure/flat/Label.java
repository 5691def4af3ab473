package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.geometry.Point;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * A label of a place on a piece.
 *
 * @param text the text, or null
 * @param number the number in a ring, or 0
 * @param place what it names
 */
record Label(TemplateText text, int number, Place place) {
  private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
  private static final Key<Integer> NUMBER = Key.of("number", FigureForms.count(99));
  private static final Table TABLE =
      Table.of("label", TEXT, NUMBER).with(Place.KEYS).oneOf(Choice.among(List.of(TEXT, NUMBER)));

  /** Stated in a list. */
  static final Form<Entries<Label>> LIST = FigureForms.list(TABLE, Label::read);

  private static Label read(Keys keys) {
    keys.one();
    return keys.whole(new Label(keys.get(TEXT), keys.or(NUMBER, 0), Place.read(keys)));
  }

  Detail stage(Staging staging, Subject on, PlacedBody laid) {
    Point point = place.stage(staging, on).point();
    on.checkSeen(laid, place.position(), List.of(laid.map().apply(point)));
    return new Callout(number > 0 ? "" : staging.text(text), number, point);
  }

  /** A label of a point, or a number in a ring. */
  private record Callout(String words, int number, Point point) implements Detail {
    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
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
