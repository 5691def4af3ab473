package org.lapmark.source;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.lapmark.panel.StatedKind;
import org.lapmark.source.key.Section;

/** How a shape is stated by numbers: its key in a panel, and what has to stand below it. */
public enum StatedForm {
  /** A circle. */
  CIRCLE(StatedKind.ROUND, Section.CIRCLE, ways("diameter", "radius")),
  /** An ellipse; the ratio is that of height to width. */
  ELLIPSE(StatedKind.ROUND, Section.ELLIPSE, ways("width height", "perimeter ratio")),
  /** A part of a ring. */
  RING_SECTOR(
      StatedKind.RING_SECTOR,
      Section.RING_SECTOR,
      ways("inner_radius", "inner_length"),
      ways("outer_radius", "width")),
  /** A band that tapers between two lengths. */
  CONE_BAND(StatedKind.CONE_BAND, Section.CONE_BAND, ways("height", "slant")),
  /** A brim that slopes down from the head. */
  BRIM(StatedKind.RING_SECTOR, Section.BRIM);

  private final StatedKind kind;
  private final Section section;
  private final List<Choice> choices;

  StatedForm(StatedKind kind, Section section, Choice... choices) {
    this.kind = kind;
    this.section = section;
    this.choices = List.of(choices);
  }

  /** Ways to state the same thing, of which exactly one is taken; each is one key or several. */
  public record Choice(List<List<String>> ways) {
    /** As messages show it. */
    public String shown() {
      return ways.stream()
          .map(way -> String.join(" and ", way))
          .collect(Collectors.joining(", or "));
    }
  }

  private static Choice ways(String... ways) {
    List<List<String>> all = new ArrayList<>();
    for (String way : ways) {
      all.add(List.of(way.split(" ")));
    }
    return new Choice(List.copyOf(all));
  }

  /**
   * The names of its corners and edges.
   *
   * @return the kind of shape
   */
  public StatedKind kind() {
    return kind;
  }

  public Section section() {
    return section;
  }

  public List<Choice> choices() {
    return choices;
  }

  /** The key that a panel states it by. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The form with a key, or null. */
  public static StatedForm of(String key) {
    return Arrays.stream(values()).filter(form -> form.key().equals(key)).findFirst().orElse(null);
  }
}
