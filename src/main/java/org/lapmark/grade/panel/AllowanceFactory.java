package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
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

  private final PatternScope scope;
  private final StatementsByName statements;

  public AllowanceFactory(PatternScope scope, StatementsByName statements) {
    this.scope = scope;
    this.statements = statements;
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
      Map<String, Allowance> before = new LinkedHashMap<>(edges);
      if (stated.start() == null) {
        members.forEach(edge -> edges.put(edge, Allowance.FOLD));
      } else {
        spread(width(stated.start()), width(stated.end()), members, panel, edges);
      }
      replaced(stretches, before, stated.edge(), edges);
      stretches.add(new Stretch(stated.edge(), members));
    }
    new FoldEdges(panel, scope.size()).check(source, edges);
    CornerKind usual = source.corners().general();
    Map<String, CornerShape> corners = new LinkedHashMap<>();
    for (CornerSource corner : source.corners().single()) {
      PatternScope.corner(panel, corner.corner());
      corners.put(corner.corner().text(), shape(corner.kind(), panel, corner.corner().text()));
    }
    return new Allowances(
        edges, usual == null ? CornerShape.USUAL : shape(usual, panel, ""), corners);
  }

  /** What one statement goes over. */
  private record Stretch(SourceText edge, List<String> members) {}

  /**
   * Refuses a statement that changes all that an earlier one says. The other way round, a single
   * edge of a chain may differ from the rest.
   */
  private void replaced(
      List<Stretch> earlier,
      Map<String, Allowance> before,
      SourceText by,
      Map<String, Allowance> now) {
    List<String> members = new ArrayList<>(now.keySet());
    members.removeIf(edge -> before.get(edge).equals(now.get(edge)));
    for (Stretch stretch : earlier) {
      if (members.containsAll(stretch.members())) {
        throw new FindingException(
            Finding.of(
                GradeCode.ALLOWANCE_REPLACED,
                stretch.edge().position(),
                "edge",
                stretch.edge().text(),
                "by",
                by.text(),
                "size",
                scope.size()));
      }
    }
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
