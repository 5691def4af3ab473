package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.lapmark.geometry.Path;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/** Redraws a panel's edges, those that are cut and those that only move. */
final class OutlineRedrawing {
  private final Panel panel;
  private final Cuts cuts;
  private final Motions motions;
  private final Consumer<PanelException> notices;
  private final LineRedrawing lines;
  private final List<Double> starts;
  private final List<Parting> partings;

  OutlineRedrawing(Panel panel, Cuts cuts, Motions motions, Consumer<PanelException> notices) {
    this.panel = panel;
    this.cuts = cuts;
    this.motions = motions;
    this.notices = notices;
    this.lines = new LineRedrawing(panel);
    this.starts = cuts.starts();
    this.partings = partings();
  }

  /** Where the outline is cut, in order. */
  private List<Parting> partings() {
    Map<Double, Cut> places = new TreeMap<>();
    for (Cut cut : cuts.all()) {
      places.put(cut.from(), cut);
      places.put(cut.to(), cut);
    }
    List<Double> order = List.copyOf(places.keySet());
    List<Parting> partings = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      double at = order.get(i);
      double before = order.get((i + order.size() - 1) % order.size());
      double after = order.get((i + 1) % order.size());
      partings.add(
          new Parting(
              at, motions.at(halfway(before, at)), motions.at(halfway(at, after)), places.get(at)));
    }
    return partings;
  }

  private double halfway(double from, double to) {
    double at = from + (to > from ? to - from : to - from + cuts.length()) / 2;
    return at >= cuts.length() ? at - cuts.length() : at;
  }

  /** Every edge redrawn, in order. */
  List<Redrawing> redrawn() {
    Map<Integer, Bridge> heads = new LinkedHashMap<>();
    int count = panel.edges().size();
    for (Parting parting : partings) {
      int index = starts.indexOf(parting.at());
      if (index >= 0 && parting.gap(cuts.outline().atLength(parting.at())) > Redrawing.NOTHING) {
        heads.put(index, overCorner(index, parting));
      }
    }
    List<Redrawing> redrawn = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Path line = panel.edges().get(i).path();
      List<Parting> inner = inside(i);
      double first = starts.get(i) + (inner.isEmpty() ? line.length() : inner.get(0).at()) / 2;
      List<Cut> aslant = new ArrayList<>();
      redrawn.add(
          lines.redrawn(
              line, motions.at(first), inner, heads.get(i), heads.get((i + 1) % count), aslant));
      String edge = panel.edges().get(i).name();
      aslant.forEach(cut -> tellOfBend(cut, edge));
    }
    return redrawn;
  }

  /** The curve across an opening at a corner at which the outline doesn't turn. */
  private Bridge overCorner(int index, Parting parting) {
    int count = panel.edges().size();
    int previous = (index + count - 1) % count;
    Path before = panel.edges().get(previous).path();
    Path after = panel.edges().get(index).path();
    double end = before.length();
    if (LineTurns.isKink(LineTurns.backwards(before, end), LineTurns.onwards(after, 0))) {
      throw LineRedrawing.atCorner(panel, parting.cut());
    }
    List<Double> stops = LineRedrawing.stops(after, inside(index));
    List<Double> earlier = LineRedrawing.stops(before, inside(previous));
    // An edge that is both before and after this corner is shared by the curve's two ends.
    double room = count == 1 ? end / 2 : Double.POSITIVE_INFINITY;
    Bridge bridge =
        Bridge.across(
            new Bridge.Side(
                before,
                end,
                parting.before(),
                Math.min(room, (end - earlier.get(earlier.size() - 2)) / 2)),
            new Bridge.Side(after, 0, parting.after(), Math.min(room, stops.get(1) / 2)));
    if (bridge == null) {
      throw LineRedrawing.unsmooth(panel, parting.cut());
    }
    if (bridge.turnsBack()) {
      tellOfBend(parting.cut(), panel.edges().get(index).name());
    }
    return bridge;
  }

  private List<Parting> inside(int edge) {
    double start = starts.get(edge);
    double end = start + panel.edges().get(edge).path().length();
    return partings.stream()
        .filter(parting -> parting.at() > start && parting.at() < end - Cuts.SNAP / 2)
        .map(parting -> parting.from(start))
        .toList();
  }

  private void tellOfBend(Cut cut, String edge) {
    notices.accept(
        PanelCode.SLASH_BENDS_BACK.exception(
            "panel",
            panel.name(),
            "slash",
            cut.slash().name(),
            "open",
            Math.abs(cut.slash().open()),
            "edge",
            edge));
  }
}
