package org.lapmark.source.mark;

import java.util.Optional;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/** Buttonholes, one or a row. */
final class ButtonholeKind extends RowKind {
  private static final Key<Formula> LENGTH = Key.required("length", Forms.LENGTH);
  private static final Key<Boolean> ACROSS = Key.of("across", Forms.TRUTH).unless("no");

  ButtonholeKind() {
    super(
        "buttonhole",
        "buttonholes",
        Role.BUTTONHOLE,
        Table.of("buttonhole", LENGTH),
        ACROSS,
        Stated.WHEN);
  }

  @Override
  double length(MarkSource mark, VariantValues values) {
    return values.positiveLength(mark.get(LENGTH));
  }

  @Override
  boolean isAcross(MarkSource mark) {
    return Boolean.TRUE.equals(mark.get(ACROSS));
  }

  @Override
  Mark between(String name, Point from, Point to) {
    return new PointMark.Buttonhole(name, from, to);
  }

  @Override
  Mark drawn(DrawnMark drawn, Optional<MarkSource> stated, Panel panel, VariantValues values) {
    return between(drawn.name(), drawn.path().start(), drawn.path().end());
  }
}
