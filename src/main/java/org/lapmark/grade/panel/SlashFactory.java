package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Variant;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.spreading.Slash;
import org.lapmark.panel.spreading.Spreading;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PanelSource.SlashEnd;
import org.lapmark.source.PanelSource.SlashSource;

/** Cuts and opens panels along the slash lines that are stated for them. */
final class SlashFactory {
  /** Millimetres; no line is opened farther. */
  private static final double WIDEST = 10_000;

  private final PatternScope scope;
  private final Variant variant;
  private final PanelFactory factory;
  private final Findings findings;

  SlashFactory(PatternScope scope, Variant variant, PanelFactory factory, Findings findings) {
    this.findings = findings;
    this.scope = scope;
    this.variant = variant;
    this.factory = factory;
  }

  /**
   * A panel with its slash lines opened.
   *
   * @param panel the panel before
   * @param source what is stated for it
   * @param drawn the lines of its drawing, by name
   * @return the panel as it is graded
   * @throws FindingException when a line can't be opened
   * @throws DemandGraph.Unavailable when a line isn't there, which was reported
   */
  Panel opened(Panel panel, PanelSource source, Map<String, Path> drawn) {
    List<Slash> slashes = new ArrayList<>();
    for (SlashSource slash : source.slashes()) {
      slashes.add(
          new Slash(
              slash.name().text(), line(panel, slash, drawn), open(slash.open()), slash.hinge()));
    }
    try {
      return Spreading.spread(
          panel, slashes, notice -> findings.add(placed(notice, source).finding()));
    } catch (PanelException e) {
      throw placed(e, source);
    }
  }

  /** A problem at the line that it names. */
  private FindingException placed(PanelException problem, PanelSource source) {
    for (SlashSource slash : source.slashes()) {
      if (slash.name().text().equals(problem.arguments().get("slash"))) {
        return factory.inVariant(problem, slash.name());
      }
    }
    return factory.inVariant(problem, source.name());
  }

  private double open(Formula formula) {
    double open = scope.anyLength(formula);
    if (!(Math.abs(open) <= WIDEST)) {
      throw new FindingException(
          Finding.of(
              GradeCode.SHAPE_OUT_OF_RANGE,
              formula.text().position(),
              "key",
              "open",
              "value",
              Rounded.hundredth(open),
              "least",
              Rounded.hundredth(-WIDEST),
              "limit",
              Rounded.hundredth(WIDEST),
              "size",
              variant.size()));
    }
    return open;
  }

  private Path line(Panel panel, SlashSource slash, Map<String, Path> drawn) {
    if (!slash.stated().isEmpty()) {
      return new Path(List.of(new Line(end(panel, slash.from()), end(panel, slash.to()))));
    }
    Path line = drawn.get(slash.name().text());
    if (line == null) {
      throw new DemandGraph.Unavailable();
    }
    return line;
  }

  private Point end(Panel panel, SlashEnd end) {
    if (end instanceof SlashEnd.AtCorner corner) {
      return PatternScope.corner(panel, corner.corner());
    }
    SlashEnd.OnEdge on = (SlashEnd.OnEdge) end;
    Path edge = PatternScope.edge(panel, on.edge());
    double at = scope.along(on.at(), edge.length());
    if (!(at >= -Path.JOIN_TOLERANCE && at <= edge.length() + Path.JOIN_TOLERANCE)) {
      throw new FindingException(
          Finding.of(
              GradeCode.SLASH_END_OFF_EDGE,
              on.at().text().position(),
              "at",
              Rounded.hundredth(at),
              "edge",
              on.edge().text(),
              "length",
              Rounded.hundredth(edge.length()),
              "size",
              variant.size()));
    }
    return edge.atLength(at);
  }
}
