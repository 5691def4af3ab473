package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;

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
    Point along = spot.inward().quarterTurn().times(-wide / 2);
    Point in = spot.inward().times(seen);
    Point at = spot.point();
    List<Point> corners =
        List.of(at.minus(along), at.plus(along), at.plus(along).plus(in), at.minus(along).plus(in));
    Across bare =
        new Across(corners, seen < whole, Optional.empty(), Side.WRONG, spot.inward(), "");
    on.checkSeen(
        laid,
        place.edge().position(),
        bare.outline().transformed(laid.map()).flattened(FlatInk.FLATNESS));
    Optional<Texture> texture =
        Optional.ofNullable(cloth)
            .map(id -> staging.cloths().texture(staging.names().material(id)));
    String words = name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
    return new Across(corners, seen < whole, texture, side, spot.inward(), words);
  }

  /**
   * A strip as it lies.
   *
   * @param corners its four corners, the first two at the edge
   * @param broken whether it goes on beyond what is drawn
   * @param texture how its material is shown; nothing for the other side of the main cloth
   * @param side the side that faces the reader
   * @param inward its direction
   */
  private record Across(
      List<Point> corners,
      boolean broken,
      Optional<Texture> texture,
      Side side,
      Point inward,
      String name)
      implements Overlay {
    @Override
    public String said() {
      return name;
    }

    @Override
    public Optional<Path> cover() {
      return Optional.empty();
    }

    Path outline() {
      return Path.polyline(
          List.of(corners.get(0), corners.get(1), corners.get(2), corners.get(3), corners.get(0)));
    }

    @Override
    public Path draw(PlacedBody laid, FlatInk ink) {
      Path drawn = outline().transformed(laid.map());
      Point down = laid.map().applyVector(inward);
      double angle = StrictMath.toDegrees(StrictMath.atan2(down.y(), down.x())) - 90;
      if (texture.isPresent()) {
        ink.canvas().cloth(drawn, texture.get(), side, angle);
      } else {
        ink.canvas().cloth(drawn, Texture.MAIN, Side.WRONG, 0);
      }
      if (broken) {
        List<Point> at = corners.stream().map(laid.map()::apply).toList();
        Path sides = Path.polyline(List.of(at.get(3), at.get(0), at.get(1), at.get(2)));
        ink.canvas().line(sides, "figure-outline");
        ink.breakLine(at.get(2), at.get(3));
      } else {
        ink.canvas().line(drawn, "figure-outline");
      }
      return drawn;
    }
  }
}
