package org.lapmark.figure.flat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.measure.print.TemplateText;

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
  public boolean isBand() {
    return false;
  }

  @Override
  public Optional<Thing> turnedOver() {
    return Optional.of(this);
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Trim stated = staging.names().trim(trim);
    Hardware hardware =
        Hardware.ofForm(staging, trim, stated.thing())
            .orElseThrow(
                () ->
                    Faults.of(
                        trim.position(),
                        FigureCode.FIGURE_PROPERTY_MISSING,
                        "name",
                        stated.thing(),
                        "property",
                        "form"));
    Symbol symbol = hardware.symbol(part, given(stated));
    boolean facing = !runs(stated.along(), on);
    Path line = line(facing ? stated.facing() : stated.along(), on);
    boolean zip = symbol instanceof Zip;
    Box size = symbol.size();
    double before = zip ? Zip.END : 0;
    double aside = zip ? -stated.visibleWidth().orElse(0) / 2 : size.width() / 2;
    SymbolOn laidOn =
        new SymbolOn(
            symbol,
            new Laying.Course(line.flattened(FLATNESS), stated.standsIn() - before, aside),
            Optional.empty(),
            name == null ? "" : staging.attempt(() -> staging.text(name)).orElse(""),
            hardware.said(symbol, part));
    on.checkSeen(laid, trim.position(), laidOn.places(laid));
    return laidOn;
  }

  private static Map<String, Double> given(Trim trim) {
    Map<String, Double> given = new LinkedHashMap<>();
    given.put("length", trim.length());
    return given;
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
