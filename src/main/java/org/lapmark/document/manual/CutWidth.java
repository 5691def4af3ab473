package org.lapmark.document.manual;

import java.util.LinkedHashSet;
import java.util.Set;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.ThingSource;

/**
 * The width at which a piece is ruled. A piece that takes its webbing or tape from edge to edge is
 * as wide as that is called in a shop: what is bought as 30 mm (1 1/4 in) isn't cut to 1 3/16 in.
 */
public final class CutWidth {
  private static final double SAME = 1e-6;

  private CutWidth() {}

  /** A length, or the nominal pair of the material's width. */
  public static Value of(EvaluatedPattern pattern, Piece piece, StatedSize size) {
    Set<Value> called = new LinkedHashSet<>();
    for (Cut cut : piece.cuts()) {
      for (ThingSource material : pattern.source().materials()) {
        if (material.id().text().equals(cut.material())) {
          called.add(called(pattern, material, size.width()));
        }
      }
    }
    return called.size() == 1 ? called.iterator().next() : Value.Quantity.length(size.width());
  }

  public static String print(Value width, PrintForm form) {
    return width instanceof Value.NominalPair size
        ? form.print(size)
        : form.print((Value.Quantity) width);
  }

  private static Value called(EvaluatedPattern pattern, ThingSource material, double width) {
    Value.Quantity plain = Value.Quantity.length(width);
    if (!material.properties().containsKey("usable_width")) {
      return plain;
    }
    Value usable = material.properties().get("usable_width").evaluate(pattern.scope());
    return usable instanceof Value.NominalPair pair && Math.abs(pair.metric() - width) < SAME
        ? pair
        : plain;
  }
}
