package org.lapmark.panel.spreading;

import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/**
 * A slash line with its ends on the outline.
 *
 * @param slash what is stated
 * @param from where it begins, in arc length of the outline
 * @param to where it ends
 * @param line from one end to the other, as chords within 0.001 mm
 * @param side the border of the part that follows its start clockwise
 */
record Cut(Slash slash, double from, double to, Path line, Path side) {
  Point start() {
    return line.start();
  }

  Point end() {
    return line.end();
  }

  /** What is said of a cut that can't be opened as stated. */
  PanelException refused(PanelCode code, Panel panel) {
    return code.exception(
        "panel", panel.name(), "slash", slash.name(), "open", Math.abs(slash.open()));
  }
}
