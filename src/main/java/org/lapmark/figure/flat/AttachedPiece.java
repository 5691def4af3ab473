package org.lapmark.figure.flat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Cloth;
import org.lapmark.figure.workpiece.Cut;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.Mounted;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.PosedBody;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.source.fastening.AttachmentSource;

/**
 * A piece that is attached as it is cut, with all its allowances turned in, in its own shape.
 *
 * @param source how it is attached
 * @param attached where it lies
 * @param cropped how much of its length is drawn, or null for all
 * @param cloth its material, or null for the first
 * @param side the side that faces the reader
 * @param lines stitching on it
 */
record AttachedPiece(
    AttachmentSource source,
    Attached attached,
    Formula cropped,
    SourceText cloth,
    Side side,
    List<SewnLine> lines) {
  /** A shape that fills its box but for this share is a rectangle. */
  private static final double SQUARE = 0.002;

  /**
   * How something is attached, if it is a piece that is no strip and isn't made up to other
   * measures than it is cut to.
   */
  static Optional<AttachmentSource> shaped(Staging staging, Attached attached) {
    if (attached.piece().isEmpty()) {
      return Optional.empty();
    }
    return staging
        .pattern()
        .source()
        .fastenings()
        .attachment(attached.name())
        .filter(one -> one.width() == null && one.length() == null)
        .filter(
            one -> {
              Path outline = staging.names().piece(one.piece()).shape().panel().outline();
              Box box = outline.bounds();
              double whole = box.width() * box.height();
              return whole - Math.abs(outline.signedArea()) > SQUARE * whole;
            });
  }

  Overlay stage(Staging staging, Subject on, PlacedBody laid, Position stated, String words) {
    View view = View.of(source.piece(), cloth, side, List.of(), lines);
    Subject cut = Subjects.of(view, on.within(), staging);
    Path whole = cut.panel().outline();
    Point place = attached.point().plus(AttachedThing.shift(staging, on, attached));
    Affine mirror = cut.side() == on.side() ? Affine.IDENTITY : Affine.scaling(-1, 1);
    Affine map = map(cut.panel(), mirror, place);
    Path outline = whole;
    Optional<Cut> broken = Optional.empty();
    if (cropped != null) {
      double seen = staging.length(cropped, 0.1, attached.length());
      Point away = own(map, attached.direction());
      Point middle = place.minus(map.apply(new Point(0, 0)));
      Lines.Cropped rest =
          Lines.crop(whole, own(map, middle.plus(attached.direction().times(seen))), away);
      outline = rest.path();
      if (rest.from() != null) {
        broken = Optional.of(new Cut(Cut.CROPPED, rest.from(), rest.to(), away));
      }
    }
    Subject own =
        finished(
            cut,
            new Cloth(
                whole,
                outline,
                broken,
                staging.cloths().texture(cut.material()),
                side,
                0,
                List.of()));
    PosedBody posed = new PosedBody(own.body(), laid.lying().pose().after(map), null);
    PlacedBody placed = new PlacedBody(posed, laid.map().after(map));
    on.checkSeen(laid, stated, placed.outline().flattened(FlatInk.FLATNESS));
    String said = words.isEmpty() ? PieceNames.plain(own.piece(), staging) : words;
    return new Mounted(view.stage(staging, own, placed), map, false, words, said);
  }

  /** A vector in the piece's coordinates, which are turned and moved but no larger. */
  private static Point own(Affine map, Point vector) {
    return new Point(
        map.applyVector(new Point(1, 0)).dot(vector), map.applyVector(new Point(0, 1)).dot(vector));
  }

  /** With the middle of the end by which it is attached, or of its top, at its place. */
  private Affine map(Panel panel, Affine mirror, Point place) {
    if (source.end() == null) {
      Box box = panel.outline().transformed(mirror).bounds();
      Point top = new Point(box.centre().x(), box.minY());
      return PieceThing.laid(place, attached.direction(), top).after(mirror);
    }
    Path end = panel.line(source.end().text());
    Point in = mirror.applyVector(Lines.inward(end));
    double cos = in.dot(attached.direction());
    double sin = in.cross(attached.direction());
    Affine turned = new Affine(cos, sin, -sin, cos, 0, 0).after(mirror);
    Point by = place.minus(turned.apply(end.start().towards(end.end(), 0.5)));
    return Affine.translation(by.x(), by.y()).after(turned);
  }

  /** The same with all its allowances turned in. */
  private static Subject finished(Subject cut, Cloth cloth) {
    Map<String, Double> none = new LinkedHashMap<>();
    cut.panel().edges().forEach(edge -> none.put(edge.name(), 0.0));
    return new Subject(
        cut.names(),
        cut.piece(),
        cut.panel(),
        cut.material(),
        none,
        List.copyOf(none.keySet()),
        cut.side(),
        cut.turn(),
        cut.dark(),
        cut.things(),
        cut.within(),
        cloth);
  }
}
