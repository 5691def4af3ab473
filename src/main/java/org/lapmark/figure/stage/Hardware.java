package org.lapmark.figure.stage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.symbol.Form;
import org.lapmark.figure.symbol.Measures;
import org.lapmark.figure.symbol.Symbol;
import org.lapmark.figure.symbol.Symbols;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.ThingKind;
import org.lapmark.source.ThingSource;

/**
 * Hardware of which it is stated what figures draw it as.
 *
 * @param staging the variant
 * @param named where it is named
 * @param thing what is stated of it
 * @param form its form
 */
public record Hardware(Staging staging, SourceText named, ThingSource thing, Form form) {
  /** Hardware by its id; a finding where it has no form. */
  public static Hardware of(Staging staging, SourceText id) {
    staging.names().hardware(id);
    return ofForm(staging, id, id.text()).orElseThrow(() -> missing(id, id.text(), "form"));
  }

  /**
   * Hardware by its id; nothing for what has no form.
   *
   * @param named where it is asked for
   */
  public static Optional<Hardware> ofForm(Staging staging, SourceText named, String id) {
    return staging.pattern().source().hardware().stream()
        .filter(thing -> thing.id().text().equals(id) && thing.form() != null)
        .findFirst()
        .flatMap(
            thing ->
                Symbols.form(thing.form().text())
                    .map(form -> new Hardware(staging, named, thing, form)));
  }

  /** How a figure shows what isn't drawn as a form: what its kind is a word for, as webbing. */
  public static Optional<Texture> texture(Staging staging, String id) {
    return staging.pattern().source().hardware().stream()
        .filter(thing -> thing.id().text().equals(id))
        .flatMap(
            thing -> Stream.concat(Stream.of(id), thing.care().kinds().stream().map(ThingKind::id)))
        .map(Texture::of)
        .filter(texture -> texture != Texture.OTHER)
        .findFirst();
  }

  private static FindingException missing(SourceText at, String name, String property) {
    return Faults.of(
        at.position(), FigureCode.FIGURE_PROPERTY_MISSING, "name", name, "property", property);
  }

  /**
   * What is drawn of it.
   *
   * @param part what is shown of it, or null for what its form shows first
   * @param given measures that stand for its own
   */
  public Symbol symbol(SourceText part, Map<String, Double> given) {
    return form.reader().apply(new Stated(part(part), given));
  }

  /** What it is called in sentences. */
  public String said(Symbol symbol, SourceText part) {
    return staging.words().word(form.words(part(part)), "size", staging.printed(symbol.told()));
  }

  private String part(SourceText stated) {
    List<String> known = form.parts();
    if (stated == null) {
      return known.isEmpty() ? "" : known.get(0);
    }
    if (known.isEmpty()) {
      staging.notice(
          stated.position(),
          FigureCode.FIGURE_KEY_IDLE,
          "name",
          "part",
          "with",
          form.id(),
          "known",
          "its place, turn, name");
      return "";
    }
    if (known.contains(stated.text())) {
      return stated.text();
    }
    throw Faults.of(
        stated.position(),
        FigureCode.FIGURE_WORD_UNKNOWN,
        "word",
        stated.text(),
        "name",
        "part",
        "near",
        NearestWord.of(stated.text(), known).orElse("none"),
        "known",
        Known.listed(known));
  }

  /** Its measures, of which one that is given stands for that of its statement. */
  private final class Stated implements Measures {
    private final String part;
    private final Map<String, Double> given;

    Stated(String part, Map<String, Double> given) {
      this.part = part;
      this.given = given;
    }

    @Override
    public double need(String property, double least, double most) {
      return value(property, least, most)
          .orElseThrow(() -> missing(named, thing.id().text(), property));
    }

    @Override
    public double or(String property, double usual, double least, double most) {
      return value(property, least, most).orElse(usual);
    }

    private Optional<Double> value(String property, double least, double most) {
      if (given.containsKey(property)) {
        double value = given.get(property);
        staging.requireWithin(named.position(), value, least, most);
        return Optional.of(value);
      }
      Formula formula = thing.properties().get(property);
      return Optional.ofNullable(formula).map(one -> staging.length(one, least, most));
    }

    @Override
    public String part() {
      return part;
    }
  }
}
