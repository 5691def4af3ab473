package org.lapmark.source.mark;

import org.lapmark.geometry.Path;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.source.drawing.Role;

/** A line that shows where something is placed. Without a place, one that is drawn. */
final class PlacementKind extends LineKind {
  PlacementKind() {
    super("placement", "placements", Stage.GUIDE, Role.PLACEMENT);
  }

  @Override
  Mark along(String name, Path line) {
    return new LineMark.Placement(name, line);
  }
}
