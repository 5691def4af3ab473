package org.lapmark.panel;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** The places from which a symmetrical panel is folded. */
public final class FoldPlace {
  private FoldPlace() {}

  /**
   * The middle of an edge or chain, or the corner with which an edge begins.
   *
   * @param panel the panel
   * @param name an edge's, chain's or corner's name
   * @return the point
   * @throws PanelException when there is nothing of that name, or it stands for several lines
   */
  public static Point of(Panel panel, String name) {
    if (!panel.isOneLine(name)) {
      throw panel.inParts(name);
    }
    Path line = panel.line(name);
    if (line != null) {
      return line.atLength(line.length() / 2);
    }
    for (Edge edge : panel.edges()) {
      if (edge.from().equals(name)) {
        return edge.path().start();
      }
    }
    List<String> known = new ArrayList<>(panel.chains().keySet());
    panel.edges().forEach(edge -> known.add(edge.name()));
    panel.edges().forEach(edge -> known.add(edge.from()));
    throw PanelCode.FOLD_PLACE_UNKNOWN.exception(
        "panel", panel.name(), "place", name, "places", Known.listed(known));
  }
}
