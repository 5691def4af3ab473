package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * Two panels as one: the second is moved and turned, not mirrored, so that an edge of it lies on
 * one of the first's; both edges are gone. Where an edge of the first is followed by one of the
 * second that has its name, both are one edge. Other names that the first has too are led by the
 * second panel's name, as {@code back_side}. What stood on one of the two edges alone is told:
 * notches that both have were there to join them. Refused when the panels would overlap.
 */
public final class Merged implements Derivation {
  /** How much the edges' lengths, and the edges laid on each other, may differ, in millimetres. */
  static final double TOLERANCE = 0.5;

  private static final int CHECKS = 64;

  /** How near to each other, in millimetres, notches of the two edges are one. */
  private static final double MEETS = 2;

  private final Panel first;
  private final Panel second;
  private final int firstAt;
  private final int secondAt;
  private final Affine move;

  /** The names in the whole of the second panel's edges and corners. */
  private final Map<String, String> edgeNames = new LinkedHashMap<>();

  private final Map<String, String> cornerNames = new LinkedHashMap<>();

  /**
   * Lays the second panel against the first.
   *
   * @param first the panel that stays where it is
   * @param firstEdge its edge
   * @param second the panel that is moved
   * @param secondEdge its edge, as long as the first's within 0.5 mm and of the same shape
   * @throws PanelException when the edges differ
   */
  public Merged(Panel first, String firstEdge, Panel second, String secondEdge) {
    this.first = first;
    this.second = second;
    this.firstAt = Ring.index(first, firstEdge);
    this.secondAt = Ring.index(second, secondEdge);
    Path a = first.edges().get(firstAt).path();
    Path b = second.edges().get(secondAt).path().reversed();
    if (first.edges().size() < 2 || second.edges().size() < 2) {
      Panel whole = first.edges().size() < 2 ? first : second;
      throw PanelCode.MERGE_ALL_ROUND.exception(
          "panel", whole.name(), "edge", whole.edges().get(0).name());
    }
    double difference = Math.abs(a.length() - b.length());
    if (difference > TOLERANCE) {
      throw PanelCode.MERGE_LENGTHS_DIFFER.exception(
          "panel",
          first.name(),
          "edge",
          firstEdge,
          "length",
          a.length(),
          "with",
          second.name(),
          "withEdge",
          secondEdge,
          "withLength",
          b.length());
    }
    this.move = onto(a, b);
    double apart = 0;
    Path moved = b.transformed(move);
    for (int i = 0; i <= CHECKS; i++) {
      Point here = moved.atLength(moved.length() * i / CHECKS);
      apart = Math.max(apart, here.distance(a.atLength(a.length() * i / CHECKS)));
    }
    if (apart > TOLERANCE) {
      throw PanelCode.MERGE_SHAPES_DIFFER.exception(
          "panel",
          first.name(),
          "edge",
          firstEdge,
          "with",
          second.name(),
          "withEdge",
          secondEdge,
          "apart",
          apart);
    }
  }

  /** The turn and shift that lay a path on another: chord on chord, middle on middle. */
  private static Affine onto(Path to, Path from) {
    Point there = to.end().minus(to.start());
    Point here = from.end().minus(from.start());
    double norm = here.norm() * there.norm();
    // An edge that ends where it begins has no chord: its direction at the start decides.
    Point u = norm > 1e-6 ? there : to.tangentAtLength(0);
    Point v = norm > 1e-6 ? here : from.tangentAtLength(0);
    double product = u.norm() * v.norm();
    double cos = v.dot(u) / product;
    double sin = v.cross(u) / product;
    Affine turn = new Affine(cos, sin, -sin, cos, 0, 0);
    Point middle = turn.apply(from.start().towards(from.end(), 0.5));
    Point shift = to.start().towards(to.end(), 0.5).minus(middle);
    return Affine.translation(shift.x(), shift.y()).after(turn);
  }

  @Override
  public Panel derive(String name, Consumer<PanelException> notices) {
    List<Edge> mine = others(first, firstAt);
    List<Edge> theirs = others(second, secondAt);
    name(mine, theirs);
    Point start = first.edges().get(firstAt).path().start();
    Point end = first.edges().get(firstAt).path().end();
    String startName = first.edges().get(firstAt).from();
    String endName = first.edges().get(firstAt).to();
    List<Edge> moved = new ArrayList<>();
    for (int i = 0; i < theirs.size(); i++) {
      Edge edge = theirs.get(i);
      boolean begins = i == 0;
      boolean ends = i == theirs.size() - 1;
      Path path = edge.path().transformed(move);
      moved.add(
          new Edge(
              edgeNames.get(edge.name()),
              begins ? startName : cornerNames.get(edge.from()),
              ends ? endName : cornerNames.get(edge.to()),
              Ring.between(path, begins ? start : path.start(), ends ? end : path.end())));
    }
    List<Edge> edges = new ArrayList<>(mine);
    Map<String, Double> shifts = new LinkedHashMap<>();
    join(edges, moved, shifts);
    Ring.check(name, edges);
    tell(first, firstAt, second, secondAt, notices);
    tell(second, secondAt, first, firstAt, notices);
    return new Panel(name, edges, chains(edges), marks(shifts));
  }

