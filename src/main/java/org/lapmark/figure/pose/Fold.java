package org.lapmark.figure.pose;

import java.util.List;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Crease;
import org.lapmark.figure.workpiece.FoldedCloth;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * A straight line at which a piece is folded over onto itself.
 *
 * @param line a fold line or placement line of the panel, or null
 * @param edge an edge that the line runs beside, or null
 * @param inset how far inside that edge's stitching line, or null for on it
 * @param fromEdge the edge at which the line begins, or null
 * @param from where on it
 * @param toEdge the edge at which it ends, or null
 * @param to where on it
 * @param over an edge or a corner of what is folded over; null for the one that the line runs
 *     beside
 * @param corner a corner that is turned back, or null
 * @param by how far it lies back, or null for flat
 */
public record Fold(
    SourceText line,
    SourceText edge,
    Formula inset,
    SourceText fromEdge,
    Formula from,
    SourceText toEdge,
    Formula to,
    SourceText over,
    SourceText corner,
    Formula by) {
  private static final Key<SourceText> LINE = Key.of("line", FigureForms.NAME);
  private static final Key<SourceText> EDGE = Key.of("edge", FigureForms.EDGE);
  private static final Key<Formula> INSET = Key.of("inset", FigureForms.LENGTH).unless("0 mm");
  private static final Key<SourceText> FROM_EDGE = Key.of("from_edge", FigureForms.EDGE);
  private static final Key<Formula> FROM = Key.of("from", FigureForms.PLACE).unless("1/2");
  private static final Key<SourceText> TO_EDGE = Key.of("to_edge", FigureForms.EDGE);
  private static final Key<Formula> TO = Key.of("to", FigureForms.PLACE).unless("1/2");
  private static final Key<SourceText> OVER = Key.of("over", FigureForms.EDGE_OR_CORNER);
  private static final Key<SourceText> CORNER = Key.of("corner", FigureForms.CORNER);
  private static final Key<Formula> BY = Key.of("by", FigureForms.SHARE).unless("1");
  private static final Table TABLE =
      Table.of("fold", LINE, EDGE, INSET, FROM_EDGE, FROM, TO_EDGE, TO, OVER, CORNER, BY)
          .oneOf(Choice.among(List.of(LINE, EDGE, FROM_EDGE, CORNER)));

  /** Stated in a list. */
  static final Form<Entries<Fold>> LIST = FigureForms.list(TABLE, Fold::read);

  /** What is folded over lies at least so far beyond the line, in millimetres. */
  private static final double LEAST = 0.1;

  /** So far inside an edge lies cloth that goes with it, in millimetres. */
  private static final double BESIDE = 1;

  private static Fold read(Keys keys) {
    String one = keys.one();
    if (one.equals(FROM_EDGE.name())) {
      keys.need(TO_EDGE, OVER);
      keys.idle(FROM_EDGE, List.of(INSET), List.of(FROM, TO_EDGE, TO, OVER, BY));
    } else if (one.equals(CORNER.name())) {
      keys.need(INSET);
      keys.idle(CORNER, List.of(FROM, TO_EDGE, TO, OVER), List.of(INSET, BY));
    } else {
      Key<?> with = one.equals(LINE.name()) ? LINE : EDGE;
      if (with == LINE) {
        keys.need(OVER);
        keys.idle(LINE, List.of(INSET), List.of(OVER, BY));
      }
      keys.idle(with, List.of(FROM, TO_EDGE, TO), List.of(OVER, BY));
    }
    return keys.whole(
        new Fold(
            keys.get(LINE),
            keys.get(EDGE),
            keys.get(INSET),
            keys.get(FROM_EDGE),
            keys.get(FROM),
            keys.get(TO_EDGE),
            keys.get(TO),
            keys.get(OVER),
            keys.get(CORNER),
            keys.get(BY)));
  }

  /** Where it is stated. */
  private SourceText stated() {
    return line != null ? line : edge != null ? edge : corner != null ? corner : fromEdge;
  }

  /** The edge of what is folded over. */
  SourceText lifted() {
    return over != null ? over : corner != null ? corner : edge;
  }

  Position position() {
    return stated().position();
  }

  /** Whether a corner is turned back, so that what lies below is seen. */
  boolean isPeel() {
    return corner != null;
  }

  /**
   * The line in a variant.
   *
   * @param outline the piece as it lies before
   * @param folded the lines at which it is folded by then
   */
  Crease stage(
      Staging staging, PatternNames names, Panel panel, Path outline, List<Crease> folded) {
    Point a;
    Point b;
    if (line != null) {
      Path path =
          panel
              .creaseLine(line.text())
              .orElseThrow(
                  () -> names.unknown(FigureCode.FIGURE_LINE_UNKNOWN, line, panel.creaseLines()));
      a = path.start();
      b = path.end();
    } else if (edge != null) {
      Path path = names.side(panel, edge);
      Point in = Lines.inward(path).times(inset == null ? 0 : staging.length(inset, 0, 5_000));
      a = path.start().plus(in);
      b = path.end().plus(in);
    } else if (corner != null) {
      Crease crease = peel(staging, names, panel);
      if (!FoldedCloth.parts(outline, crease)) {
        throw impossible(staging);
      }
      return crease;
    } else {
      a = at(staging, names, panel, fromEdge, from);
      b = at(staging, names, panel, toEdge, to);
    }
    if (a.distance(b) < 1) {
      throw impossible(staging);
    }
    Point away = b.minus(a).unit().quarterTurn();
    if (edge != null && over == null) {
      away = Lines.inward(names.path(panel, edge)).times(-1);
    } else {
      // An edge that lies on the line by now: a little of the cloth beside it tells.
      double beyond = lifted(names, panel, folded, 0).minus(a).dot(away);
      if (Math.abs(beyond) < LEAST) {
        beyond = lifted(names, panel, folded, BESIDE).minus(a).dot(away);
      }
      if (Math.abs(beyond) < LEAST) {
        throw impossible(staging);
      }
      if (beyond < 0) {
        away = away.times(-1);
      }
    }
    double share = by == null ? 1 : staging.share(by, "by");
    Crease crease = new Crease(a, away, share);
    if (!FoldedCloth.parts(outline, crease)) {
      throw impossible(staging);
    }
    return crease;
  }

  /** Square to what halves the corner. */
  private Crease peel(Staging staging, PatternNames names, Panel panel) {
    List<Edge> edges = panel.edges();
    for (int i = 0; i < edges.size(); i++) {
      Path after = edges.get(i).path();
      if (edges.get(i).from().equals(corner.text())) {
        Path before = edges.get((i + edges.size() - 1) % edges.size()).path();
        Point in = after.tangentAtLength(0).minus(before.tangentAtLength(before.length()));
        Point inward = in.norm() < 1e-6 ? after.tangentAtLength(0).quarterTurn() : in.unit();
        Point on = after.start().plus(inward.times(staging.length(inset, 1, 5_000)));
        return new Crease(on, inward.times(-1), by == null ? 1 : staging.share(by, "by"));
      }
    }
    throw names.unknown(
        FigureCode.FIGURE_CORNER_UNKNOWN, corner, edges.stream().map(Edge::from).toList());
  }

  /**
   * A point of what is folded over, where it lies by then: a corner, or the middle of an edge.
   *
   * @param inside how far inside an edge
   */
  private Point lifted(PatternNames names, Panel panel, List<Crease> folded, double inside) {
    SourceText named = lifted();
    Point place =
        panel.edges().stream()
            .filter(one -> one.from().equals(named.text()))
            .findFirst()
            .map(one -> one.path().start())
            .orElseGet(
                () -> {
                  Path path = names.path(panel, named);
                  double half = path.length() / 2;
                  return path.atLength(half)
                      .plus(path.tangentAtLength(half).quarterTurn().times(inside));
                });
    for (Crease crease : folded) {
      place = crease.folded(place);
    }
    return place;
  }

  private RuntimeException impossible(Staging staging) {
    return Faults.of(
        stated().position(), FigureCode.FIGURE_FOLD_IMPOSSIBLE, "size", staging.size());
  }

  private static Point at(
      Staging staging, PatternNames names, Panel panel, SourceText edge, Formula place) {
    Path path = names.side(panel, edge);
    return path.atLength(staging.along(place, path.length(), path.length() / 2));
  }
}
