package org.lapmark.source;

import static org.lapmark.source.key.Choice.way;

import java.util.List;
import java.util.Locale;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/** What can be stated of a panel's marks besides its notches. */
public enum MarkKind {
  /** Two legs from an edge to an apex, sewn to each other. Without a place, one that is drawn. */
  DART(
      "darts",
      Role.DART,
      Table.of(
              "dart",
              MarkKeys.EDGE,
              MarkKeys.AT,
              MarkKeys.WIDTH,
              MarkKeys.LENGTH,
              MarkKeys.PRESS,
              Stated.WHEN)
          .oneOf(
              Choice.of(way(), way(MarkKeys.EDGE, MarkKeys.AT, MarkKeys.WIDTH, MarkKeys.LENGTH)))),
  /** Cloth folded onto itself at an edge. Without a place, one whose line is drawn. */
  PLEAT(
      "pleats",
      Role.PLEAT,
      Table.of(
              "pleat",
              MarkKeys.TAKE_UP,
              MarkKeys.EDGE,
              MarkKeys.AT,
              MarkKeys.LENGTH,
              MarkKeys.KIND,
              MarkKeys.TOWARDS,
              Stated.WHEN)
          .oneOf(Choice.of(way(), way(MarkKeys.EDGE, MarkKeys.AT, MarkKeys.LENGTH)))),
  /** A line that shows where something is placed. Without a place, one that is drawn. */
  PLACEMENT("placements", Role.PLACEMENT, line("placement_line")),
  /** A line along which cloth is folded. */
  FOLD("folds", Role.FOLDLINE, line("fold_line")),
  /** Buttonholes, one or a row. */
  BUTTONHOLE(
      "buttonholes",
      Role.BUTTONHOLE,
      Table.of("buttonhole", MarkKeys.CUT_LENGTH)
          .with(MarkKeys.ROW)
          .with(List.of(MarkKeys.ACROSS, Stated.WHEN))
          .oneOf(row())),
  /** Points to be marked through the cloth, one or a row. */
  DRILL(
      "drills",
      Role.DRILL,
      Table.of("drills").with(MarkKeys.ROW).with(List.of(Stated.WHEN)).oneOf(row())),
  /** A point that meets those of the same name. */
  MATCH(
      "matches",
      Role.MATCHPOINT,
      Table.of("match", MarkKeys.CORNER, MarkKeys.EDGE, MarkKeys.AT, Stated.WHEN)
          .oneOf(Choice.of(way(), way(MarkKeys.CORNER), way(MarkKeys.EDGE, MarkKeys.AT))));

  private final Key<List<Named<Stated>>> key;
  private final Role role;
  private final Table table;

  MarkKind(String key, Role role, Table table) {
    this.key = Key.of(key, Forms.named(table, false));
    this.role = role;
    this.table = table;
  }

  private static Table line(String id) {
    return Table.of(
            id,
            MarkKeys.EDGE,
            MarkKeys.INSET,
            MarkKeys.FROM_EDGE,
            MarkKeys.FROM,
            MarkKeys.TO_EDGE,
            MarkKeys.TO,
            Stated.WHEN)
        .oneOf(
            Choice.of(
                way(),
                way(MarkKeys.EDGE, MarkKeys.INSET),
                way(MarkKeys.EDGE, MarkKeys.INSET, MarkKeys.FROM, MarkKeys.TO),
                way(MarkKeys.FROM_EDGE, MarkKeys.FROM, MarkKeys.TO_EDGE, MarkKeys.TO)));
  }

  private static Choice row() {
    return Choice.of(
        way(),
        way(MarkKeys.EDGE, MarkKeys.AT),
        way(MarkKeys.LINE, MarkKeys.AT),
        way(MarkKeys.EDGE, MarkKeys.COUNT, MarkKeys.FROM, MarkKeys.TO),
        way(MarkKeys.LINE, MarkKeys.COUNT, MarkKeys.FROM, MarkKeys.TO),
        way(MarkKeys.EDGE, MarkKeys.COUNT, MarkKeys.FROM, MarkKeys.SPACING),
        way(MarkKeys.LINE, MarkKeys.COUNT, MarkKeys.FROM, MarkKeys.SPACING));
  }

  /** The panel's key under which marks of this kind are stated by name. */
  public Key<List<Named<Stated>>> key() {
    return key;
  }

  /** What stands for it in drawings. */
  public Role role() {
    return role;
  }

  /** The ways in which its place can be stated. */
  public Choice places() {
    return table.choices().get(0);
  }

  /** What it is called in messages. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
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
}
