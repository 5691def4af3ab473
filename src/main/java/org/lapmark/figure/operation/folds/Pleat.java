package org.lapmark.figure.operation.folds;

import static org.lapmark.figure.operation.frame.Cut.BEYOND;
import static org.lapmark.figure.operation.frame.Cut.NEXT;
import static org.lapmark.figure.operation.frame.Cut.TURN;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.craft.Sectional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;

/** A pleat. */
public final class Pleat extends Sectional {
  /** The kind. */
  public Pleat() {
    super(
        "pleat",
        Named.NOTHING,
        List.of(),
        List.of(Amounts.CLOTH, Amounts.DEPTH),
        List.of(Amounts.BOX));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    double deep = bench.length(Amounts.DEPTH, 4, 200);
    boolean box = bench.or(Amounts.BOX, false);
    Material cloth = bench.cloth();
    Cut cut = new Cut();
    if (box) {
      cut.layer(
          cloth,
          Side.RIGHT,
          at(-deep, 2 * NEXT, -BEYOND),
          at(0, 2 * NEXT, -TURN),
          at(0, NEXT, -TURN),
          at(-deep, NEXT),
          at(-deep, 0),
          at(deep, 0),
          at(deep, NEXT),
          at(0, NEXT, TURN),
          at(0, 2 * NEXT, TURN),
          at(deep, 2 * NEXT, BEYOND));
    } else {
      cut.layer(
          cloth,
          Side.RIGHT,
          at(-deep, 0, -BEYOND),
          at(0, 0),
          at(0, NEXT),
          at(-deep, NEXT),
          at(-deep, 2 * NEXT),
          at(0, 2 * NEXT, BEYOND));
    }
    cut.above(-deep, 0, bench.printed(deep));
    return List.of(bench.section(box ? "box" : "knife", cut));
  }
}
