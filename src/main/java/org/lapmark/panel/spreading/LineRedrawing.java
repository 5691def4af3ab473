package org.lapmark.panel.spreading;

import java.util.List;
import java.util.TreeSet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/** Redraws lines that are cut, of the outline or inside the panel. */
final class LineRedrawing {
  private final Panel panel;

  LineRedrawing(Panel panel) {
    this.panel = panel;
  }

  /** The places of a line that no curve may run over: its ends, turns and cuts, in order. */
  static List<Double> stops(Path line, List<Parting> partings) {
    TreeSet<Double> stops = new TreeSet<>(LineTurns.kinks(line));
    partings.forEach(parting -> stops.add(parting.at()));
    stops.add(0.0);
    stops.add(line.length());
    return List.copyOf(stops);
  }

  /**
   * A line with the cuts inside it redrawn.
   *
   * @param aslant gets the cuts across which it bends to one side and back
   */
  Redrawing redrawn(
      Path line, Affine first, List<Parting> partings, Bridge head, Bridge tail, List<Cut> aslant) {
    Redrawing redrawing = new Redrawing();
    double length = line.length();
    double from = 0;
    if (head != null) {
      redrawing.replace(0, 0, head.right(), head.curve().part(0.5, 1));
      from = head.right();
    }
    double end = tail == null ? length : length - tail.left();
    Affine moved = first;
    List<Double> stops = stops(line, partings);
    for (int i = 0; i < partings.size(); i++) {
      Parting parting = partings.get(i);
      Straight straight = straight(line, partings.subList(i, partings.size()), head, tail);
      if (straight != null) {
        Parting last = partings.get(i + straight.count - 1);
        redrawing.keep(line, from, straight.from, moved);
        redrawing.replace(
            straight.from, parting.at(), straight.to, straight.line(line, moved, last.after()));
        from = straight.to;
        moved = last.after();
        i += straight.count - 1;
        continue;
      }
      int stop = stops.indexOf(parting.at());
      boolean hinge = parting.gap(line.atLength(parting.at())) <= Redrawing.NOTHING;
      boolean kink = LineTurns.isKink(line, parting.at());
      if (kink && !hinge) {
        throw atCorner(panel, parting.cut());
      }
      Bridge.Side before =
          new Bridge.Side(
              line,
              parting.at(),
              parting.before(),
              room(line, parting, partings, stops.get(stop - 1), head));
      Bridge.Side after =
          new Bridge.Side(
              line,
              parting.at(),
              parting.after(),
              room(line, parting, partings, stops.get(stop + 1), tail));
      Bridge bridge = null;
      if (!hinge) {
        bridge = Bridge.across(before, after);
        if (bridge == null) {
          throw unsmooth(panel, parting.cut());
        }
        if (bridge.turnsBack()) {
          aslant.add(parting.cut());
        }
      } else if (!kink) {
        bridge = Bridge.overHinge(before, after);
      }
      if (bridge == null) {
        redrawing.keep(line, from, parting.at(), moved);
        from = parting.at();
      } else {
        redrawing.keep(line, from, parting.at() - bridge.left(), moved);
        redrawing.replace(
            parting.at() - bridge.left(),
            parting.at(),
            parting.at() + bridge.right(),
            bridge.curve());
        from = parting.at() + bridge.right();
      }
      moved = parting.after();
    }
    redrawing.keep(line, from, end, moved);
    if (tail != null) {
      redrawing.replace(end, length, length, tail.curve().part(0, 0.5));
    }
    return redrawing;
  }

  /** A straight stretch of a line, from turn to turn, and how many of the next cuts are in it. */
  private record Straight(double from, double to, int count) {
    Line line(Path line, Affine before, Affine after) {
      return new Line(before.apply(line.atLength(from)), after.apply(line.atLength(to)));
    }
  }

  /** The stretch that stays straight although it is cut, its parts being only shifted, or null. */
  private Straight straight(Path line, List<Parting> partings, Bridge head, Bridge tail) {
    Parting first = partings.get(0);
    TreeSet<Double> turns = new TreeSet<>(stops(line, List.of()));
    double from = turns.lower(first.at());
    double to = turns.higher(first.at());
    List<Parting> inside = partings.stream().filter(parting -> parting.at() < to).toList();
    boolean open = from == 0 && head != null || to == line.length() && tail != null;
    if (open
        || turns.contains(first.at())
        || !inside.stream().allMatch(Parting::isShift)
        || !LineTurns.isStraight(line.part(from, to))) {
      return null;
    }
    Straight straight = new Straight(from, to, inside.size());
    Line drawn = straight.line(line, first.before(), inside.get(inside.size() - 1).after());
    Point along = first.before().applyVector(line.tangentAtLength(from));
    if (drawn.end().minus(drawn.start()).dot(along) <= Redrawing.NOTHING) {
      throw unsmooth(panel, first.cut());
    }
    return straight;
  }

  /**
   * How much of a line may be redrawn from a cut towards a stop; two curves share what is there.
   */
  private static double room(
      Path line, Parting parting, List<Parting> partings, double stop, Bridge beyond) {
    double whole = Math.abs(stop - parting.at());
    boolean atEnd = stop == 0 || stop == line.length();
    boolean shared =
        atEnd ? beyond != null : partings.stream().anyMatch(other -> other.at() == stop);
    return shared ? whole / 2 : whole;
  }

  static PanelException unsmooth(Panel panel, Cut cut) {
    boolean back = cut.slash().open() < 0;
    return cut.refused(back ? PanelCode.SLASH_TURNS_BACK : PanelCode.SLASH_NOT_SMOOTH, panel);
  }

  static PanelException atCorner(Panel panel, Cut cut) {
    return PanelCode.SLASH_AT_CORNER.exception("panel", panel.name(), "slash", cut.slash().name());
  }
}
