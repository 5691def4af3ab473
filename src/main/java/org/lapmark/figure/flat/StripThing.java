package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;

/**
 * A strip that begins at a place along an edge and lies across the piece.
 *
 * @param width its width along the edge
 * @param length its length from the edge inwards
 * @param place where the middle of its first side lies
 * @param cropped how much of its length is drawn, or null for all
 * @param cloth its material, or null
 * @param side its side
 * @param name its name, or null
 */
record StripThing(
    Formula width,
    Formula length,
    Place place,
    Formula cropped,
    SourceText cloth,
    Side side,
    TemplateText name)
    implements Thing {
  static StripThing read(Keys keys) {
    keys.need(WIDTH);
    keys.idle(
        LENGTH,
        List.of(TURN),
        List.of(WIDTH, Place.EDGE, Place.ALONG, Place.INSIDE, CROPPED, CLOTH, SIDE, NAME));
    return keys.whole(
        new StripThing(
            keys.get(WIDTH),
            keys.get(LENGTH),
            Place.read(keys),
            keys.get(CROPPED),
            keys.get(CLOTH),
            keys.or(SIDE, Side.RIGHT),
            keys.get(NAME)));
  }

  @Override
  public boolean isBand() {
    return false;
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Place.Spot spot = place.stage(staging, on);
    double wide = staging.length(width, 0.1, 10_000);
    double whole = staging.length(length, 0.1, 10_000);
    double seen = cropped == null ? whole : staging.length(cropped, 0.1, whole);
    Strip strip = Strip.of(spot.point(), spot.inward(), wide, seen, seen < whole);
    on.checkSeen(laid, place.edge().position(), strip.places(laid));
    Optional<Texture> texture =
        Optional.ofNullable(cloth)
            .map(id -> staging.cloths().texture(staging.names().material(id)));
    String words = name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
    return strip.shown(texture, side, words);
  }
}
