package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads the measures: a formula, or a map with a formula or with a condition to be solved. */
final class MeasureReader {
  /** How many measures may be solved for: each is a search of its own. */
  static final int MOST_SOLVED = 20;

  private final Reading reading;
  private int solvedSoFar;

  MeasureReader(Reading reading) {
    this.reading = reading;
  }

  List<MeasureSource> read(YamlNode node) {
    List<MeasureSource> measures = new ArrayList<>();
    reading.named(
        node,
        "measures",
        true,
        (name, value) -> {
          if (value instanceof YamlNode.Entries map && reading.isOf(map, Section.MEASURE)) {
            stated(name, map, measures);
            return;
          }
          // A formula that can't be understood still makes a name that others may use.
          measures.add(new MeasureSource(name, reading.formula(value, name.text())));
        });
    return measures;
  }

  private void stated(SourceText name, YamlNode.Entries map, List<MeasureSource> measures) {
    Map<String, YamlNode> values =
        reading.section(map, Section.MEASURE, name.position(), name.text());
    reading.condition(values, name.position());
    boolean solved = values.containsKey("solve");
    if (solved == values.containsKey("value")) {
      reading
          .findings()
          .add(
              SourceCode.MEASURE_VALUE,
              name.position(),
              "name",
              name.text(),
              "both",
              solved ? "yes" : "no");
      measures.add(new MeasureSource(name, null));
      return;
    }
    if (!solved) {
      for (String key : List.of("from", "to", "tolerance")) {
        if (values.containsKey(key)) {
          reading.findings().add(SourceCode.SOLVE_MISSING, values.get(key).position(), "key", key);
        }
      }
      measures.add(new MeasureSource(name, reading.formula(values.get("value"), "value")));
      return;
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
      measures.add(new MeasureSource(name, null));
      return;
    }
    Formula condition = reading.formula(values.get("solve"), "solve");
    if (condition != null && !condition.isEquation()) {
      reading.findings().add(SourceCode.SOLVE_CONDITION, condition.text().position());
      condition = null;
    }
    Formula from = bound(name, values, "from");
    Formula to = bound(name, values, "to");
    Formula tolerance =
        values.containsKey("tolerance")
            ? reading.formula(values.get("tolerance"), "tolerance")
            : null;
    measures.add(
        condition != null && from != null && to != null
            ? new MeasureSource(name, condition, new MeasureSource.Solving(from, to, tolerance))
            : new MeasureSource(name, null));
  }

  private Formula bound(SourceText name, Map<String, YamlNode> values, String key) {
    if (values.containsKey(key)) {
      return reading.formula(values.get(key), key);
    }
    reading
        .findings()
        .add(SourceCode.SOLVE_BOUNDS, name.position(), "name", name.text(), "key", key);
    return null;
  }
}
