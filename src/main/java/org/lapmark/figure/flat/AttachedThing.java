package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;

/**
 * Something that is attached to the piece, drawn as a strip at its place.
 *
 * @param attachment its name
 * @param cropped how much of its length is drawn, or null for all
 * @param cloth its material, or null for that of the piece that is attached
 * @param side the side that faces the reader
 * @param name what it is called in the picture, or null
 */
record AttachedThing(
    SourceText attachment, Formula cropped, SourceText cloth, Side side, TemplateText name)
    implements Thing {
  static AttachedThing read(Keys keys) {
    keys.idle(
        ATTACHMENT,
        List.of(WIDTH, Place.EDGE, Place.ALONG, Place.INSIDE, TURN),
        List.of(CROPPED, CLOTH, SIDE, NAME));
    return keys.whole(
        new AttachedThing(
            keys.get(ATTACHMENT),
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
    Attached attached = staging.names().attached(attachment);
    if (!attached.panel().equals(on.panel().name())) {
      throw Faults.of(
          attachment.position(),
          FigureCode.FIGURE_ATTACHED_ELSEWHERE,
          "name",
          attachment.text(),
          "place",
          PatternNames.place(attachment),
          "panel",
          attached.panel(),
          "number",
          Integer.toString(on.piece().number()));
    }
    if (!(attached.width() > 0) && !(attached.length() > 0)) {
      staging.run(() -> needed("width", attached.width()));
    } else {
      needed("width", attached.width());
    }
    needed("length", attached.length());
    double whole = attached.length();
    double seen = cropped == null ? whole : staging.length(cropped, 0.1, whole);
    Strip strip =
        Strip.of(
            attached.point().plus(shift(staging, on, attached)),
            attached.direction(),
            attached.width(),
            seen,
            seen < whole);
    on.checkSeen(laid, attachment.position(), strip.places(laid));
    Optional<Texture> texture =
        (cloth == null
                ? staging.names().material(attached)
                : Optional.of(staging.names().material(cloth)))
            .map(staging.cloths()::texture);
    String words = name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
    return strip.shown(texture, side, words);
  }

  private void needed(String property, double value) {
    if (!(value > 0)) {
      throw Faults.of(
          attachment.position(),
          FigureCode.FIGURE_PROPERTY_MISSING,
          "name",
          attachment.text(),
          "property",
          property);
    }
  }

  /** What is caught in a seam begins at the raw edge, and takes along what it holds. */
  private static Point shift(Staging staging, Subject on, Attached attached) {
    Attached first = attached;
    while (!first.holder().isEmpty()) {
      first = staging.pattern().fastened().attachment(first.holder()).orElseThrow();
    }
    if (first.caughtAt().isEmpty()) {
      return new Point(0, 0);
    }
    Path edge = on.panel().line(first.caughtAt());
    Point inward = edge.tangentAtLength(edge.nearestLength(first.point())).quarterTurn();
    return inward.times(-on.allowance(first.caughtAt()));
  }
}
