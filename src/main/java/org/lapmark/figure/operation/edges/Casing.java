package org.lapmark.figure.operation.edges;

import static org.lapmark.figure.operation.frame.Cut.BEYOND;
import static org.lapmark.figure.operation.frame.Cut.at;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Named;
import org.lapmark.figure.operation.craft.Sectional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.section.Solid;

/** A casing. */
public final class Casing extends Sectional {
  /** The kind. */
  public Casing() {
    super(
        "casing",
        Named.EDGE,
        List.of(Amounts.CLOTH, Amounts.ALLOWANCE),
        List.of(),
        List.of(Amounts.ELASTIC, Amounts.CORD, Amounts.DISTANCE));
  }

  @Override
  public List<Frame> frames(Bench bench) {
    boolean corded = bench.has(Amounts.CORD);
    double thing =
        corded ? bench.length(Amounts.CORD, 1, 20) : bench.length(Amounts.ELASTIC, 2, 200, 6);
    double room = corded ? thing * 1.6 + 2 : thing + 2;
    double wide = bench.allowance(room + 2);
    double edge = bench.length(Amounts.DISTANCE, 0.5, wide - room, Math.min(2, wide - room));
    Material cloth = bench.cloth();
    double last = 2.2;
    double middle = -(wide - edge) / 2;
    Cut cut =
        new Cut()
            .layer(cloth, Side.WRONG, at(-wide, last, -BEYOND), at(0, last), at(0, 0), at(-wide, 0))
            .sewn(at(-wide + edge, 0), at(-wide + edge, last))
            .above(-wide, 0, bench.printed(wide))
            .below(-wide, -wide + edge, bench.printed(edge));
    if (corded) {
      cut.solid(at(middle, last / 2), Solid.round(2.2), Texture.INTERFACING, bench.label("cord"));
    } else {
      String name = bench.label("elastic");
      Material elastic = new Material(Optional.of(Texture.WEBBING), name, name);
      cut.layer(
          elastic, Side.RIGHT, at(middle - thing / 2, last / 2), at(middle + thing / 2, last / 2));
    }
    return List.of(bench.section(corded ? "cord" : "elastic", cut));
  }
}
