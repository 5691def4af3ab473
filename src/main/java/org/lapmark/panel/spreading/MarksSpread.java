package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Crossings;
import org.lapmark.geometry.Path;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;

/** The marks of a panel that is opened: each goes with the part on which it lies. */
final class MarksSpread implements Mark.Placing<Mark> {
  private final Cuts cuts;
  private final Motions motions;
  private final LineRedrawing lines;
  private final Map<String, Edge> edges = new LinkedHashMap<>();
  private final Map<String, Redrawing> redrawn = new LinkedHashMap<>();

  /**
   * Prepares them.
   *
   * @param edges the edges as redrawn
   * @param redrawn how they were, in the same order
   */
  MarksSpread(Panel panel, Cuts cuts, Motions motions, List<Edge> edges, List<Redrawing> redrawn) {
    this.cuts = cuts;
    this.motions = motions;
    this.lines = new LineRedrawing(panel);
    for (int i = 0; i < edges.size(); i++) {
      this.edges.put(edges.get(i).name(), edges.get(i));
      this.redrawn.put(edges.get(i).name(), redrawn.get(i));
    }
  }

  @Override
  public Mark notch(Mark.Notch notch) {
    Redrawing edge = redrawn.get(notch.edge());
    return edge == null ? notch : new Mark.Notch(notch.edge(), edge.moved(notch.at()), notch.set());
  }

  /** A dart or pleat on the redrawn edge; what goes through it makes it wider or narrower. */
  @Override
  public Mark intake(Intake mark) {
    Redrawing edge = redrawn.get(mark.edge());
    return mark.carried(
        edges.get(mark.edge()), edge.moved(mark.from()), edge.moved(mark.to()), motions::at);
  }

  @Override
  public Mark point(PointMark mark) {
    return mark.transformed(motions.at(mark.middle()), edge -> 0);
  }

  @Override
  public Mark line(LineMark mark) {
    return mark.along(moved(mark.path()));
  }

  /** The grain stays; the parts move from it. */
  @Override
  public Mark grainline(Mark.Grainline grain) {
    return grain;
  }

  private Path moved(Path line) {
    if (line.isClosed()) {
      return line.transformed(motions.at(line.bounds().centre()));
    }
    Map<Double, Cut> places = new TreeMap<>();
    for (Cut cut : cuts.all()) {
      for (Crossings.OfPaths crossing : Crossings.of(line, cut.line())) {
        double at = line.lengthTo(crossing.first());
        if (at > Cuts.SNAP && at < line.length() - Cuts.SNAP) {
          places.put(at, cut);
        }
      }
    }
    List<Parting> partings = new ArrayList<>();
    List<Double> ends = new ArrayList<>(places.keySet());
    ends.add(line.length());
    double from = 0;
    Affine first = null;
    Affine moved = null;
    for (double to : ends) {
      Affine next = motions.at(line.atLength((from + to) / 2));
      if (moved == null) {
        first = next;
      } else {
        partings.add(new Parting(from, moved, next, places.get(from)));
      }
      moved = next;
      from = to;
    }
    return lines.redrawn(line, first, partings, null, null, new ArrayList<>()).path();
  }
}
