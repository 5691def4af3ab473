package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;

/**
 * An edge, or a chain of edges, as it is sewn to something else: its darts and pleats closed.
 *
 * <p>What lies behind a dart is turned about the dart's apex until the legs meet; what lies behind
 * a pleat is shifted. The line keeps its place up to the first of them. Where legs aren't square to
 * the edge the closed line has a corner at the dart, which is the shape that is really sewn.
 */
public final class ClosedLine {
  /** A stretch taken up, on the whole line. */
  private record Taken(Intake mark, double from, double to) {}

  private final Path path;
  private final List<Taken> taken;
  private final double drawn;

  private ClosedLine(Path path, List<Taken> taken, double drawn) {
    this.path = path;
    this.taken = taken;
    this.drawn = drawn;
  }

  /**
   * The line of a panel.
   *
   * @param panel the panel with its darts and pleats
   * @param edgeOrChain the name
   * @return the line, or null when the panel has none of that name
   */
  public static ClosedLine of(Panel panel, String edgeOrChain) {
    Path drawn = panel.line(edgeOrChain);
    if (drawn == null) {
      return null;
    }
    List<Taken> taken = new ArrayList<>();
    List<Intake> intakes = Darts.intakes(panel);
    if (!intakes.isEmpty()) {
      double before = 0;
      for (String name : panel.chains().getOrDefault(edgeOrChain, List.of(edgeOrChain))) {
        for (Intake mark : intakes) {
          if (mark.edge().equals(name)) {
            taken.add(new Taken(mark, before + mark.from(), before + mark.to()));
          }
        }
        before += panel.line(name).length();
      }
      taken.sort(Comparator.comparingDouble(Taken::from));
    }
    double length = drawn.length();
    return new ClosedLine(taken.isEmpty() ? drawn : closed(drawn, length, taken), taken, length);
  }

  private static Path closed(Path drawn, double length, List<Taken> taken) {
    Path closed = null;
    Affine map = Affine.IDENTITY;
    double at = 0;
    for (int i = 0; i <= taken.size(); i++) {
      double end = i < taken.size() ? taken.get(i).from() : length;
      if (end - at > Path.JOIN_TOLERANCE) {
        Path part = drawn.part(at, end).transformed(map);
        closed = closed == null ? part : closed.then(part);
      }
      if (i < taken.size()) {
        Taken one = taken.get(i);
        map = map.after(one.mark().closing(drawn.atLength(one.from()), drawn.atLength(one.to())));
        at = one.to();
      }
    }
    if (closed == null) {
      throw new IllegalStateException("darts and pleats take up a whole edge");
    }
    return closed;
  }

  /**
   * The line with everything closed.
   *
   * @return the path, clockwise on paper; the drawn one where nothing is taken up
   */
  public Path path() {
    return path;
  }

  /**
   * How long it is when everything is closed.
   *
   * @return millimetres: the drawn length less what is taken up
   */
  public double length() {
    double length = drawn;
    for (Taken one : taken) {
      length -= one.to() - one.from();
    }
    return length;
  }

  /**
   * The place on the drawn line of a place on the closed one; at a dart, the foot of its first leg.
   *
   * @param closed millimetres from the closed line's start
   * @return millimetres from the drawn line's start
   */
  public double open(double closed) {
    double at = closed;
    for (Taken one : taken) {
      if (at > one.from() + Path.JOIN_TOLERANCE) {
        at += one.to() - one.from();
      }
    }
    return at;
  }

  /**
   * The place on the closed line of a place on the drawn one; within a dart or pleat, the place
   * where it closes.
   *
   * @param open millimetres from the drawn line's start
   * @return millimetres from the closed line's start
   */
  public double closed(double open) {
    double gone = 0;
    for (Taken one : taken) {
      gone += Math.max(0, Math.min(open, one.to()) - one.from());
    }
    return open - gone;
  }

  /**
   * Where its darts and pleats close.
   *
   * @return millimetres from the closed line's start, rising
   */
  public List<Double> closings() {
    return taken.stream().map(one -> closed(one.from())).toList();
  }
}
