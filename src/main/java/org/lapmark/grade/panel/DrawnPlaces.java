package org.lapmark.grade.panel;

import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.source.PanelSource;
import org.lapmark.source.drawing.PanelDrawing;

/** Where something that is drawn stands in the drawing of a panel. */
public final class DrawnPlaces {
  private DrawnPlaces() {}

  /** The drawing that a panel has in a size; nothing where it is stated or derived. */
  public static Optional<PanelDrawing> drawing(PanelSource source, String size) {
    return Optional.ofNullable(source.shape()).flatMap(shape -> shape.drawing(size));
  }

  /**
   * The place of the first of several ids that a panel's drawing has.
   *
   * @param ids such as {@code outline} or {@code corner.a}
   */
  public static Optional<Position> of(PanelSource source, String size, String... ids) {
    Optional<PanelDrawing> drawing = drawing(source, size);
    for (String id : ids) {
      Optional<Position> place = drawing.flatMap(one -> one.place(id));
      if (place.isPresent()) {
        return place;
      }
    }
    return Optional.empty();
  }
}
