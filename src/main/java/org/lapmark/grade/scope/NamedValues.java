package org.lapmark.grade.scope;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.demand.Fact;
import org.lapmark.grade.demand.Node;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.OptionsSource.OptionSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.ThingSource;
import org.lapmark.source.key.Ref;

/** The values of names in one variant: base measures, measures, options, things' properties. */
public final class NamedValues {
  private static final String SIZE = "size";

  private final Variant variant;
  private final StatementsByName statements;
  private final Presence presence;
  private final DemandGraph graph;
  private final Map<String, Value> tried;
  private final PatternScope scope;
  private final Solving.Trials trials;
  private final Findings findings;

  /**
   * Prepares them.
   *
   * @param tried values that are tried for measures, by name; one is tried for each but the last in
   *     order to try the next
   * @param scope what formulas are computed in
   * @param trials where other values are tried
   */
  public NamedValues(
      Variant variant,
      StatementsByName statements,
      Presence presence,
      DemandGraph graph,
      Map<String, Value> tried,
      PatternScope scope,
      Solving.Trials trials,
      Findings findings) {
    this.variant = variant;
    this.statements = statements;
    this.presence = presence;
    this.graph = graph;
    this.tried = tried;
    this.scope = scope;
    this.trials = trials;
    this.findings = findings;
  }

  /** The value of a measure. */
  public record Measure(Ref ref) implements Node<Value> {
    @Override
    public String named() {
      return ref.name();
    }
  }

  /** The value of a property of a material or of hardware. */
  public record Property(Ref thing, String property) implements Node<Value> {
    @Override
    public String named() {
      return thing.name() + "." + property;
    }
  }

  /** With a value tried for one more measure. */
  public Map<String, Value> trying(String name, Value value) {
    Map<String, Value> all = new LinkedHashMap<>(tried);
    all.put(name, value);
    return all;
  }

  /** The value of a name as formulas have it. */
  public Value value(SourceText name) {
    String text = name.text();
    int dot = text.indexOf('.');
    if (dot >= 0) {
      return property(name, dot);
    }
    if (tried.containsKey(text)) {
      return tried(name);
    }
    OptionSource option = statements.option(text);
    if (option != null) {
      return chosen(option, name);
    }
    SizeTable.Row row = statements.row(text);
    if (row != null) {
      return inSize(row);
    }
    MeasureSource measure = statements.measure(text);
    if (measure == null && text.equals(SIZE) && statements.sizes().contains(variant.size())) {
      graph.note(new Fact.Size());
      return new Value.Choice(variant.size(), variant.size(), statements.sizes(), true);
    }
    if (measure == null) {
      throw PatternScope.fault(
          GradeCode.NAME_UNKNOWN,
          name.position(),
          text,
          statements.valueNames(),
          "kind",
          "value",
          "name",
          text);
    }
    presence.require(measure.ref(), name);
    return graph.demand(new Measure(measure.ref()), name.position(), () -> computed(measure));
  }

  private Value inSize(SizeTable.Row row) {
    graph.note(new Fact.Cell(row.name(), variant.size()));
    Value.Quantity value = row.values().get(variant.size());
    if (value == null) {
      throw new DemandGraph.Unavailable();
    }
    return value;
  }

  private Value computed(MeasureSource measure) {
    graph.note(new Fact.Stated(measure.ref()));
    return measure.solving() != null
        ? new Solving(scope, trials, findings, measure).solve()
        : stated(measure.formula()).evaluate(scope);
  }

  /** A formula that could be read; of one that couldn't be its reader has said so. */
  private static Formula stated(Formula formula) {
    if (formula == null) {
      throw new DemandGraph.Unavailable();
    }
    return formula;
  }

  /** The value on trial; one that another trial is waiting for depends on itself. */
  private Value tried(SourceText name) {
    List<String> names = new ArrayList<>(tried.keySet());
    int at = names.indexOf(name.text());
    if (at < names.size() - 1) {
      names.add(name.text());
      throw new DemandGraph.Entangled(
          Finding.of(
              GradeCode.VALUE_CYCLE,
              name.position(),
              "cycle",
              String.join(" → ", names.subList(at, names.size()))));
    }
    graph.touch();
    return tried.get(name.text());
  }

  private Value chosen(OptionSource option, SourceText name) {
    graph.note(new Fact.Choice(option.name().text()));
    String choice = variant.choices().get(option.name().text());
    if (choice == null) {
      throw new FindingException(
          Finding.of(GradeCode.OPTION_UNDECIDED, name.position(), "name", name.text()));
    }
    if (option.isYesOrNo()) {
      return new Value.Truth(choice.equals(OptionsSource.YES));
    }
    String label =
        option.choices().stream()
            .filter(one -> one.id().text().equals(choice))
            .findFirst()
            .map(one -> one.label().text())
            .orElse(choice);
    return new Value.Choice(choice, label, option.ids(), false);
  }

  private Value property(SourceText name, int dot) {
    SourceText id = name.part(0, dot);
    String property = name.text().substring(dot + 1);
    ThingSource thing = statements.thing(id.text());
    if (thing == null) {
      Set<String> known = statements.thingNames();
      throw PatternScope.fault(
          GradeCode.NAME_UNKNOWN,
          name.position(0, dot),
          id.text(),
          known,
          "kind",
          "value",
          "name",
          id.text());
    }
    presence.require(thing.ref(), id);
    if (!thing.properties().containsKey(property)) {
      throw PatternScope.fault(
          GradeCode.PROPERTY_UNKNOWN,
          name.position(dot + 1, name.text().length()),
          property,
          thing.properties().keySet(),
          "thing",
          id.text(),
          "property",
          property);
    }
    return property(thing, property, name.position());
  }

  /**
   * A property of a material or of hardware.
   *
   * @param thing the thing
   * @param property the property's name
   * @param asked where it is asked for
   * @return its value
   * @throws DemandGraph.Unavailable when it isn't stated, or can't be computed
   */
  public Value property(ThingSource thing, String property, Position asked) {
    Formula formula = stated(thing.properties().get(property));
    return graph.demand(
        new Property(thing.ref(), property),
        asked,
        () -> {
          graph.note(new Fact.Property(thing.ref(), property));
          return formula.evaluate(scope);
        });
  }
}
