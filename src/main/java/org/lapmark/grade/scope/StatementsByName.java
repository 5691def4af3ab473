package org.lapmark.grade.scope;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.OptionsSource.OptionSource;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SeamSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.Fastenings;
import org.lapmark.source.key.Ref;

/** What a pattern states, by the names that formulas and texts use. */
public final class StatementsByName {
  private final Map<String, SizeTable.Row> rows;
  private final Map<String, MeasureSource> measures;
  private final Map<String, ThingSource> things;
  private final Map<String, PanelSource> panels;
  private final Map<String, SeamSource> seams = new LinkedHashMap<>();
  private final Map<String, OptionSource> options;
  private final OptionsSource stated;
  private final Map<Ref, Formula> conditions;
  private final Fastenings fastenings;
  private final List<PieceSource> pieces;
  private final List<String> sizes;

  public StatementsByName(PatternSource source) {
    SizeTable table = source.sizes();
    rows = named(table == null ? List.of() : table.rows(), SizeTable.Row::name);
    sizes = table == null ? List.of() : table.sizes();
    measures = named(source.measures(), measure -> measure.name().text());
    things = named(source.materials(), thing -> thing.id().text());
    things.putAll(named(source.hardware(), thing -> thing.id().text()));
    panels = named(source.panels(), panel -> panel.name().text());
    source.seams().forEach(seam -> seams.putIfAbsent(seam.name().text(), seam));
    options = named(source.options().options(), option -> option.name().text());
    stated = source.options();
    conditions = stated.conditions();
    fastenings = source.fastenings();
    pieces = source.pieces();
  }

  private static <T> Map<String, T> named(List<T> all, Function<T, String> name) {
    Map<String, T> named = new LinkedHashMap<>();
    all.forEach(one -> named.put(name.apply(one), one));
    return named;
  }

  /** A row of the size table, or null. */
  SizeTable.Row row(String name) {
    return rows.get(name);
  }

  /** The sizes in their order. */
  List<String> sizes() {
    return sizes;
  }

  /** A measure, or null. */
  MeasureSource measure(String name) {
    return measures.get(name);
  }

  /** An option, or null. */
  OptionSource option(String name) {
    return options.get(name);
  }

  /** A material or a piece of hardware, or null. */
  public ThingSource thing(String id) {
    return things.get(id);
  }

  /** A panel, or null. */
  public PanelSource panel(String name) {
    return panels.get(name);
  }

  /** The first seam of a name, or null. */
  public SeamSource seam(String name) {
    return seams.get(name);
  }

  /** All that is fastened. */
  public Fastenings fastenings() {
    return fastenings;
  }

  /** A piece by its number. */
  public Optional<PieceSource> piece(String number) {
    return pieces.stream()
        .filter(piece -> Integer.toString(piece.number()).equals(number))
        .findFirst();
  }

  /** On what condition something belongs to a variant, or null. */
  Formula condition(Ref what) {
    return conditions.get(what);
  }

  boolean hasConditions() {
    return !conditions.isEmpty() || !stated.unread().isEmpty();
  }

  /** Whether something is stated of which too little could be read to know it. */
  public boolean isUnread(Ref what) {
    return stated.isUnread(what);
  }

  public Set<String> panelNames() {
    return Collections.unmodifiableSet(panels.keySet());
  }

  Set<String> thingNames() {
    return Collections.unmodifiableSet(things.keySet());
  }

  /** Names that stand for values by themselves. */
  public Set<String> valueNames() {
    Set<String> names = new LinkedHashSet<>(measures.keySet());
    names.addAll(rows.keySet());
    names.addAll(options.keySet());
    return names;
  }

  /** Where what a formula names is stated, or the formula where it is more than a name. */
  public Position stated(Formula formula) {
    Formula at = formula;
    Set<String> seen = new LinkedHashSet<>();
    while (at.soleName().isPresent() && seen.add(at.soleName().get().text())) {
      String name = at.soleName().get().text();
      MeasureSource measure = measures.get(name);
      if (rows.containsKey(name)) {
        return rows.get(name).position();
      } else if (measure == null || measure.formula() == null || measure.solving() != null) {
        return at.text().position();
      }
      at = measure.formula();
    }
    return at.text().position();
  }

  /** The kind of value that a name stands for, without computing it; nothing if it doesn't show. */
  public Optional<String> kind(SourceText name) {
    return new KindsByName(this).kind(name);
  }

  /** Where the number without a unit is stated for which a name stands. */
  public Optional<Position> withoutUnit(SourceText name) {
    String text = name.text();
    Set<String> seen = new LinkedHashSet<>();
    while (seen.add(text)) {
      SizeTable.Row row = rows.get(text);
      if (row != null) {
        return row.isWithoutUnit() ? Optional.of(row.position()) : Optional.empty();
      }
      MeasureSource measure = measures.get(text);
      if (measure == null || measure.formula() == null || measure.solving() != null) {
        return Optional.empty();
      }
      if (measure.formula().isPlainNumber()) {
        return Optional.of(measure.formula().text().position());
      }
      text = measure.formula().soleName().map(SourceText::text).orElse(text);
    }
    return Optional.empty();
  }
}
