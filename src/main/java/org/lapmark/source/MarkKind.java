package org.lapmark.source;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Section;

/** What can be stated of a panel's marks besides its notches. */
public enum MarkKind {
  /** Two legs from an edge to an apex, sewn to each other. Without a place, one that is drawn. */
  DART("darts", Section.DART, Role.DART, "press when", "edge at width length", ""),
  /** Cloth folded onto itself at an edge. Without a place, one whose line is drawn. */
  PLEAT("pleats", Section.PLEAT, Role.PLEAT, "kind towards take_up when", "edge at length", ""),
  /** A line that shows where something is placed. Without a place, one that is drawn. */
  PLACEMENT(
      "placements",
      Section.PLACEMENT_LINE,
      Role.PLACEMENT,
      "when",
      "",
      "edge inset",
      "edge inset from to",
      "from_edge from to_edge to"),
  /** A line along which cloth is folded. */
  FOLD(
      "folds",
      Section.FOLD_LINE,
      Role.FOLDLINE,
      "when",
      "",
      "edge inset",
      "edge inset from to",
      "from_edge from to_edge to"),
  /** Buttonholes, one or a row. */
  BUTTONHOLE(
      "buttonholes",
      Section.BUTTONHOLE,
      Role.BUTTONHOLE,
      "across length inset when",
      "",
      "edge at",
      "line at",
      "edge count from to",
      "line count from to",
      "edge count from spacing",
      "line count from spacing"),
  /** Points to be marked through the cloth, one or a row. */
  DRILL(
      "drills",
      Section.DRILLS,
      Role.DRILL,
      "inset when",
      "",
      "edge at",
      "line at",
      "edge count from to",
      "line count from to",
      "edge count from spacing",
      "line count from spacing"),
  /** A point that meets those of the same name. */
  MATCH("matches", Section.MATCH, Role.MATCHPOINT, "when", "", "corner", "edge at");

  private final String key;
  private final Section section;
  private final Role role;
  private final List<String> always;
  private final List<List<String>> ways;

  MarkKind(String key, Section section, Role role, String always, String... ways) {
    this.key = key;
    this.section = section;
    this.role = role;
    this.always = List.of(always.split(" "));
    List<List<String>> all = new ArrayList<>();
    for (String way : ways) {
      all.add(way.isEmpty() ? List.of() : List.of(way.split(" ")));
    }
    this.ways = List.copyOf(all);
  }

  /** The panel's key under which marks of this kind are stated by name. */
  public String key() {
    return key;
  }

  public Section section() {
    return section;
  }

  /** What stands for it in drawings. */
  public Role role() {
    return role;
  }

  /**
   * Whether lengths and derived shapes may depend on such a mark. Others are placed last, so that
   * their places may be calculated from the lengths of their own panel.
   *
   * @return whether it takes part in the panel's geometry
   */
  public boolean isGeometry() {
    return this == DART || this == PLEAT || this == FOLD;
  }

  /** Whether what is stated of a place is one of the ways in which it can be. */
  public boolean isPlaced(List<String> stated) {
    List<String> placing = stated.stream().filter(one -> !always.contains(one)).sorted().toList();
    return ways.stream().anyMatch(way -> way.stream().sorted().toList().equals(placing));
  }

  /** The ways, as messages show them. */
  public String shown() {
    return ways.stream()
        .filter(way -> !way.isEmpty())
        .map(way -> String.join(" and ", way))
        .collect(Collectors.joining(", or "));
  }
}
