package org.lapmark.grade.panel;

import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.demand.Fact;
import org.lapmark.grade.demand.Node;
import org.lapmark.grade.scope.GeometryFunction;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.Presence;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.panel.Panel;
import org.lapmark.source.PanelSource;
import org.lapmark.source.ShapeSource;
import org.lapmark.source.drawing.PanelDrawing;
import org.lapmark.source.key.Ref;
import org.lapmark.source.mark.MarkKind;
import org.lapmark.source.mark.MarkSource;

/** The panels of one variant as far as geometry depends on them, each built once. */
public final class PanelShapes implements GeometryFunction.Shapes {
  private final StatementsByName statements;
  private final Presence presence;
  private final DemandGraph graph;
  private final PanelFactory factory;
  private final String size;

  PanelShapes(
      StatementsByName statements,
      Presence presence,
      DemandGraph graph,
      PanelFactory factory,
      String size) {
    this.statements = statements;
    this.presence = presence;
    this.graph = graph;
    this.factory = factory;
    this.size = size;
  }

  /** A panel without the marks on which no geometry depends. */
  public record Shape(Ref panel) implements Node<Panel> {
    @Override
    public String named() {
      return "panel " + panel.name();
    }
  }

  /**
   * A panel by its name, without the notches, buttonholes and the like that are stated beside its
   * drawing: all that geometry depends on.
   *
   * @param name where it is named
   * @return the panel
   * @throws FindingException when no panel has the name
   * @throws DemandGraph.Unavailable when it can't be drawn
   */
  @Override
  public Panel shape(SourceText name) {
    PanelSource source = stated(name);
    return graph.demand(new Shape(source.ref()), name.position(), () -> built(source));
  }

  /**
   * What is stated of a panel.
   *
   * @param name where it is named
   * @return its whole statement
   * @throws FindingException when no panel has the name, or the variant doesn't have it
   */
  PanelSource stated(SourceText name) {
    String text = name.text();
    PanelSource source = statements.panel(text);
    if (source == null) {
      throw PatternScope.fault(
          GradeCode.REFERENCE_PANEL_UNKNOWN,
          name.position(),
          text,
          statements.panelNames(),
          "kind",
          "panel",
          "panel",
          text);
    }
    presence.require(source.ref(), name);
    return source;
  }

  boolean has(String name) {
    return statements.panel(name) != null;
  }

  private Panel built(PanelSource source) {
    note(source);
    return factory.build(presence.of(source), this::shape, notice -> {});
  }

  /** Notes what a panel's geometry is stated by, beside the values that its formulas ask for. */
  public void note(PanelSource source) {
    graph.note(new Fact.Stated(source.ref()));
    if (source.shape() instanceof ShapeSource.DrawnBySize) {
      graph.note(new Fact.Size());
    }
    DrawnPlaces.drawing(source, size)
        .flatMap(PanelDrawing::file)
        .ifPresent(file -> graph.note(new Fact.Drawing(file.name())));
    for (MarkSource mark : source.marks()) {
      if (mark.isDrawn() || mark.kind().stage() == MarkKind.Stage.SHAPE) {
        graph.note(new Fact.Stated(mark.ref(source.ref())));
      }
    }
    for (PanelSource.NotchSource notch : source.notches()) {
      if (notch.place().drawn().isPresent()) {
        graph.note(new Fact.Stated(notch.ref()));
      }
    }
    source.edges().forEach(edge -> graph.note(new Fact.Stated(edge.ref(source.ref()))));
    source.slashes().forEach(slash -> graph.note(new Fact.Stated(slash.ref(source.ref()))));
  }
}
