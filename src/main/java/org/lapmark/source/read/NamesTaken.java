package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PatternSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StepSource;
import org.lapmark.source.UseSource;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;

/**
 * Checks that names of measures, things and panels are given once, and that they are known where
 * used.
 */
final class NamesTaken {
  private final Reading reading;
  private final PatternSource source;

  NamesTaken(Reading reading, PatternSource source) {
    this.reading = reading;
    this.source = source;
  }

  void check() {
    clashes();
    uses();
    use();
  }

  private void clashes() {
    Map<String, Position> measures = new LinkedHashMap<>();
    if (source.sizes() != null) {
      source.sizes().rows().forEach(row -> measures.putIfAbsent(row.name(), row.position()));
    }
    source.measures().forEach(measure -> claim(measures, measure.name()));
    source.options().options().forEach(option -> claim(measures, option.name()));
    source.fastenings().trims().forEach(trim -> claim(measures, trim.name()));
    Map<String, Position> things = new LinkedHashMap<>();
    source.materials().forEach(thing -> claim(things, thing.id()));
    source.hardware().forEach(thing -> claim(things, thing.id()));
    source.making().tools().forEach(tool -> claim(things, tool.id()));
    source.panels().forEach(panel -> claim(things, panel.name()));
    source.fastenings().trims().forEach(trim -> claim(things, trim.name()));
    source.fastenings().attachments().forEach(one -> claim(things, one.name()));
  }

  private void uses() {
    List<String> known = new ArrayList<>();
    source.making().tools().forEach(tool -> known.add(tool.id().text()));
    source.materials().forEach(thing -> known.add(thing.id().text()));
    source.hardware().forEach(thing -> known.add(thing.id().text()));
    source.fastenings().trims().forEach(trim -> known.add(trim.name().text()));
    source.fastenings().attachments().forEach(one -> known.add(one.name().text()));
    for (StepSource step : source.steps()) {
      for (SourceText use : step.uses()) {
        if (!known.contains(use.text()) && !isUnread(use.text())) {
          reading.unknown(SourceCode.USE_UNKNOWN, use.position(), use.text(), known);
        }
      }
    }
  }

  /** Whether something has the name that is stated and couldn't be read. */
  private boolean isUnread(String name) {
    return Stream.of(Ref.Kind.THING, Ref.Kind.TRIM, Ref.Kind.ATTACHMENT)
        .anyMatch(kind -> source.options().isUnread(Ref.of(kind, name)));
  }

  /** Ages are of sizes, and what is worn somewhere is a thing or a piece. */
  private void use() {
    UseSource use = source.making().use();
    if (source.sizes() != null) {
      List<String> sizes = source.sizes().sizes();
      for (SourceText size : use.ages().keySet()) {
        if (!sizes.contains(size.text())) {
          reading.unknown(SourceCode.AGES_SIZE_UNKNOWN, size.position(), size.text(), sizes);
        }
      }
    }
    List<String> worn = new ArrayList<>();
    source.materials().forEach(thing -> worn.add(thing.id().text()));
    source.hardware().forEach(thing -> worn.add(thing.id().text()));
    source.pieces().forEach(piece -> worn.add(Integer.toString(piece.number())));
    for (SourceText what : use.wornAt().keySet()) {
      if (!worn.contains(what.text())) {
        reading.unknown(SourceCode.WORN_UNKNOWN, what.position(), what.text(), worn);
      }
    }
  }

  private void claim(Map<String, Position> taken, SourceText name) {
    Position first = taken.putIfAbsent(name.text(), name.position());
    if (first != null) {
      tell(reading, name, first);
    }
  }

  /** Says that something else has a name already. */
  static void tell(Reading reading, SourceText name, Position first) {
    reading
        .findings()
        .add(
            SourceCode.NAME_TAKEN,
            name.position(),
            "name",
            name.text(),
            "file",
            first.file(),
            "line",
            Integer.toString(first.line()));
  }
}
