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
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
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
 * @param turn by how many degrees clockwise it is turned from where it would point
 * @param wrapped whether it comes round the edge at which it begins
 * @param through what it goes through
 * @param name its name, or null
 */
record StripThing(
    Formula width,
    Formula length,
    Place place,
    Formula cropped,
    SourceText cloth,
    Side side,
    double turn,
    boolean wrapped,
    List<Through> through,
    TemplateText name)
    implements Thing {
  /** How far what comes round an edge stands out beyond it, in millimetres. */
  private static final double THICK = 1.5;

  static StripThing read(Keys keys) {
    keys.need(WIDTH);
    keys.idle(
        LENGTH,
        List.of(PART, TURNED, LINES, OWN_EDGE, JOINED),
        List.of(
            WIDTH,
            Place.EDGE,
            Place.MARK,
            Place.HELD_BY,
            Place.AT,
            Place.ALONG,
            Place.NOTCH,
            Place.INSIDE,
            TURN,
            CROPPED,
            CLOTH,
            SIDE,
            WRAPPED,
            THROUGH,
            NAME));
    if (keys.or(WRAPPED, false)) {
      keys.need(Place.EDGE);
    }
    return keys.whole(
        new StripThing(
            keys.get(WIDTH),
            keys.get(LENGTH),
            Place.read(keys),
            keys.get(CROPPED),
            keys.get(CLOTH),
            keys.or(SIDE, Side.RIGHT),
            keys.or(TURN, 0.0),
            keys.or(WRAPPED, false),
            keys.all(THROUGH),
            keys.get(NAME)));
  }

  /** What comes round an edge is seen from both sides. */
  @Override
  public Optional<Thing> turnedOver() {
    return wrapped ? Optional.of(this) : Optional.empty();
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Place.Spot spot = place.stage(staging, on);
    Point inward = Affine.rotation(turn).applyVector(spot.inward());
    double wide = staging.length(width, 0.1, 10_000);
    double whole = staging.length(length, 0.1, 10_000);
    double seen = cropped == null ? whole : staging.length(cropped, 0.1, whole);
    double over = wrapped ? THICK : 0;
    Strip strip =
        Strip.of(spot.point().minus(inward.times(over)), inward, wide, seen + over, seen < whole);
    on.checkSeen(laid, place.position(), strip.places(laid));
    Optional<Texture> texture =
        Optional.ofNullable(cloth)
            .map(id -> staging.cloths().texture(staging.names().material(id)));
    String words = name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
    Strip shown = strip.shown(texture, side, words);
    return Through.threaded(
        through, wrapped ? wrapped(shown, staging) : shown, whole + over, staging, on);
  }

  /** Said as what it is. */
  private Strip wrapped(Strip strip, Staging staging) {
    String called = strip.said().isEmpty() ? staging.words().word("symbol.strap") : strip.said();
    String edge = staging.words().edge(place.edge().text());
    return strip.called(staging.words().word("symbol.wrapped", "strap", called, "edge", edge));
  }
}
