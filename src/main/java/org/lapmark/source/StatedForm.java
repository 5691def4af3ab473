package org.lapmark.source;

import static org.lapmark.source.key.Choice.way;

import java.util.List;
import java.util.Locale;
import org.lapmark.measure.Formula;
import org.lapmark.panel.stated.StatedKind;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/** How a shape is stated by numbers: its key in a panel, and what has to stand below it. */
public enum StatedForm {
  /** A circle. */
  CIRCLE(
      StatedKind.ROUND,
      List.of(Keys.DIAMETER, Keys.RADIUS),
      Choice.of(way(Keys.DIAMETER), way(Keys.RADIUS))),
  /** An ellipse; the ratio is that of height to width. */
  ELLIPSE(
      StatedKind.ROUND,
      List.of(Keys.WIDTH, Keys.HEIGHT, Keys.PERIMETER, Keys.RATIO),
      Choice.of(way(Keys.WIDTH, Keys.HEIGHT), way(Keys.PERIMETER, Keys.RATIO))),
  /** A part of a ring. */
  RING_SECTOR(
      StatedKind.RING_SECTOR,
      List.of(Keys.ANGLE, Keys.INNER_RADIUS, Keys.INNER_LENGTH, Keys.OUTER_RADIUS, Keys.WIDTH),
      Choice.of(way(Keys.INNER_RADIUS), way(Keys.INNER_LENGTH)),
      Choice.of(way(Keys.OUTER_RADIUS), way(Keys.WIDTH))),
  /** A band that tapers between two lengths. */
  CONE_BAND(
      StatedKind.CONE_BAND,
      List.of(Keys.LOWER, Keys.UPPER, Keys.HEIGHT, Keys.SLANT, Keys.SHARE),
      Choice.of(way(Keys.HEIGHT), way(Keys.SLANT))),
  /** A brim that slopes down from the head. */
  BRIM(StatedKind.RING_SECTOR, List.of(Keys.HEAD, Keys.REQUIRED_WIDTH, Keys.DROOP, Keys.SHARE));

  /** What the shapes are stated by. */
  private static final class Keys {
    static final Key<Formula> DIAMETER = Key.of("diameter", Forms.LENGTH);
    static final Key<Formula> RADIUS = Key.of("radius", Forms.LENGTH);
    static final Key<Formula> WIDTH = Key.of("width", Forms.LENGTH);
    static final Key<Formula> REQUIRED_WIDTH = Key.required("width", Forms.LENGTH);
    static final Key<Formula> HEIGHT = Key.of("height", Forms.LENGTH);
    static final Key<Formula> PERIMETER = Key.of("perimeter", Forms.LENGTH);
    static final Key<Formula> RATIO = Key.of("ratio", Forms.formula("number"));
    static final Key<Formula> ANGLE = Key.required("angle", Forms.ANGLE);
    static final Key<Formula> INNER_RADIUS = Key.of("inner_radius", Forms.LENGTH);
    static final Key<Formula> INNER_LENGTH = Key.of("inner_length", Forms.LENGTH);
    static final Key<Formula> OUTER_RADIUS = Key.of("outer_radius", Forms.LENGTH);
    static final Key<Formula> LOWER = Key.required("lower", Forms.LENGTH);
    static final Key<Formula> UPPER = Key.required("upper", Forms.LENGTH);
    static final Key<Formula> SLANT = Key.of("slant", Forms.LENGTH);
    static final Key<Formula> SHARE = Key.of("share", Forms.SHARE).unless("1");
    static final Key<Formula> HEAD = Key.required("head", Forms.LENGTH);
    static final Key<Formula> DROOP = Key.required("droop", Forms.ANGLE);

    private Keys() {}
  }

  private final StatedKind kind;
  private final List<Key<Formula>> keys;
  private final Key<Stated> key;

  StatedForm(StatedKind kind, List<Key<Formula>> keys, Choice... choices) {
    this.kind = kind;
    this.keys = keys;
    String name = name().toLowerCase(Locale.ROOT);
    this.key = Key.of(name, Forms.map(new Table(name, List.copyOf(keys), List.of(choices))));
  }

  /**
   * The names of its corners and edges.
   *
   * @return the kind of shape
   */
  public StatedKind kind() {
    return kind;
  }

  /** The key that a panel states it by. */
  public Key<Stated> key() {
    return key;
  }

  /** What it is stated by. */
  public List<Key<Formula>> keys() {
    return keys;
  }
}
