package org.lapmark.source.mark;

import static org.lapmark.source.key.Choice.way;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/** A point that meets those of the same name. */
final class MatchKind extends MarkKind {
  MatchKind() {
    super(
        "match",
        "matches",
        Stage.ON_GUIDES,
        Role.MATCHPOINT,
        Table.of("match", MarkKeys.CORNER, MarkKeys.EDGE, MarkKeys.AT, Stated.WHEN)
            .oneOf(Choice.of(way(), way(MarkKeys.CORNER), way(MarkKeys.EDGE, MarkKeys.AT))));
  }

  @Override
  public List<Mark> stated(MarkSource mark, Panel panel, VariantValues values) {
    SourceText corner = mark.get(MarkKeys.CORNER);
    Point point =
        corner == null
            ? new MarkPlaces(mark, panel, values).on(MarkKeys.EDGE, MarkKeys.AT)
            : values.corner(panel, corner);
    return List.of(new PointMark.MatchPoint(mark.name().text(), point));
  }

  @Override
  Mark drawn(DrawnMark drawn, Optional<MarkSource> stated, Panel panel, VariantValues values) {
    return new PointMark.MatchPoint(drawn.name(), drawn.point());
  }
}
