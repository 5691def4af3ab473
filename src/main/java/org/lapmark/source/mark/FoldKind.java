package org.lapmark.source.mark;

import org.lapmark.geometry.Path;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.source.drawing.Role;

/** A line along which cloth is folded. */
final class FoldKind extends LineKind {
  FoldKind() {
    super("fold", "folds", Stage.SHAPE, Role.FOLDLINE);
  }

  @Override
  Mark along(String name, Path line) {
    return new LineMark.FoldLine(name, line);
  }
}
