package org.lapmark.figure.flat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Hardware;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.symbol.Symbol;
import org.lapmark.figure.symbol.Zip;
import org.lapmark.figure.workpiece.Laying;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.SymbolOn;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.fastening.TrimSource;

/**
 * A trim along the edge that it is sewn to, straight or curved.
 *
 * @param trim its name
 * @param part what of it is shown, or null for what is shown first
 * @param name its name in the picture, or null
 */
record TrimThing(SourceText trim, SourceText part, TemplateText name) implements Thing {
  private static final double FLATNESS = 0.05;

  static TrimThing read(Keys keys) {
    keys.idle(TRIM, List.of(WIDTH, CROPPED, CLOTH, SIDE, TURN, THROUGH), List.of(PART, NAME));
    keys.idle(TRIM, List.of(WRAPPED), List.of(PART, NAME));
    keys.idle(TRIM, OF_PIECES, List.of(PART, NAME));
    keys.idle(TRIM, Place.KEYS, List.of(PART, NAME));
    return keys.whole(new TrimThing(keys.get(TRIM), keys.get(PART), keys.get(NAME)));
  }

  @Override
  public Optional<Thing> turnedOver() {
    return Optional.of(this);
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Trim stated = staging.names().trim(trim);
    Hardware hardware =
        Hardware.ofForm(staging, trim, stated.thing()).orElseThrow(() -> formless(stated, staging));
    boolean facing = !runs(stated.along(), on);
    Path line = line(facing ? stated.facing() : stated.along(), on);
    Symbol symbol = hardware.symbol(part, given(stated.length()));
    boolean zip = symbol instanceof Zip;
    if (!zip) {
      // As it is sewn: drawn up or eased in, it reaches from end to end.
      double room = Math.min(stated.edge(), line.length()) - 2 * stated.standsIn();
      symbol = hardware.symbol(part, given(Math.max(1, room)));
    }
    Box size = symbol.size();
    double before = zip ? Zip.END : 0;
    Optional<Double> cased = casing(staging);
    double inside = cased.orElse(size.width()) / 2;
    double aside = zip ? -stated.visibleWidth().orElse(0) / 2 : inside;
    SymbolOn laidOn =
        new SymbolOn(
            symbol,
            new Laying.Course(line.flattened(FLATNESS), stated.standsIn() - before, aside),
            Optional.empty(),
            name == null ? "" : staging.attempt(() -> staging.text(name)).orElse(""),
            hardware.said(symbol, part));
    on.checkSeen(laid, trim.position(), laidOn.places(laid));
    // In a casing it lies between two layers; before that is turned, on the wrong side.
    boolean open = on.side() == Side.WRONG && !isTurned(stated.along(), on);
    return cased.isPresent() && !open ? new Overlay.Behind(laidOn) : laidOn;
  }

  private static boolean isTurned(List<Trim.Stretch> lines, Subject on) {
    return lines.stream()
        .map(Trim.Stretch::line)
        .filter(line -> isOn(line, on))
        .flatMap(line -> on.edgeNames(line.substring(line.indexOf('.') + 1)).stream())
        .anyMatch(on.turned()::contains);
  }

  /** How high the casing is in which it lies. */
  private Optional<Double> casing(Staging staging) {
    return staging
        .pattern()
        .source()
        .fastenings()
        .trim(trim.text())
        .map(TrimSource::casing)
        .map(casing -> staging.length(casing, 0.1, 500));
  }

  private static Map<String, Double> given(double length) {
    Map<String, Double> given = new LinkedHashMap<>();
    given.put("length", length);
    return given;
  }

  private FindingException formless(Trim stated, Staging staging) {
    boolean cloth =
        staging.pattern().source().materials().stream()
            .anyMatch(material -> material.id().text().equals(stated.thing()));
    return Faults.of(
        trim.position(),
        cloth ? FigureCode.FIGURE_TRIM_OF_CLOTH : FigureCode.FIGURE_PROPERTY_MISSING,
        "name",
        stated.thing(),
        "trim",
        trim.text(),
        "property",
        "form");
  }

  private static boolean runs(List<Trim.Stretch> lines, Subject on) {
    return lines.stream().anyMatch(stretch -> isOn(stretch.line(), on));
  }

  private static boolean isOn(String line, Subject on) {
    String edge = line.substring(line.indexOf('.') + 1);
    return line.startsWith(on.panel().name() + ".") && !on.edgeNames(edge).isEmpty();
  }

  /** The edges of the panel along which it runs, as far as they follow one another. */
  private Path line(List<Trim.Stretch> lines, Subject on) {
    Path path = null;
    for (Trim.Stretch stretch : lines) {
      String line = stretch.line();
      if (!isOn(line, on)) {
        continue;
      }
      for (String edge : on.edgeNames(line.substring(line.indexOf('.') + 1))) {
        Path next = on.panel().line(edge);
        if (path == null) {
          path = next;
        } else if (path.end().distance(next.start()) < Path.JOIN_TOLERANCE) {
          path = path.then(next);
        } else {
          return path;
        }
      }
    }
    if (path == null) {
      throw Faults.of(
          trim.position(),
          FigureCode.FIGURE_TRIM_ASIDE,
          "name",
          trim.text(),
          "number",
          Integer.toString(on.piece().number()),
          "panel",
          on.panel().name());
    }
    return path;
  }
}
