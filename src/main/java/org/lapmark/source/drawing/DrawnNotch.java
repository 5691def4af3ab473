package org.lapmark.source.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A notch as drawn. It belongs to the place of the outline that is nearest to its mark, so that
 * there has to be one such place.
 *
 * @param shape the shape
 * @param mark the point by which its place is known
 * @param line its line; null where it is a circle or the like
 */
record DrawnNotch(DrawnShape shape, Point mark, Path line) {
  /** How far from the outline a notch may be drawn, in millimetres. */
  private static final double NEAR = 5;

  /** How far its mark may be from the outline: half of a line that crosses it. */
  private static final double LONGEST = 10;

  /** Where a line is this near to the outline, in millimetres, it meets it. */
  private static final double MEETS = 0.5;

  /** How far apart, in millimetres, the places may lie at which a line meets the outline. */
  private static final double APART = 10;

  private static final int MOST_STEPS = 400;

  /** What is wrong with its place, if anything is. */
  Optional<Finding> problem(Path outline) {
    double distance = outline.distance(mark);
    if (line == null) {
      return distance > NEAR ? Optional.of(off("off", distance)) : Optional.empty();
    }
    double length = line.length();
    int steps = (int) Math.max(8, Math.min(MOST_STEPS, Math.ceil(length / MEETS)));
    double nearest = Double.POSITIVE_INFINITY;
    Double first = null;
    boolean several = false;
    for (int i = 0; i <= steps; i++) {
      Point at = line.atLength(length * i / steps);
      double here = outline.distance(at);
      nearest = Math.min(nearest, here);
      if (here <= MEETS) {
        double place = outline.nearestLength(at);
        first = first == null ? place : first;
        double between = Math.abs(place - first);
        several |= Math.min(between, outline.length() - between) > APART;
      }
    }
    if (several) {
      return Optional.of(off("several", distance));
    }
    return nearest > NEAR || distance > LONGEST
        ? Optional.of(off("off", Math.max(nearest, distance)))
        : Optional.empty();
  }

  private Finding off(String reason, double distance) {
    return Finding.of(
        DrawingCode.NOTCH_OFF_OUTLINE,
        shape.position(),
        "id",
        shape.id().text(),
        "reason",
        reason,
        "distance",
        BigDecimal.valueOf(distance).setScale(1, RoundingMode.HALF_UP).toPlainString());
  }
}
