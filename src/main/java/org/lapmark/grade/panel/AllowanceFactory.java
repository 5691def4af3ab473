package org.lapmark.grade.panel;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.piece.FoldEdges;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.Allowance;
import org.lapmark.panel.cutting.Allowances;
import org.lapmark.panel.cutting.CornerShape;
import org.lapmark.source.CornerSources.CornerKind;
import org.lapmark.source.CornerSources.CornerSource;
import org.lapmark.source.PieceSource;

/** Evaluates the allowances of one variant's pieces. */
public final class AllowanceFactory {
  private static final double HIGHEST_LIMIT = 10;

  /** In millimetres; far wider than any hem, and narrow enough to be drawn quickly. */
  private static final double WIDEST = 1000;

  /** In millimetres; between this and nothing there is no cloth that a blade could leave. */
  private static final double NARROWEST = 0.5;

  private final PatternScope scope;
  private final StatementsByName statements;
  private final Findings findings;

  public AllowanceFactory(PatternScope scope, StatementsByName statements, Findings findings) {
    this.scope = scope;
    this.statements = statements;
    this.findings = findings;
  }

  public Allowances of(PieceSource source, Panel panel) {
    double general = source.allowance() == null ? 0 : width(source.allowance());
    Map<String, Allowance> edges = new LinkedHashMap<>();
    panel.edges().forEach(edge -> edges.put(edge.name(), Allowance.of(general)));
    List<Stretch> stretches = new ArrayList<>();
    for (PieceSource.EdgeAllowance stated : source.edgeAllowances()) {
      PatternScope.requireEdge(panel, stated.edge());
      String name = stated.edge().text();
      List<String> members = panel.chains().getOrDefault(name, List.of(name));
      Map<String, Allowance> widths = new LinkedHashMap<>();
      if (stated.start() == null) {
        members.forEach(edge -> widths.put(edge, Allowance.FOLD));
      } else {
        spread(width(stated.start()), width(stated.end()), members, panel, widths);
      }
      stretches.add(new Stretch(stated.edge(), widths));
    }
    edges.replaceAll((edge, usual) -> stated(edge, stretches).orElse(usual));
    new FoldEdges(panel, scope.size()).check(source, edges, findings);
    CornerKind usual = source.corners().general();
    Map<String, CornerShape> corners = new LinkedHashMap<>();
    for (CornerSource corner : source.corners().single()) {
      PatternScope.corner(panel, corner.corner());
      corners.put(corner.corner().text(), shape(corner.kind(), panel, corner.corner().text()));
    }
    return new Allowances(
        edges, usual == null ? CornerShape.USUAL : shape(usual, panel, ""), corners);
  }

  /** What one statement says of each edge that it goes over. */
  private record Stretch(SourceText edge, Map<String, Allowance> widths) {
    boolean isWithin(Stretch other) {
      return widths.size() < other.widths.size()
          && other.widths.keySet().containsAll(widths.keySet());
    }
  }

  /**
   * What is stated of an edge. A stretch that lies within a longer one may differ from the rest of
   * it, whichever is stated first; of two that only overlap nobody knows which is meant.
   */
  private Optional<Allowance> stated(String edge, List<Stretch> stretches) {
    List<Stretch> over = stretches.stream().filter(one -> one.widths().containsKey(edge)).toList();
    List<Stretch> nearest =
        over.stream().filter(one -> over.stream().noneMatch(in -> in.isWithin(one))).toList();
    for (Stretch other : nearest) {
      Stretch first = nearest.get(0);
      if (!other.widths().get(edge).equals(first.widths().get(edge))) {
        throw new FindingException(
            Finding.of(
                GradeCode.ALLOWANCES_CONTRADICT,
                other.edge().position(),
                "edge",
                edge,
                "first",
                first.edge().text(),
                "second",
                other.edge().text(),
                "size",
                scope.size()));
      }
    }
    return nearest.stream().findFirst().map(one -> one.widths().get(edge));
  }

