package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Hardware;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.symbol.Buttonhole;
import org.lapmark.figure.symbol.Symbol;
import org.lapmark.figure.workpiece.Laying;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.SymbolOn;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Key;

/**
 * Hardware, or a buttonhole, at a place on the piece.
 *
 * @param hardware the hardware's id, or null for a buttonhole
 * @param buttonhole how long a buttonhole's cut is, or null for hardware
 * @param length how long it is, or null for what the hardware says
 * @param part what of it is shown, or null for what is shown first
 * @param place where it begins, or has its middle
 * @param turn by how many degrees clockwise it is turned from where it would point
 * @param name its name, or null
 */
record SymbolThing(
    SourceText hardware,
    Formula buttonhole,
    Formula length,
    SourceText part,
    Place place,
    double turn,
    TemplateText name)
    implements Thing {
  /** The longest that hardware is drawn, in millimetres. */
  private static final double LONGEST = 10_000;

  private static final int STEPS = 50;

  static SymbolThing read(Keys keys) {
    boolean cut = keys.has(BUTTONHOLE);
    Key<?> what = cut ? BUTTONHOLE : HARDWARE;
    List<Key<?>> idle = new ArrayList<>(List.of(CLOTH, SIDE, WIDTH, CROPPED, THROUGH));
    List<Key<?>> known = new ArrayList<>(Place.KEYS);
    known.addAll(List.of(TURN, NAME));
    if (cut) {
      idle.add(PART);
    } else {
      known.addAll(List.of(LENGTH, PART));
    }
    idle.addAll(OF_PIECES);
    idle.add(WRAPPED);
    keys.idle(what, idle, known);
    return keys.whole(
        new SymbolThing(
            keys.get(HARDWARE),
            keys.get(BUTTONHOLE),
            keys.get(LENGTH),
            keys.get(PART),
            Place.read(keys),
            keys.or(TURN, 0.0),
            keys.get(NAME)));
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Place.Spot spot = place.stage(staging, on);
    Symbol symbol;
    String said;
    if (hardware == null) {
      symbol = new Buttonhole(staging.length(buttonhole, 2, 300));
      said = staging.words().word("symbol.buttonhole", "size", staging.printed(symbol.told()));
    } else {
      Hardware stated = Hardware.of(staging, hardware);
      symbol = stated.symbol(part, given(staging));
      said = stated.said(symbol, part);
      if (length != null && !symbol.isByLength()) {
        staging.notice(
            length.text().position(),
            FigureCode.FIGURE_LENGTH_IDLE,
            "name",
            hardware.text(),
            "form",
            stated.form().id());
      }
    }
    Point way = Affine.rotation(turn).applyVector(way(on, spot, symbol));
    SymbolOn laidOn =
        new SymbolOn(
            symbol, Laying.Rigid.at(spot.point(), way), Optional.empty(), words(staging), said);
    on.checkSeen(laid, place.position(), laidOn.places(laid));
    if (symbol.isByLength() && length != null) {
      checkOn(staging, on, symbol, spot.point(), way);
    }
    return laidOn;
  }

  /** What lies beside the piece for the most part isn't what its author meant. */
  private void checkOn(Staging staging, Subject on, Symbol symbol, Point from, Point way) {
    double whole = symbol.size().height();
    Path outline = on.body().whole();
    int beside = 0;
    for (int i = 0; i < STEPS; i++) {
      if (!outline.encloses(from.plus(way.times(whole * (i + 0.5) / STEPS)))) {
        beside++;
      }
    }
    if (2 * beside > STEPS) {
      staging.notice(
          length.text().position(),
          FigureCode.FIGURE_LENGTH_BESIDE,
          "name",
          hardware.text(),
          "value",
          Staging.hundredth(whole),
          "beside",
          Staging.hundredth(whole * beside / STEPS),
          "size",
          staging.size());
    }
  }

  private String words(Staging staging) {
    return name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
  }

  private Map<String, Double> given(Staging staging) {
    Map<String, Double> given = new LinkedHashMap<>();
    if (length != null) {
      given.put("length", staging.length(length, 0.1, LONGEST));
    }
    return given;
  }

  /** A buttonhole lies as the mark that it is worked at. */
  private Point way(Subject on, Place.Spot spot, Symbol symbol) {
    return symbol instanceof Buttonhole
        ? Place.ends(on, place.mark())
            .map(ends -> ends.get(1).minus(ends.get(0)).unit())
            .orElse(spot.inward())
        : spot.inward();
  }
}
