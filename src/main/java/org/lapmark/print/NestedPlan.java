package org.lapmark.print;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.print.piece.PlacedPiece;
import org.lapmark.print.sheet.SheetPlan;

/**
 * The pieces of all sizes stacked, and the tiles that show them.
 *
 * @param sheet the sheet; its pieces stand for all sizes of them
 * @param sizes the sizes in one phrase
 * @param layers the names of the layers: the sizes in their order, then the stitching lines
 * @param hidden the layers that are off at first: stitching lines, which would run between the
 *     cutting lines of other sizes and be taken for them
 * @param pieces the pieces of each size where they lie in the stack; empty without tiles
 */
public record NestedPlan(
    SheetPlan sheet,
    String sizes,
    List<String> layers,
    List<String> hidden,
    Map<String, List<PlacedPiece>> pieces) {
  /** Copies the collections, keeping their order. */
  public NestedPlan {
    layers = List.copyOf(layers);
    hidden = List.copyOf(hidden);
    pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
  }
}
