package org.lapmark.figure.flat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Hardware;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.symbol.Symbol;
import org.lapmark.figure.workpiece.Laying;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.SymbolOn;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.key.Key;

/**
 * Something that is attached to the piece, at its place: hardware of a form as that form, all else
 * as a strip.
 *
 * @param attachment its name
 * @param cropped how much of its length is drawn, or null for all
 * @param cloth its material, or null for that of the piece that is attached
 * @param side the side that faces the reader; null for its right side where it lies above the
 *     piece, and its wrong side where it lies behind
 * @param part what of hardware is shown, or null for what is shown first
 * @param through what a strip goes through
 * @param lines stitching on a piece that is shown in its own shape
 * @param name what it is called in the picture, or null
 */
record AttachedThing(
    SourceText attachment,
    Formula cropped,
    SourceText cloth,
    Side side,
    SourceText part,
    List<Through> through,
    List<SewnLine> lines,
    TemplateText name)
    implements Thing {
  static AttachedThing read(Keys keys) {
    List<Key<?>> known = List.of(CROPPED, CLOTH, SIDE, PART, THROUGH, LINES, NAME);
    keys.idle(ATTACHMENT, List.of(WIDTH, TURN, WRAPPED, TURNED, OWN_EDGE, JOINED), known);
    keys.idle(ATTACHMENT, Place.KEYS, known);
    return keys.whole(
        new AttachedThing(
            keys.get(ATTACHMENT),
            keys.get(CROPPED),
            keys.get(CLOTH),
            keys.get(SIDE),
            keys.get(PART),
            keys.all(THROUGH),
            keys.all(LINES),
            keys.get(NAME)));
  }

  @Override
  public Optional<Thing> turnedOver() {
    return Optional.of(this);
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Overlay overlay = overlay(staging, on, laid);
    return isBehind(on) ? new Overlay.Behind(overlay) : overlay;
  }

  /** Whether it lies on the side of the piece that faces away. */
  private boolean isBehind(Subject on) {
    return on.attached(attachment).wrongSide() != (on.side() == Side.WRONG);
  }

  private Side seen(Subject on) {
    return side != null ? side : isBehind(on) ? Side.WRONG : Side.RIGHT;
  }

  private Overlay overlay(Staging staging, Subject on, PlacedBody laid) {
    Attached attached = on.attached(attachment);
    Optional<Hardware> hardware =
        attached.piece().isPresent()
            ? Optional.empty()
            : Hardware.ofForm(staging, attachment, attached.thing());
    String words = name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
    if (hardware.isPresent()) {
      return symbol(hardware.get(), attached, words, on, laid);
    }
    Optional<AttachmentSource> shaped =
        through.isEmpty() ? AttachedPiece.shaped(staging, attached) : Optional.empty();
    if (shaped.isPresent()) {
      return new AttachedPiece(shaped.get(), attached, cropped, cloth, seen(on), lines)
          .stage(staging, on, laid, attachment.position(), words);
    }
    if (!lines.isEmpty()) {
      idle(
          staging,
          lines.get(0).place(),
          "lines",
          "attachment",
          "cropped, cloth, side, through, name");
    }
    return strip(attached, words, staging, on, laid);
  }

  private Overlay symbol(
      Hardware hardware, Attached attached, String words, Subject on, PlacedBody laid) {
    Staging staging = hardware.staging();
    idle(staging, cropped == null ? null : cropped.text().position(), "cropped");
    idle(staging, cloth == null ? null : cloth.position(), "cloth");
    idle(staging, lines.isEmpty() ? null : lines.get(0).place(), "lines");
    idle(staging, through.isEmpty() ? null : through.get(0).hardware().position(), "through");
    Symbol symbol = hardware.symbol(part, given(hardware, attached));
    String said = hardware.said(symbol, part);
    Optional<SymbolOn.Strap> strap =
        symbol
            .gate()
            .flatMap(gate -> on.shown(attached.holder()))
            .map(one -> one.strap(staging, on));
    SymbolOn laidOn =
        new SymbolOn(
            symbol,
            Laying.Rigid.at(
                attached.point().plus(shift(staging, on, attached)), attached.direction()),
            strap,
            words,
            strap.isEmpty() ? said : staging.words().word("symbol.held", "what", said));
    on.checkSeen(laid, attachment.position(), laidOn.places(laid));
    return laidOn;
  }

  private static void idle(Staging staging, Position place, String key) {
    idle(staging, place, key, "form", "part, name");
  }

  private static void idle(Staging staging, Position place, String key, String with, String known) {
    if (place != null) {
      staging.notice(place, FigureCode.FIGURE_KEY_IDLE, "name", key, "with", with, "known", known);
    }
  }

  /** What the attachment itself says of the thing. */
  private static Map<String, Double> given(Hardware hardware, Attached attached) {
    Map<String, Double> given = new LinkedHashMap<>();
    if (attached.length() > 0) {
      given.put("length", attached.length());
    }
    if (attached.width() > 0 && hardware.thing().properties().containsKey("width")) {
      given.put("width", attached.width());
    }
    return given;
  }

  /** What it is as the strap that holds something else, which is turned back round that. */
  private SymbolOn.Strap strap(Staging staging, Subject on) {
    Attached own = staging.names().attached(attachment);
    return new SymbolOn.Strap(own.width(), true, 0, texture(own, staging), seen(on));
  }

  private Optional<Texture> texture(Attached attached, Staging staging) {
    if (cloth != null) {
      return Optional.of(staging.cloths().texture(staging.names().material(cloth)));
    }
    // Webbing that is stated as hardware looks like webbing.
    return staging
        .names()
        .material(attached)
        .map(staging.cloths()::texture)
        .or(() -> Hardware.texture(staging, attached.thing()));
  }

  private Overlay strip(
      Attached attached, String words, Staging staging, Subject on, PlacedBody laid) {
    if (!(attached.width() > 0) && !(attached.length() > 0)) {
      staging.run(() -> needed("width", attached.width()));
    } else {
      needed("width", attached.width());
    }
    needed("length", attached.length());
    if (part != null) {
      staging.notice(
          part.position(),
          FigureCode.FIGURE_KEY_IDLE,
          "name",
          "part",
          "with",
          "attachment",
          "known",
          "cropped, cloth, side, through, name");
    }
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
    Strip shown = strip.shown(texture(attached, staging), seen(on), words);
    return Through.threaded(through, shown, whole, staging, on);
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
  static Point shift(Staging staging, Subject on, Attached attached) {
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
