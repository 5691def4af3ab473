package org.lapmark.print;

import java.util.List;

/**
 * The pieces of all sizes stacked, and the tiles that show them.
 *
 * @param sheet the sheet; its pieces stand for all sizes of them
 * @param sizes the sizes in one phrase
 * @param layers the names of the layers: the sizes in their order, then the stitching lines
 * @param hidden the layers that are off at first: stitching lines, which would run between the
 *     cutting lines of other sizes and be taken for them
 */
public record NestedPlan(SheetPlan sheet, String sizes, List<String> layers, List<String> hidden) {
  /** Copies the lists. */
  public NestedPlan {
    layers = List.copyOf(layers);
    hidden = List.copyOf(hidden);
  }
}
