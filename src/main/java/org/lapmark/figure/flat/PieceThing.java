package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Cut;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Key;

/**
 * A piece that lies on another one, of which as much is drawn as of that one.
 *
 * @param number the piece's number
 * @param cloth its material, or null for the first
 * @param side its side
 * @param place where the middle of its top lies; null where it lies in its own coordinates
 * @param turn by how many degrees clockwise it is turned, 0 for its top to the edge
 * @param name its name, or null for the computed one
 */
record PieceThing(
    SourceText number, SourceText cloth, Side side, Place place, double turn, TemplateText name)
    implements Thing {
  static PieceThing read(Keys keys) {
    List<Key<?>> places = new ArrayList<>(Place.KEYS);
    places.add(TURN);
    List<Key<?>> known = new ArrayList<>(List.of(CLOTH, SIDE));
    known.addAll(places);
    known.add(NAME);
    keys.idle(PIECE, List.of(WIDTH, CROPPED, PART, THROUGH), known);
    return keys.whole(
        new PieceThing(
            keys.get(PIECE),
            keys.get(CLOTH),
            keys.or(SIDE, Side.RIGHT),
            places.stream().anyMatch(keys::has) ? Place.read(keys) : null,
            keys.or(TURN, 0.0),
            keys.get(NAME)));
  }

  @Override
  public boolean isBand() {
    return false;
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Piece piece = staging.names().piece(number);
    String material = staging.names().cloth(piece, cloth);
    Path outline = piece.shape().cuttingLine().path();
    Affine map = place == null ? moved(piece, on) : placed(staging, on, outline);
    on.checkSeen(
        laid,
        place == null ? number.position() : place.position(),
        outline.transformed(laid.map().after(map)).flattened(FlatInk.FLATNESS));
    Point down = map.applyVector(new Point(0, 1));
    double turned = place == null ? 0 : StrictMath.toDegrees(-StrictMath.atan2(down.x(), down.y()));
    String words =
        staging
            .attempt(
                () ->
                    name == null
                        ? PieceNames.of(piece, material, side, staging)
                        : staging.text(name))
            .orElse("");
    return new OnTop(
        outline,
        map,
        staging.cloths().texture(material),
        side,
        on.turn() + turned,
        words,
        PieceNames.plain(piece, staging));
  }

  /** Derived panels keep their place; others of their own are centred. */
  private static Affine moved(Piece piece, Subject on) {
    Box own = piece.shape().panel().outline().bounds();
    Box host = on.panel().outline().bounds();
    if (host.expanded(1e-6).contains(own)) {
      return Affine.IDENTITY;
    }
    Point by = host.centre().minus(own.centre());
    return Affine.translation(by.x(), by.y());
  }

  private Affine placed(Staging staging, Subject on, Path outline) {
    Place.Spot spot = place.stage(staging, on);
    Affine mirror = side == on.side() ? Affine.IDENTITY : Affine.scaling(-1, 1);
    Affine facing = Affine.rotation(turn).after(mirror);
    Point in = spot.inward();
    Affine inward = new Affine(in.y(), -in.x(), in.x(), in.y(), 0, 0);
    Box box = outline.transformed(facing).bounds();
    Point top = new Point(box.centre().x(), box.minY());
    Point at = spot.point().minus(inward.apply(top));
    return Affine.translation(at.x(), at.y()).after(inward.after(facing));
  }

  /**
   * A piece as it lies on another one.
   *
   * @param outline its outline in its own coordinates
   * @param on from these to the other piece's
   * @param texture how its material is shown
   * @param side the side that faces the reader
   * @param grain how far the grain is turned on paper, in degrees clockwise
   */
  private record OnTop(
      Path outline, Affine on, Texture texture, Side side, double grain, String name, String said)
      implements Overlay {
    @Override
    public Optional<Path> cover() {
      return Optional.of(outline.transformed(on));
    }

    @Override
    public Path draw(PlacedBody laid, FlatInk ink) {
      Path at = outline.transformed(laid.map().after(on));
      List<Cut> cuts = new ArrayList<>();
      for (Cut cut : laid.cuts()) {
        Lines.Cropped rest = Lines.crop(at, cut.from(), cut.away());
        if (rest.from() != null) {
          at = rest.path();
          cuts.add(new Cut(cut.key(), rest.from(), rest.to(), cut.away()));
        }
      }
      ink.canvas().cloth(at, texture, side, grain);
      ink.outline(at, cuts);
      return at;
    }
  }
}
