package org.lapmark.lay;

import java.util.List;
import java.util.Optional;

/**
 * How one material is cut, and what to buy of it.
 *
 * @param cloth the material
 * @param lays one layout a width on which all pieces fit; none for piece goods
 * @param goods the lengths of piece goods
 */
public record ClothPlan(Cloth cloth, List<Lay> lays, Optional<PieceGoods> goods) {
  /** Copies the list. */
  public ClothPlan {
    lays = List.copyOf(lays);
  }
}