  /** Tells of what stands on a panel's merged edge, unless the other's has the same there. */
  private static void tell(
      Panel panel, int at, Panel other, int otherAt, Consumer<PanelException> notices) {
    Edge edge = panel.edges().get(at);
    Edge against = other.edges().get(otherAt);
    for (Mark.OnEdge mark : panel.marks(Mark.OnEdge.class)) {
      boolean met =
          other.marks(Mark.Notch.class).stream()
              .filter(partner -> partner.edge().equals(against.name()))
              .anyMatch(partner -> mark.meets(partner, against.path().length(), MEETS));
      if (mark.edge().equals(edge.name()) && !met) {
        notices.accept(LeftOut.of(panel, mark, true));
      }
    }
  }

  /** The edges but one, clockwise from its end. */
  private static List<Edge> others(Panel panel, int at) {
    List<Edge> others = new ArrayList<>();
    int count = panel.edges().size();
    for (int i = 1; i < count; i++) {
      others.add(panel.edges().get((at + i) % count));
    }
    return others;
  }

  private void name(List<Edge> mine, List<Edge> theirs) {
    Set<String> taken = new LinkedHashSet<>();
    Set<String> corners = new LinkedHashSet<>();
    mine.forEach(edge -> taken.add(edge.name()));
    mine.forEach(edge -> corners.add(edge.from()));
    corners.add(first.edges().get(firstAt).from());
    for (int i = 0; i < theirs.size(); i++) {
      String name = theirs.get(i).name();
      boolean goesOn =
          i == 0 && name.equals(mine.get(mine.size() - 1).name())
              || i == theirs.size() - 1 && name.equals(mine.get(0).name());
      String free = goesOn || !taken.contains(name) ? name : second.name() + "_" + name;
      free = goesOn ? free : Ring.free(free, "_2", taken);
      taken.add(free);
      edgeNames.put(name, free);
    }
    for (Edge edge : theirs.subList(1, theirs.size())) {
      String name = edge.from();
      String free =
          Ring.free(corners.contains(name) ? second.name() + "_" + name : name, "_2", corners);
      corners.add(free);
      cornerNames.put(name, free);
    }
  }

  /** Puts the second's edges after the first's; neighbours of one name become one edge. */
  private void join(List<Edge> edges, List<Edge> moved, Map<String, Double> shifts) {
    for (Edge edge : moved) {
      Edge last = edges.get(edges.size() - 1);
      if (edge == moved.get(0) && last.name().equals(edge.name())) {
        shifts.put(edge.name(), last.path().length());
        edges.set(edges.size() - 1, both(last, edge));
      } else {
        edges.add(edge);
      }
    }
    Edge begin = edges.get(0);
    Edge last = edges.get(edges.size() - 1);
    if (edges.size() > 1 && begin.name().equals(last.name())) {
      edges.remove(edges.size() - 1);
      edges.set(0, both(last, begin));
      shifts.put("+" + begin.name(), last.path().length());
    }
  }

  private static Edge both(Edge before, Edge after) {
    return new Edge(before.name(), before.from(), after.to(), before.path().then(after.path()));
  }

  private Map<String, List<String>> chains(List<Edge> edges) {
    Map<String, List<String>> all = new LinkedHashMap<>();
    first.chains().forEach((chain, members) -> all.put(chain, new ArrayList<>(members)));
    second
        .chains()
        .forEach(
            (chain, members) -> {
              List<String> renamed =
                  members.stream()
                      .map(edge -> edgeNames.getOrDefault(edge, ""))
                      .filter(edge -> !edge.isEmpty())
                      .toList();
              List<String> known = all.computeIfAbsent(chain, unused -> new ArrayList<>());
              renamed.stream().filter(edge -> !known.contains(edge)).forEach(known::add);
            });
    return Ring.chains(all, edges);
  }

  private List<Mark> marks(Map<String, Double> shifts) {
    String gone = first.edges().get(firstAt).name();
    return MarksMerged.of(
        first.marks(),
        edge ->
            edge.equals(gone)
                ? Optional.empty()
                : Optional.of(new MarksMerged.Start(edge, shifts.getOrDefault("+" + edge, 0.0))),
        second.marks().stream().map(mark -> mark.transformed(move, edge -> 0)).toList(),
        edge ->
            Optional.ofNullable(edgeNames.get(edge))
                .map(name -> new MarksMerged.Start(name, shifts.getOrDefault(name, 0.0))));
  }
}
