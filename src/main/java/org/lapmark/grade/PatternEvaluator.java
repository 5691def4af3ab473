package org.lapmark.grade;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;

/** Evaluates a pattern in one variant: all its values and panels on demand, in one graph. */
final class PatternEvaluator implements Scope {
  private final StatementsByName statements;
  private final Variant variant;
  private final DemandGraph graph;
  private final PatternScope scope;
  private final Presence presence;
  private final PanelShapes shapes;
  private final PanelMarks marks;
  private final NamedValues names;

  PatternEvaluator(PatternSource source, Variant variant, Findings findings) {
    this(
        new StatementsByName(source),
        variant,
        new DemandGraph(findings),
        new LinkedHashMap<>(),
        findings);
  }

  private PatternEvaluator(
      StatementsByName statements,
      Variant variant,
      DemandGraph graph,
      Map<String, Value> tried,
      Findings findings) {
    this.statements = statements;
    this.variant = variant;
    this.graph = graph;
    this.scope = new PatternScope(this, variant.size());
    this.presence = new Presence(scope, statements, graph);
    PanelFactory factory = new PanelFactory(scope, variant, findings);
    this.shapes = new PanelShapes(statements, presence, graph, factory, variant.size());
    this.marks = new PanelMarks(statements, presence, graph, factory, shapes, scope, findings);
    this.names =
        new NamedValues(variant, statements, presence, graph, tried, scope, this::trial, findings);
  }

  /** The same with a value tried for a measure. */
  private Scope trial(String name, Value value, Findings sink, DemandGraph.Kept kept) {
    return new PatternEvaluator(
            statements, variant, graph.trial(sink, kept), names.trying(name, value), sink)
        .scope;
  }

  @Override
  public Value value(SourceText name) {
    return names.value(name);
  }

  @Override
  public Value geometry(SourceText function, List<SourceText> references) {
    return GeometryFunction.value(function, references, shapes);
  }

  @Override
  public Optional<Position> withoutUnit(SourceText name) {
    return statements.withoutUnit(name);
  }

  /** A property of a material or of hardware, asked for where it is stated. */
  Value property(ThingSource thing, String property) {
    return names.property(thing, property, thing.properties().get(property).text().position());
  }

  /** What was used in the computation of something that has been asked for. */
  Set<Fact> dependencies(Node<?> node) {
    return graph.dependencies(node);
  }

  StatementsByName statements() {
    return statements;
  }

  PatternScope scope() {
    return scope;
  }

  Presence presence() {
    return presence;
  }

  PanelShapes shapes() {
    return shapes;
  }

  PanelMarks marks() {
    return marks;
  }
}
