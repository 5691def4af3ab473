package org.lapmark.grade.scope;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.ThingSource;

/**
 * What kinds of values names stand for, from statements alone. It computes nothing, so that it can
 * be asked of what a variant doesn't have; names that ask for themselves have no kind.
 */
final class KindsByName implements Scope {
  private final StatementsByName statements;
  private final Set<String> asked = new LinkedHashSet<>();

  KindsByName(StatementsByName statements) {
    this.statements = statements;
  }

  @Override
  public Optional<String> kind(SourceText name) {
    String text = name.text();
    if (!asked.add(text)) {
      return Optional.empty();
    }
    int dot = text.indexOf('.');
    if (dot >= 0) {
      ThingSource thing = statements.thing(text.substring(0, dot));
      return thing == null ? Optional.empty() : of(thing.properties().get(text.substring(dot + 1)));
    }
    SizeTable.Row row = statements.row(text);
    if (row != null) {
      return row.values().values().stream().map(Value.Quantity::kind).findFirst();
    }
    MeasureSource measure = statements.measure(text);
    if (measure == null) {
      return Optional.empty();
    }
    return of(measure.solving() == null ? measure.formula() : measure.solving().to());
  }

  private Optional<String> of(Formula formula) {
    return Optional.ofNullable(formula).flatMap(one -> one.kind(this));
  }

  @Override
  public Value value(SourceText name) {
    throw new UnsupportedOperationException(name.text());
  }

  @Override
  public Value geometry(SourceText function, List<SourceText> references) {
    throw new UnsupportedOperationException(function.text());
  }
}
