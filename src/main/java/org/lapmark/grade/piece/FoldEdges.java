package org.lapmark.grade.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.Allowance;
import org.lapmark.source.PieceSource;

/**
 * Whether the edges that are stated to lie on a fold can. Cloth folds along a straight line, with
 * the whole piece on one side of it, and is folded once or twice: edges that run straight on as
 * each other are one fold.
 */
public final class FoldEdges {
  /** How far an edge may stray from its chord, or the piece beyond it, in millimetres. */
  private static final double STRAIGHT = 0.1;

  private static final double CHORD = 0.01;

  /** Cloth is folded once or in four. */
  private static final int MOST = 2;

  /** Degrees by which a line may turn where it crosses a fold and still seem smooth. */
  private static final double SMOOTH = 1;

  /** Degrees; what turns by more, such as a pointed neckline, is no slip of a pen. */
  private static final double MEANT = 30;

  private final Panel panel;
  private final String size;

  /** Where each edge's fold is stated. */
  private final Map<String, Position> places = new LinkedHashMap<>();

  public FoldEdges(Panel panel, String size) {
    this.panel = panel;
    this.size = size;
  }

  /**
   * Looks at a piece's folds.
   *
   * @param source the piece as stated
   * @param allowances what its edges have, by name
   * @param findings told of edges that aren't quite square to a fold
   * @throws FindingException when cloth can't be folded so
   */
  public void check(PieceSource source, Map<String, Allowance> allowances, Findings findings) {
    for (PieceSource.EdgeAllowance stated : source.edgeAllowances()) {
      String name = stated.edge().text();
      for (String edge : panel.chains().getOrDefault(name, List.of(name))) {
        if (allowances.get(edge).fold()) {
          places.put(edge, stated.edge().position());
        }
      }
    }
    if (places.isEmpty()) {
      return;
    }
    List<Edge> folds = new ArrayList<>();
    for (Edge edge : panel.edges()) {
      if (places.containsKey(edge.name())) {
        straight(edge);
        oneSided(edge);
        folds.add(edge);
      }
    }
    count(folds);
    panel.marks(Intake.class).stream()
        .filter(intake -> places.containsKey(intake.edge()))
        .findFirst()
        .ifPresent(this::taken);
    corners(findings);
  }

  /** Square to a fold an edge runs smoothly on in the other half. */
  private void corners(Findings findings) {
    List<Edge> ring = panel.edges();
    for (int i = 0; i < ring.size(); i++) {
      Edge one = ring.get(i);
      Edge next = ring.get((i + 1) % ring.size());
      if (places.containsKey(one.name()) != places.containsKey(next.name())) {
        Path before = one.path();
        Point arriving = before.curves().get(before.curves().size() - 1).tangent(1);
        Point leaving = next.path().curves().get(0).tangent(0);
        boolean foldFirst = places.containsKey(one.name());
        double aslant = StrictMath.asin(Math.min(1, Math.abs(arriving.dot(leaving))));
        double turn = 2 * StrictMath.toDegrees(aslant);
        if (turn > SMOOTH && turn < MEANT) {
          findings.add(
              GradeCode.FOLD_CORNER,
              places.get(foldFirst ? one.name() : next.name()),
              "edge",
              foldFirst ? next.name() : one.name(),
              "panel",
              panel.name(),
              "turn",
              Rounded.hundredth(turn),
              "size",
              size);
        }
      }
    }
  }

  /** What is taken up on a fold would be cut beyond it. */
  private void taken(Intake intake) {
    throw new FindingException(
        Finding.of(
            GradeCode.FOLD_WITH_INTAKE,
            places.get(intake.edge()),
            "edge",
            intake.edge(),
            "panel",
            panel.name(),
            "kind",
            intake.kindName(),
            "name",
            intake.name(),
            "size",
            size));
  }

  private void straight(Edge edge) {
    double apart = astray(edge, edge.path().start(), edge.path().end());
    if (apart > STRAIGHT) {
      throw new FindingException(
          Finding.of(
              GradeCode.FOLD_NOT_STRAIGHT,
              places.get(edge.name()),
              "edge",
              edge.name(),
              "panel",
              panel.name(),
              "apart",
              Rounded.hundredth(apart),
              "size",
              size));
    }
  }

  /** The farthest that an edge lies from the straight line between two points. */
  private static double astray(Edge edge, Point from, Point to) {
    double reach = from.distance(to);
    double most = 0;
    for (Point point : edge.path().flattened(CHORD)) {
      // An edge that ends where it begins has no chord.
      double aside =
          reach <= STRAIGHT
              ? point.distance(from)
              : Math.abs(to.minus(from).cross(point.minus(from))) / reach;
      most = Math.max(most, aside);
    }
    return most;
  }

  private void oneSided(Edge edge) {
    Point start = edge.path().start();
    Point along = edge.path().end().minus(start).unit();
    double most = 0;
    for (Point point : panel.outline().flattened(CHORD)) {
      // Clockwise on paper the panel lies to the right of its edges.
      most = Math.max(most, -along.cross(point.minus(start)));
    }
    if (most > STRAIGHT) {
      throw new FindingException(
          Finding.of(
              GradeCode.FOLD_CROSSED,
              places.get(edge.name()),
              "edge",
              edge.name(),
              "panel",
              panel.name(),
              "beyond",
              Rounded.hundredth(most),
              "size",
              size));
    }
  }

  private void count(List<Edge> folds) {
    List<Edge> lines = new ArrayList<>();
    for (Edge fold : folds) {
      boolean known =
          lines.stream()
              .anyMatch(line -> astray(fold, line.path().start(), line.path().end()) <= STRAIGHT);
      if (!known) {
        lines.add(fold);
      }
    }
    if (lines.size() > MOST) {
      throw new FindingException(
          Finding.of(
              GradeCode.FOLDS_TOO_MANY,
              places.get(lines.get(MOST).name()),
              "panel",
              panel.name(),
              "count",
              lines.size(),
              "size",
              size));
    }
  }
}
