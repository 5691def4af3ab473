package org.lapmark.figure.operation.layers;

import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;

/** Layers lying on each other, drawn apart. */
public final class Stack extends Craft {
  /** The kind. */
  public Stack() {
    super("layers_apart", Named.NOTHING, List.of(), List.of(Amounts.STACK), List.of());
  }

  @Override
  public List<Frame> frames(Bench bench) {
    Cut cut = new Cut();
    double level = 0;
    for (Material one : bench.stack()) {
      cut.layer(one, Side.RIGHT, at(0, level), at(40, level));
      level += 1.9;
    }
    return List.of(bench.section("apart", cut));
  }
}
