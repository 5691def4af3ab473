package org.lapmark.grade.panel;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.demand.Fact;
import org.lapmark.grade.demand.Node;
import org.lapmark.grade.scope.GeometryFunction;
import org.lapmark.grade.scope.NamedValues;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.Presence;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.TrimSource;

/** Evaluates a pattern in one variant: all its values and panels on demand, in one graph. */
public final class PatternEvaluator implements Scope {
  private final StatementsByName statements;
  private final Variant variant;
  private final DemandGraph graph;
  private final PatternScope scope;
  private final Presence presence;
  private final PanelShapes shapes;
  private final FastenedThings fastened;
  private final PanelMarks marks;
  private final NamedValues names;

  public PatternEvaluator(PatternSource source, Variant variant, Findings findings) {
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
    this.fastened = new FastenedThings(statements, presence, graph, scope, shapes);
    this.marks =
        new PanelMarks(statements, presence, graph, factory, shapes, fastened, scope, findings);
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
    if (function.text().equals("width")) {
      SourceText name = references.get(0);
      Optional<TrimSource> trim = fastened.trim(name.text());
      if (trim.isPresent()) {
        return fastened.visible(trim.get(), name);
      }
      fastened.requireRead(name.text());
      if (name.text().indexOf('.') < 0 && statements.panel(name.text()) == null) {
        Set<String> known = new LinkedHashSet<>(statements.panelNames());
        known.addAll(fastened.trimNames());
        throw PatternScope.fault(
            GradeCode.REFERENCE_PANEL_UNKNOWN,
            name.position(),
            name.text(),
            known,
            "kind",
            "width",
            "panel",
            name.text());
      }
    }
    return GeometryFunction.value(function, references, shapes);
  }

  @Override
  public Optional<String> kind(SourceText name) {
    return statements.kind(name);
  }

  @Override
  public Optional<Position> withoutUnit(SourceText name) {
    return statements.withoutUnit(name);
  }

  /** A property of a material or of hardware, asked for where it is stated. */
  public Value property(ThingSource thing, String property) {
    return names.property(thing, property, thing.properties().get(property).text().position());
  }

  /** What was used in the computation of something that has been asked for. */
  public Set<Fact> dependencies(Node<?> node) {
    return graph.dependencies(node);
  }

  public StatementsByName statements() {
    return statements;
  }

  public PatternScope scope() {
    return scope;
  }

  public Presence presence() {
    return presence;
  }

  public PanelShapes shapes() {
    return shapes;
  }

  public FastenedThings fastened() {
    return fastened;
  }

  public PanelMarks marks() {
    return marks;
  }
}
