package org.lapmark.figure;

import org.lapmark.figure.ink.Texture;
import org.lapmark.source.ThingSource;

/** What a material is for, as its texture or the trade word in its id says. */
public final class Layers {
  private Layers() {}

  private static Texture of(ThingSource material) {
    return material.texture() == null
        ? Texture.of(material.id().text())
        : Texture.stated(material.texture().text());
  }

  /**
   * Whether a material makes another one firmer, so that it isn't what an article is sewn from.
   *
   * @param material the material
   * @return true for interfacing, foam, stiffener and the like
   */
  public static boolean isStiffening(ThingSource material) {
    Texture texture = of(material);
    return texture == Texture.INTERFACING || texture == Texture.BACKING;
  }

  /**
   * Whether a material lies inside another one.
   *
   * @param material the material
   * @return true for lining and for what is stiffening
   */
  public static boolean isInside(ThingSource material) {
    return isStiffening(material) || of(material) == Texture.LINING;
  }
}
