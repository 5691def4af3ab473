package org.lapmark.grade.piece;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How many of a piece are cut from one material.
 *
 * @param material the material's id
 * @param materialName what readers see
 * @param count how many in all, at least 1
 * @param reversed how many of them with the paper face down, at most {@code count}
 */
public record Cut(String material, String materialName, int count, int reversed) {
  /** How the pieces of a cut are to each other. */
  public enum Mirroring {
    /** All are the same way round. */
    NONE,
    /** As many one way round as the other. */
    PAIRS,
    /** All are the other way round. */
    ALL,
    /** Some are one way round and some the other. */
    SOME
  }

  /**
   * How its pieces are to each other.
   *
   * @return what a maker calls it
   */
  public Mirroring mirroring() {
    if (reversed == 0) {
      return Mirroring.NONE;
    }
    if (reversed == count) {
      return Mirroring.ALL;
    }
    return 2 * reversed == count ? Mirroring.PAIRS : Mirroring.SOME;
  }

  /**
   * What a message says of it.
   *
   * @return {@code count}, {@code material}, {@code reversed} and {@code mirrored}: a {@link
   *     Mirroring}
   */
  public Map<String, Object> words() {
    Map<String, Object> words = new LinkedHashMap<>();
    words.put("count", count);
    words.put("material", materialName);
    words.put("reversed", reversed);
    words.put("mirrored", mirroring().name());
    return words;
  }
}
