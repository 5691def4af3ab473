package org.lapmark.figure.operation.metal;

import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.operation.frame.Metal;
import org.lapmark.figure.section.SectionScene.Spot;

/** What metal is set with. */
final class Tools {
  private static final double DEEP = 1.2;

  private Tools() {}

  /** A plate below a level. */
  static List<Spot> anvil(double half, double level) {
    return Metal.box(-half * 1.7, level + 0.05, half * 1.7, level + DEEP);
  }

  /** A punch whose hollow end stands at a level. */
  static List<Spot> setter(double half, double level) {
    List<Spot> spots = new ArrayList<>();
    spots.add(at(-half * 0.8, level - 2 * DEEP));
    spots.add(at(half * 0.8, level - 2 * DEEP));
    spots.add(at(half * 0.8, level + 0.3));
    spots.add(at(half * 0.55, level));
    spots.add(at(-half * 0.55, level));
    spots.add(at(-half * 0.8, level + 0.3));
    return spots;
  }
}
