package org.lapmark.source.mark;

import static org.lapmark.source.key.Choice.way;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/** Two legs from an edge to an apex, sewn to each other. Without a place, one that is drawn. */
final class DartKind extends MarkKind {
  private static final Key<Formula> WIDTH = Key.of("width", Forms.LENGTH);
  private static final Key<SourceText> PRESS = Key.of("press", Forms.CORNER);

  DartKind() {
    super(
        "dart",
        "darts",
        Stage.SHAPE,
        Role.DART,
        Table.of("dart", MarkKeys.EDGE, MarkKeys.AT, WIDTH, MarkKeys.LENGTH, PRESS, Stated.WHEN)
            .oneOf(Choice.of(way(), way(MarkKeys.EDGE, MarkKeys.AT, WIDTH, MarkKeys.LENGTH))));
  }

  @Override
  public List<Mark> stated(MarkSource mark, Panel panel, VariantValues values) {
    MarkPlaces places = new MarkPlaces(mark, panel, values);
    SourceText edge = mark.get(MarkKeys.EDGE);
    Path line = places.edge(MarkKeys.EDGE);
    return List.of(
        Darts.stated(
            panel,
            mark.name().text(),
            edge.text(),
            places.along(MarkKeys.AT, edge, line),
            values.positiveLength(mark.get(WIDTH)),
            values.positiveLength(mark.get(MarkKeys.LENGTH)),
            press(places, edge.text())));
  }

  @Override
  Mark drawn(DrawnMark drawn, Optional<MarkSource> stated, Panel panel, VariantValues values) {
    Path path = drawn.path();
    Intake.Dart plain =
        Darts.drawn(
            panel,
            drawn.name(),
            path.start(),
            path.curves().get(0).end(),
            path.end(),
            Intake.Press.NONE);
    return stated
        .map(mark -> press(new MarkPlaces(mark, panel, values), plain.edge()))
        .map(plain::pressed)
        .orElse(plain);
  }

  private static Intake.Press press(MarkPlaces places, String line) {
    SourceText corner = places.mark().get(PRESS);
    if (corner == null) {
      return Intake.Press.NONE;
    }
    return places.isAtEnd(corner, line) ? Intake.Press.ONWARDS : Intake.Press.BACK;
  }
}
