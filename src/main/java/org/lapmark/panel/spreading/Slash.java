package org.lapmark.panel.spreading;

import java.util.Objects;
import org.lapmark.geometry.Path;

/**
 * A line along which a panel is cut and opened, or overlapped, to grade it.
 *
 * @param name its name in messages
 * @param line where it is cut: from one place of the outline to another. What lies outside the
 *     panel is left off; an end may lie up to 0.05 mm inside
 * @param open how far it is opened in millimetres; below 0 the parts overlap. Hinged, it is the
 *     chord between the two sides of the cut at the end away from the hinge
 * @param hinge what stays together
 */
public record Slash(String name, Path line, double open, Hinge hinge) {
  /** Which end of a slash line stays together. */
  public enum Hinge {
    /** Neither: both sides stay parallel, moved apart square to the straight line between ends. */
    NONE,
    /** The end at which the line begins. */
    FROM,
    /** The end at which the line ends. */
    TO
  }

  /** Refuses what isn't there and what isn't a number. */
  public Slash {
    Objects.requireNonNull(line);
    Objects.requireNonNull(hinge);
    if (!Double.isFinite(open)) {
      throw new IllegalArgumentException("a slash opens by a number of millimetres");
    }
  }
}
