package org.lapmark.source.mark;

import java.util.Optional;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/** Points to be marked through the cloth, one or a row. */
final class DrillKind extends RowKind {
  DrillKind() {
    super("drill", "drills", Role.DRILL, Table.of("drills"), Stated.WHEN);
  }

  @Override
  double length(MarkSource mark, VariantValues values) {
    return 0;
  }

  @Override
  boolean isAcross(MarkSource mark) {
    return false;
  }

  @Override
  Mark between(String name, Point from, Point to) {
    return new PointMark.DrillPoint(name, from);
  }

  @Override
  Mark drawn(DrawnMark drawn, Optional<MarkSource> stated, Panel panel, VariantValues values) {
    return new PointMark.DrillPoint(drawn.name(), drawn.point());
  }
}
