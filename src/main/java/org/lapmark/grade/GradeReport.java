package org.lapmark.grade;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.cutting.Allowance;
import org.lapmark.source.PanelSource;

/**
 * How panels grow from size to size: every length along the stitching line, in millimetres.
 *
 * @param choices what is chosen for the pattern's options, the same in every size
 * @param sizes the sizes in the order of the size table
 * @param panels the panels in the order stated; one that some sizes lack is there all the same
 */
public record GradeReport(
    SortedMap<String, String> choices, List<String> sizes, List<PanelGrades> panels) {
  /** Copies the collections. */
  public GradeReport {
    choices = Collections.unmodifiableSortedMap(new TreeMap<>(choices));
    sizes = List.copyOf(sizes);
    panels = List.copyOf(panels);
  }

  /** What a row measures. */
  public enum Kind {
    /** An edge. */
    EDGE,
    /** A run of edges. */
    CHAIN,
    /** The panel's width, square to the y axis. */
    WIDTH,
    /** The panel's height. */
    HEIGHT,
    /** All the way round. */
    PERIMETER,
    /** What it encloses, in square millimetres. */
    AREA
  }

  /**
   * A panel in every size.
   *
   * @param name its name
   * @param corner the corner on which the sizes are stacked
   * @param anyOrder whether the author says that lengths may rise and fall
   * @param rows its edges in outline order, its chains, and the whole
   * @param outlines the stitching line in each size, moved so that the corner is the origin
   */
  public record PanelGrades(
      String name, String corner, boolean anyOrder, List<Row> rows, List<Optional<Path>> outlines) {
    /** Copies the lists. */
    public PanelGrades {
      rows = List.copyOf(rows);
      outlines = List.copyOf(outlines);
    }
  }

  /**
   * One measurement in every size.
   *
   * @param kind what is measured
   * @param name the edge's or chain's name; empty for the whole panel
   * @param values by size; nothing where a size lacks it
   * @param allowances of an edge: the allowances that pieces give it over all sizes, ascending;
   *     both ends of one that changes
   */
  public record Row(
      Kind kind, String name, List<Optional<Double>> values, List<Double> allowances) {
    /** Copies the lists. */
    public Row {
      values = List.copyOf(values);
      allowances = List.copyOf(allowances);
    }

    /**
     * How much more it is than in the size before.
     *
     * @param size the index of the size
     * @return nothing for the first size and where one of both lacks it
     */
    public Optional<Double> increment(int size) {
      return size == 0 || values.get(size).isEmpty() || values.get(size - 1).isEmpty()
          ? Optional.empty()
          : Optional.of(values.get(size).get() - values.get(size - 1).get());
    }
  }

  /**
   * Compares the sizes of a pattern.
   *
   * @param patterns the pattern in each size, in the order of the size table, with the same choices
   * @return the report
   * @throws IllegalArgumentException when there is no pattern
   */
  public static GradeReport of(List<EvaluatedPattern> patterns) {
    if (patterns.isEmpty()) {
      throw new IllegalArgumentException("a grade report needs a size");
    }
    Map<String, PanelSource> sources = new LinkedHashMap<>();
    for (EvaluatedPattern pattern : patterns) {
      pattern.source().panels().forEach(one -> sources.putIfAbsent(one.name().text(), one));
    }
    List<PanelGrades> panels = new ArrayList<>();
    for (PanelSource source : sources.values()) {
      List<Optional<Panel>> bySize =
          patterns.stream()
              .map(pattern -> Optional.ofNullable(pattern.panels().get(source.name().text())))
              .toList();
      if (bySize.stream().anyMatch(Optional::isPresent)) {
        panels.add(panel(source, bySize, patterns));
      }
    }
    return new GradeReport(
        new TreeMap<>(patterns.get(0).variant().choices()),
        patterns.stream().map(pattern -> pattern.variant().size()).toList(),
        panels);
  }

  private static PanelGrades panel(
      PanelSource source, List<Optional<Panel>> bySize, List<EvaluatedPattern> patterns) {
    Set<String> edges = new LinkedHashSet<>();
    Set<String> chains = new LinkedHashSet<>();
    for (Optional<Panel> panel : bySize) {
      panel.ifPresent(
          one -> {
            one.edges().forEach(edge -> edges.add(edge.name()));
            one.chains().keySet().stream().filter(one::isOneLine).forEach(chains::add);
          });
    }
    List<Row> rows = new ArrayList<>();
    for (String edge : edges) {
      rows.add(
          new Row(
              Kind.EDGE,
              edge,
              values(bySize, panel -> length(panel, edge)),
              allowances(source.name().text(), edge, patterns)));
    }
    for (String chain : chains) {
      rows.add(row(Kind.CHAIN, chain, bySize, panel -> length(panel, chain)));
    }
    rows.add(row(Kind.WIDTH, "", bySize, panel -> box(panel).width()));
    rows.add(row(Kind.HEIGHT, "", bySize, panel -> box(panel).height()));
    rows.add(row(Kind.PERIMETER, "", bySize, panel -> panel.outline().length()));
    rows.add(row(Kind.AREA, "", bySize, panel -> Math.abs(panel.outline().signedArea())));
    Panel first = bySize.stream().flatMap(Optional::stream).findFirst().orElseThrow();
    String corner =
        source.stackOn() == null ? first.edges().get(0).from() : source.stackOn().text();
    return new PanelGrades(
        source.name().text(),
        corner,
        source.anyOrder(),
        rows,
        bySize.stream().map(panel -> panel.map(one -> stacked(one, corner))).toList());
  }

  private static Row row(
      Kind kind, String name, List<Optional<Panel>> bySize, Function<Panel, Double> measure) {
    return new Row(kind, name, values(bySize, measure), List.of());
  }

  /** A measure that a panel doesn't have comes as null. */
  private static List<Optional<Double>> values(
      List<Optional<Panel>> bySize, Function<Panel, Double> measure) {
    return bySize.stream().map(panel -> panel.map(measure)).toList();
  }

  private static Double length(Panel panel, String line) {
    ClosedLine closed = ClosedLine.of(panel, line);
    return closed == null ? null : closed.path().length();
  }

  private static Box box(Panel panel) {
    return panel.outline().bounds();
  }

  private static Path stacked(Panel panel, String corner) {
    Point at = panel.outline().start();
    for (Edge edge : panel.edges()) {
      if (edge.from().equals(corner)) {
        at = edge.path().start();
      }
    }
    return panel.outline().transformed(Affine.translation(-at.x(), -at.y()));
  }

  private static List<Double> allowances(
      String panel, String edge, List<EvaluatedPattern> patterns) {
    TreeSet<Double> found = new TreeSet<>();
    for (EvaluatedPattern pattern : patterns) {
      for (Piece piece : pattern.pieces()) {
        Allowance allowance = piece.shape().stated().edges().get(edge);
        if (piece.shape().panel().name().equals(panel) && allowance != null) {
          found.add(allowance.start());
          found.add(allowance.end());
        }
      }
    }
    return List.copyOf(found);
  }
}
