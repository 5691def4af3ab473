package org.lapmark.source.read;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads the measures: a formula, or a map with a formula or with a condition to be solved. */
final class MeasureReader {
  /** How many measures may be solved for: each is a search of its own. */
  static final int MOST_SOLVED = 20;

  private static final Form<Formula> QUANTITY = Forms.formula("formula");
  private static final Key<Formula> VALUE = Key.of("value", QUANTITY);
  private static final Key<Formula> SOLVE = Key.of("solve", Forms.formula("equation"));
  private static final Key<Formula> FROM = Key.of("from", QUANTITY);
  private static final Key<Formula> TO = Key.of("to", QUANTITY);
  private static final Key<Formula> TOLERANCE = Key.of("tolerance", Forms.LENGTH).unless("0.01 mm");
  private static final Table TABLE =
      Table.of("measure", VALUE, SOLVE, FROM, TO, TOLERANCE, Stated.WHEN)
          .oneOf(Choice.of(way(VALUE), way(SOLVE, FROM, TO), way(SOLVE, FROM, TO, TOLERANCE)));

  /** The measures of a pattern. */
  static final Key<List<Named<YamlNode>>> MEASURES =
      Key.of("measures", Forms.named(Forms.either(QUANTITY, Forms.map(TABLE)), true));

  private final Reading reading;
  private int solvedSoFar;

  MeasureReader(Reading reading) {
    this.reading = reading;
  }

  List<MeasureSource> read(Stated pattern) {
    List<MeasureSource> measures = new ArrayList<>();
    for (Named<YamlNode> measure : pattern.all(MEASURES)) {
      SourceText name = measure.name();
      if (measure.value() instanceof YamlNode.Entries map && reading.isOf(map, TABLE)) {
        measures.add(stated(name, reading.stated(map, TABLE, name.position(), name.text())));
      } else {
        // A formula that can't be understood still makes a name that others may use.
        measures.add(new MeasureSource(name, reading.formula(measure.value(), name.text())));
      }
    }
    return measures;
  }

  private MeasureSource stated(SourceText name, Stated in) {
    in.condition(Ref.of(Ref.Kind.MEASURE, name.text()));
    boolean solved = in.has(SOLVE);
    if (solved == in.has(VALUE)) {
      reading
          .findings()
          .add(
              SourceCode.MEASURE_VALUE,
              name.position(),
              "name",
              name.text(),
              "both",
              solved ? "yes" : "no");
      return new MeasureSource(name, null);
    }
    if (!solved) {
      for (Key<Formula> key : List.of(FROM, TO, TOLERANCE)) {
        if (in.has(key)) {
          reading.findings().add(SourceCode.SOLVE_MISSING, in.position(key), "key", key.name());
        }
      }
      return new MeasureSource(name, in.get(VALUE));
    }
    if (++solvedSoFar > MOST_SOLVED) {
      reading
          .findings()
          .add(
              KeyCode.TOO_MANY_ENTRIES,
              name.position(),
              "what",
              "measures that are solved for",
              "limit",
              Integer.toString(MOST_SOLVED));
      return new MeasureSource(name, null);
    }
    Formula condition = in.get(SOLVE);
    if (condition != null && !condition.isEquation()) {
      reading.findings().add(SourceCode.SOLVE_CONDITION, condition.text().position());
      condition = null;
    }
    Formula from = bound(name, in, FROM);
    Formula to = bound(name, in, TO);
    Formula tolerance = in.get(TOLERANCE);
    return condition != null && from != null && to != null
        ? new MeasureSource(name, condition, new MeasureSource.Solving(from, to, tolerance))
        : new MeasureSource(name, null);
  }

  private Formula bound(SourceText name, Stated in, Key<Formula> key) {
    if (!in.has(key)) {
      reading
          .findings()
          .add(SourceCode.SOLVE_BOUNDS, name.position(), "name", name.text(), "key", key.name());
    }
    return in.get(key);
  }
}
