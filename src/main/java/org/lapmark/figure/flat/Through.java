package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Hardware;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.symbol.Symbol;
import org.lapmark.figure.workpiece.Laying;
import org.lapmark.figure.workpiece.SymbolOn;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/**
 * Hardware that a strap goes through.
 *
 * @param hardware its id
 * @param part what of it is shown, or null for what is shown first
 * @param at how far from the strap's beginning its bar lies, or null where the strap turns back
 *     round it at its end
 * @param backTo the slide round whose middle bar the end is sewn, or null
 * @param back how far the strap's end comes back over itself, or null where it comes back beneath
 */
record Through(SourceText hardware, SourceText part, Formula at, SourceText backTo, Formula back) {
  /** So much more, in millimetres, still passes. */
  private static final double ROOM = 0.5;

  private static final Key<SourceText> HARDWARE = Key.required("hardware", FigureForms.NAME);
  private static final Key<SourceText> PART = Thing.PART;
  private static final Key<Formula> AT = Key.of("at", FigureForms.LENGTH);
  private static final Key<Formula> BACK = Key.of("back", FigureForms.LENGTH);
  private static final Key<SourceText> BACK_TO = Key.of("back_to", FigureForms.NAME);
  private static final Table TABLE = Table.of("through", HARDWARE, PART, AT, BACK, BACK_TO);
  private static final Form<Through> MAP = FigureForms.map(TABLE, Through::read);

  /** Some of them: each an id, or a map. */
  static final Form<Entries<Through>> LIST =
      FigureForms.each(
          new Form<>(
              "name or map",
              Forms.schema("anyOf", List.of(FigureForms.NAME.schema(), MAP.schema())),
              List.of(TABLE),
              (reading, node, what) ->
                  node instanceof YamlNode.Entries
                      ? MAP.reader().read(reading, node, what)
                      : new Through(
                          FigureForms.NAME.reader().read(reading, node, what),
                          null,
                          null,
                          null,
                          null)));

  private static Through read(Keys keys) {
    if (keys.has(AT)) {
      keys.idle(AT, List.of(BACK, BACK_TO), List.of(HARDWARE, PART));
    } else if (keys.has(BACK) && keys.has(BACK_TO)) {
      keys.together(BACK, BACK_TO);
    }
    return keys.whole(
        new Through(
            keys.get(HARDWARE), keys.get(PART), keys.get(AT), keys.get(BACK_TO), keys.get(BACK)));
  }

  /** A strip with all that it goes through. */
  static Strip threaded(
      List<Through> through, Strip strip, double whole, Staging staging, Subject on) {
    List<SymbolOn> symbols = new ArrayList<>();
    List<String> said = new ArrayList<>();
    int turned = 0;
    for (Through one : through) {
      Optional<SymbolOn> symbol =
          staging.attempt(() -> one.stage(strip, whole, staging, on, through));
      symbol.ifPresent(found -> said.add(found.said()));
      // What comes back goes under the bars of what the strap passed before.
      if (symbol.isPresent() && one.at == null) {
        symbols.add(turned++, symbol.get());
      } else {
        symbol.ifPresent(symbols::add);
      }
    }
    return strip.with(symbols, said, staging.words());
  }

  private SymbolOn stage(
      Strip strip, double whole, Staging staging, Subject on, List<Through> all) {
    Hardware stated = Hardware.of(staging, hardware);
    Symbol symbol = stated.symbol(part, Collections.emptyMap());
    Symbol.Gate gate =
        symbol
            .gate()
            .orElseThrow(
                () ->
                    Faults.of(
                        hardware.position(),
                        FigureCode.FIGURE_NOTHING_THROUGH,
                        "name",
                        hardware.text(),
                        "form",
                        stated.form().id()));
    if (strip.wide() > gate.width() + ROOM) {
      throw Faults.of(
          hardware.position(),
          FigureCode.FIGURE_THROUGH_NARROW,
          "name",
          hardware.text(),
          "inner",
          Staging.hundredth(gate.width()),
          "value",
          Staging.hundredth(strip.wide()),
          "size",
          staging.size());
    }
    if (at == null && strip.broken()) {
      throw Faults.of(
          hardware.position(), FigureCode.FIGURE_STRAP_END_LEFT_OUT, "name", hardware.text());
    }
    double from = at == null ? whole : staging.length(at, 0, strip.seen());
    double comesBack = back == null ? 0 : staging.length(back, 0.1, whole);
    Optional<Through> slide = Optional.empty();
    if (backTo != null) {
      Through found = slide(all);
      slide = Optional.of(found);
      comesBack = whole - staging.length(found.at, 0, whole);
    }
    SymbolOn.Strap strap =
        new SymbolOn.Strap(strip.wide(), at == null, comesBack, strip.texture(), strip.side());
    Point place = strip.begins().plus(strip.inward().times(from));
    return new SymbolOn(
        symbol,
        Laying.Rigid.at(place, strip.inward()),
        Optional.of(strap),
        "",
        said(stated, symbol, comesBack, slide, staging));
  }

  /** The slide that the strap passed before and to which its end comes back. */
  private Through slide(List<Through> all) {
    return all.stream()
        .filter(one -> one.at != null && one.hardware.text().equals(backTo.text()))
        .findFirst()
        .orElseThrow(
            () ->
                Faults.of(
                    backTo.position(), FigureCode.FIGURE_BACK_TO_UNPASSED, "name", backTo.text()));
  }

  private String said(
      Hardware stated, Symbol symbol, double comesBack, Optional<Through> slide, Staging staging) {
    String what = stated.said(symbol, part);
    if (at != null) {
      return staging.words().word("symbol.passed", "what", what);
    }
    if (slide.isPresent()) {
      Through other = slide.get();
      Hardware round = Hardware.of(staging, other.hardware);
      String named = round.said(round.symbol(other.part, Collections.emptyMap()), other.part);
      return staging.words().word("symbol.turned-to", "what", what, "other", named);
    }
    return comesBack > 0
        ? staging
            .words()
            .word("symbol.turned-over", "what", what, "back", staging.printed(comesBack))
        : staging.words().word("symbol.turned", "what", what);
  }
}
