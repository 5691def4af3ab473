package org.lapmark.source.mark;

import static org.lapmark.source.key.Choice.way;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.derivation.InnerLine;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/** A line inside a panel: beside an edge, or straight from one place to another. */
abstract class LineKind extends MarkKind {
  LineKind(String word, String key, Stage stage, Role role) {
    super(
        word,
        key,
        stage,
        role,
        Table.of(
                word + "_line",
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
                    way(MarkKeys.FROM_EDGE, MarkKeys.FROM, MarkKeys.TO_EDGE, MarkKeys.TO))));
  }

  /** The mark along a line. */
  abstract Mark along(String name, Path line);

  @Override
  public final List<Mark> stated(MarkSource mark, Panel panel, VariantValues values) {
    MarkPlaces places = new MarkPlaces(mark, panel, values);
    Path line = mark.has(MarkKeys.FROM_EDGE) ? across(places) : beside(places);
    return List.of(along(mark.name().text(), line));
  }

  @Override
  final Mark drawn(
      DrawnMark drawn, Optional<MarkSource> stated, Panel panel, VariantValues values) {
    return along(drawn.name(), drawn.path());
  }

  private static Path across(MarkPlaces places) {
    Point from = places.on(MarkKeys.FROM_EDGE, MarkKeys.FROM);
    Point to = places.on(MarkKeys.TO_EDGE, MarkKeys.TO);
    if (from.distance(to) <= Path.JOIN_TOLERANCE) {
      throw withoutLength(places);
    }
    return new Path(List.of(new Line(from, to)));
  }

  private static Path beside(MarkPlaces places) {
    MarkSource mark = places.mark();
    VariantValues values = places.values();
    SourceText edge = mark.get(MarkKeys.EDGE);
    Path line = places.edge(MarkKeys.EDGE);
    double from = mark.has(MarkKeys.FROM) ? places.along(MarkKeys.FROM, edge, line) : 0;
    double to = mark.has(MarkKeys.TO) ? places.along(MarkKeys.TO, edge, line) : line.length();
    if (to < from && mark.has(MarkKeys.TO)) {
      throw new FindingException(
          Finding.of(
              MarkCode.MARK_BACKWARDS,
              mark.get(MarkKeys.TO).text().position(),
              "name",
              mark.name().text(),
              "edge",
              edge.text(),
              "from",
              Rounded.hundredth(from),
              "to",
              Rounded.hundredth(to),
              "size",
              values.size()));
    }
    if (to - from <= Path.JOIN_TOLERANCE) {
      throw withoutLength(places);
    }
    double inset = values.length(mark.get(MarkKeys.INSET));
    if (inset < 0) {
      double middle = (from + to) / 2;
      Point inwards = line.tangentAtLength(middle).quarterTurn();
      throw places.outside(line.atLength(middle).plus(inwards.times(inset)));
    }
    Path inner = InnerLine.of(places.panel(), line, from, to, inset);
    if (inner == null) {
      throw new FindingException(
          Finding.of(
              MarkCode.MARK_TOO_DEEP,
              mark.get(MarkKeys.INSET).text().position(),
              "mark",
              mark.name().text(),
              "inset",
              Rounded.hundredth(inset),
              "edge",
              edge.text(),
              "panel",
              places.panel().name(),
              "size",
              values.size()));
    }
    return inner;
  }

  private static FindingException withoutLength(MarkPlaces places) {
    return new FindingException(
        Finding.of(
            MarkCode.MARK_WITHOUT_LENGTH,
            places.mark().name().position(),
            "mark",
            places.mark().name().text(),
            "panel",
            places.panel().name(),
            "size",
            places.values().size()));
  }
}
