package org.lapmark.source.mark;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Darts;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/** Marks that stand singly or in rows beside an edge or on a line. */
abstract class RowKind extends MarkKind {
  private static final Key<SourceText> LINE = Key.of("line", Forms.LINE.shown("name of a line"));
  private static final Key<Formula> COUNT = Key.of("count", Forms.COUNT);
  private static final Key<Formula> SPACING = Key.of("spacing", Forms.LENGTH);

  /** Where they stand, in the order in which hints list the keys. */
  private static final List<Key<?>> ROW =
      List.of(
          MarkKeys.EDGE,
          LINE,
          MarkKeys.INSET,
          MarkKeys.AT,
          COUNT,
          MarkKeys.FROM,
          MarkKeys.TO,
          SPACING);

  RowKind(String word, String key, Role role, Table before, Key<?>... after) {
    super(word, key, Stage.ON_GUIDES, role, before.with(ROW).with(List.of(after)).oneOf(ways()));
  }

  private static Choice ways() {
    return Choice.of(
        way(),
        way(MarkKeys.EDGE, MarkKeys.AT),
        way(LINE, MarkKeys.AT),
        way(MarkKeys.EDGE, COUNT, MarkKeys.FROM, MarkKeys.TO),
        way(LINE, COUNT, MarkKeys.FROM, MarkKeys.TO),
        way(MarkKeys.EDGE, COUNT, MarkKeys.FROM, SPACING),
        way(LINE, COUNT, MarkKeys.FROM, SPACING));
  }

  /** How long each is, in millimetres. */
  abstract double length(MarkSource mark, VariantValues values);

  /** Whether each stands square to the line. */
  abstract boolean isAcross(MarkSource mark);

  /** One of the row. */
  abstract Mark between(String name, Point from, Point to);

  @Override
  public final List<Mark> stated(MarkSource mark, Panel panel, VariantValues values) {
    MarkPlaces places = new MarkPlaces(mark, panel, values);
    SourceText name = mark.get(mark.has(LINE) ? LINE : MarkKeys.EDGE);
    Path line = mark.has(LINE) ? inner(panel, name) : values.edge(panel, name);
    double inset = mark.has(MarkKeys.INSET) ? values.length(mark.get(MarkKeys.INSET)) : 0;
    double length = length(mark, values);
    Path outline = panel.outline();
    List<Mark> row = new ArrayList<>();
    for (double place : row(places, name, line)) {
      Point along = line.tangentAtLength(place);
      Point inwards = along.quarterTurn();
      Point middle = line.atLength(place).plus(inwards.times(inset));
      Point half = (isAcross(mark) ? inwards : along).times(length / 2);
      for (Point end : List.of(middle.minus(half), middle.plus(half))) {
        if (!outline.encloses(end) && outline.distance(end) > Darts.OFF_OUTLINE) {
          throw places.outside(end);
        }
      }
      row.add(between(mark.name().text(), middle.minus(half), middle.plus(half)));
    }
    return row;
  }

  /** A drawn or stated placement or fold line. */
  private static Path inner(Panel panel, SourceText name) {
    Set<String> known = new LinkedHashSet<>();
    for (LineMark mark : panel.marks(LineMark.class)) {
      if (mark.isDrawn() && mark.name().equals(name.text())) {
        return mark.path();
      }
      if (mark.isDrawn()) {
        known.add(mark.name());
      }
    }
    throw new FindingException(
        Finding.of(
            MarkCode.MARK_LINE_UNKNOWN,
            name.position(),
            "panel",
            panel.name(),
            "line",
            name.text(),
            "nearest",
            NearestWord.of(name.text(), known).orElse("none"),
            "known",
            Known.listed(known)));
  }

  private static List<Double> row(MarkPlaces places, SourceText name, Path line) {
    MarkSource mark = places.mark();
    if (mark.has(MarkKeys.AT)) {
      return List.of(places.along(MarkKeys.AT, name, line));
    }
    int count = places.values().count(mark.get(COUNT));
    double from = places.along(MarkKeys.FROM, name, line);
    double spacing;
    if (mark.has(SPACING)) {
      spacing = places.values().positiveLength(mark.get(SPACING));
      places.check(mark.get(SPACING), from + (count - 1) * spacing, name, line);
    } else {
      double to = places.along(MarkKeys.TO, name, line);
      spacing = count > 1 ? (to - from) / (count - 1) : 0;
    }
    List<Double> row = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      row.add(Math.max(0, Math.min(line.length(), from + i * spacing)));
    }
    return row;
  }
}
