package org.lapmark.panel.derivation;

import java.util.List;
import java.util.function.Consumer;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * A band of one width along an edge or chain of a panel, ending on the neighbouring edges. Refused
 * when the panel has no room for it, or the edge goes all the way round.
 *
 * @param panel the panel
 * @param along the edge's or chain's name
 * @param width millimetres, above 0
 * @param inner the name of the new edge
 */
public record Facing(Panel panel, String along, double width, String inner) implements Derivation {
  @Override
  public Panel derive(String name, Consumer<PanelException> notices) {
    if (!panel.isOneLine(along)) {
      throw panel.inParts(along);
    }
    List<String> run = Ring.members(panel, along);
    Path line = Ring.outline(new Band(panel, run, width).inner());
    Splitting.Parts parts;
    try {
      parts = Splitting.exactly(panel, Splitting.edge(inner, inner, line));
    } catch (PanelException e) {
      throw PanelCode.BAND_TOO_WIDE.exception("panel", panel.name(), "edge", along, "width", width);
    }
    Path edge = Ring.edge(panel, run.get(0)).path();
    Point sample = edge.atLength(edge.length() / 2);
    List<Edge> band =
        parts.first().stream().anyMatch(one -> one.path().distance(sample) < 1e-6)
            ? parts.first()
            : parts.second();
    Splitting.checkName(panel, band, inner, notices);
    return Splitting.part(name, panel, band, inner, notices);
  }
}
