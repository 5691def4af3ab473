package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SizeTable;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Reading;

/** Checks that a panel's drawings for different sizes are of one panel. */
final class SizeDrawings {
  private final Reading reading;
  private final List<String> sizes;

  /**
   * Prepares the check.
   *
   * @param sizes the size table's; null if it couldn't be read
   */
  SizeDrawings(Reading reading, SizeTable sizes) {
    this.reading = reading;
    this.sizes = sizes == null ? null : sizes.sizes();
  }

  void check(PanelSource panel, PanelSource.DrawnBySize drawn) {
    if (sizes != null) {
      for (PanelSource.SizeDrawing drawing : drawn.drawings().values()) {
        if (!sizes.contains(drawing.size().text())) {
          reading.unknown(
              SourceCode.SIZE_UNKNOWN, drawing.size().position(), drawing.size().text(), sizes);
        }
      }
      for (String size : sizes) {
        if (!drawn.drawings().containsKey(size)) {
          reading
              .findings()
              .add(
                  SourceCode.SIZE_DRAWING_MISSING,
                  panel.name().position(),
                  "panel",
                  panel.name().text(),
                  "size",
                  size);
        }
      }
    }
    List<PanelSource.SizeDrawing> fixed = new ArrayList<>();
    for (PanelSource.SizeDrawing drawing : drawn.drawings().values()) {
      if (drawing.drawing().isComputed()) {
        reading
            .findings()
            .add(
                SourceCode.SIZE_DRAWING_COMPUTED,
                drawing.name().position(),
                "name",
                drawing.name().text());
      } else {
        fixed.add(drawing);
      }
    }
    if (!fixed.isEmpty()) {
      compare(fixed.get(0), fixed.subList(1, fixed.size()));
    }
  }

  private void compare(PanelSource.SizeDrawing first, List<PanelSource.SizeDrawing> others) {
    List<String> corners = first.drawing().cornersAround();
    for (PanelSource.SizeDrawing other : others) {
      List<String> around = other.drawing().cornersAround();
      if (!around.equals(corners)) {
        reading
            .findings()
            .add(
                SourceCode.SIZE_DRAWINGS_CORNERS,
                other.name().position(),
                "name",
                other.name().text(),
                "corners",
                listed(around),
                "size",
                first.size().text(),
                "first",
                listed(corners));
      }
      Set<String> marks = new TreeSet<>(first.drawing().markNames());
      Set<String> missing = new TreeSet<>(marks);
      missing.removeAll(other.drawing().markNames());
      Set<String> further = new TreeSet<>(other.drawing().markNames());
      further.removeAll(marks);
      missing.addAll(further);
      if (!missing.isEmpty()) {
        reading
            .findings()
            .add(
                SourceCode.SIZE_DRAWINGS_MARKS,
                other.name().position(),
                "name",
                other.name().text(),
                "size",
                first.size().text(),
                "marks",
                listed(List.copyOf(missing)));
      }
    }
  }

  private static String listed(List<String> names) {
    String some = String.join(", ", names.subList(0, Math.min(20, names.size())));
    return names.isEmpty() ? "none" : names.size() > 20 ? some + " …" : some;
  }
}