  /**
   * Along a chain an allowance changes evenly from its first edge's start to its last one's end.
   */
  private static void spread(
      double start, double end, List<String> members, Panel panel, Map<String, Allowance> edges) {
    double total = 0;
    for (Edge edge : panel.edges()) {
      total += members.contains(edge.name()) ? edge.path().length() : 0;
    }
    double before = 0;
    for (String member : members) {
      double from = start + (end - start) * before / total;
      before += panel.line(member).length();
      double to = start == end ? end : start + (end - start) * before / total;
      edges.put(member, new Allowance(start == end ? start : from, to, false));
    }
  }

  private CornerShape shape(CornerKind kind, Panel panel, String corner) {
    return switch (kind.way()) {
      case MITRED ->
          kind.limit() == null ? CornerShape.USUAL : new CornerShape.Mitred(limit(kind.limit()));
      case BLUNT -> CornerShape.BLUNT;
      case SQUARE_TO -> new CornerShape.Square(member(panel, kind.edge().text(), corner));
      case TURNED_BACK ->
          new CornerShape.TurnedBack(member(panel, kind.edge().text(), corner), kind.folds());
    };
  }

  /** Of a chain, the edge that begins or ends at the corner. */
  private static String member(Panel panel, String name, String corner) {
    List<String> members = panel.chains().getOrDefault(name, List.of());
    for (Edge edge : panel.edges()) {
      boolean meets = edge.from().equals(corner) || edge.to().equals(corner);
      if (meets && members.contains(edge.name())) {
        return edge.name();
      }
    }
    return name;
  }

  private double limit(Formula formula) {
    Value value = formula.evaluate(scope);
    double limit = value.amount(Dimension.PLAIN).orElse(Double.NaN);
    if (!(limit >= 1 && limit <= HIGHEST_LIMIT)) {
      throw new FindingException(
          Finding.of(
              GradeCode.SHAPE_OUT_OF_RANGE,
              formula.text().position(),
              "key",
              "mitred",
              "value",
              Double.isNaN(limit) ? PatternScope.kind(value) : Rounded.hundredth(limit),
              "least",
              Rounded.hundredth(1),
              "limit",
              Rounded.hundredth(HIGHEST_LIMIT),
              "size",
              scope.size()));
    }
    return limit;
  }

  private double width(Formula formula) {
    double allowance = scope.length(formula);
    if (allowance < 0) {
      throw new FindingException(
          Finding.of(
              GradeCode.ALLOWANCE_NEGATIVE,
              statements.stated(formula),
              "value",
              Rounded.hundredth(allowance),
              "cause",
              PatternScope.cause(formula),
              "size",
              scope.size()));
    }
    if (allowance > 0 && allowance < NARROWEST) {
      throw new FindingException(
          Finding.of(
              GradeCode.ALLOWANCE_TOO_NARROW,
              statements.stated(formula),
              "value",
              new BigDecimal(allowance)
                  .round(new MathContext(2, RoundingMode.HALF_UP))
                  .stripTrailingZeros()
                  .toPlainString(),
              "least",
              Rounded.hundredth(NARROWEST),
              "cause",
              PatternScope.cause(formula),
              "size",
              scope.size()));
    }
    if (allowance > WIDEST) {
      throw new FindingException(
          Finding.of(
              GradeCode.ALLOWANCE_TOO_WIDE,
              formula.text().position(),
              "value",
              Rounded.hundredth(allowance),
              "limit",
              Rounded.hundredth(WIDEST),
              "size",
              scope.size()));
    }
    return allowance;
  }

  /** Where a problem with a corner is shown; null where no corner is stated. */
  public static Position place(PieceSource source, Object corner) {
    for (CornerSource stated : source.corners().single()) {
      if (stated.corner().text().equals(corner)) {
        return stated.corner().position();
      }
    }
    return null;
  }
}
