package org.lapmark.print.line;

import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;

/** Items under a map that moves or scales along the axes; lettering keeps its size. */
public final class Moved {
  private Moved() {}

  public static Item by(Affine map, Item item) {
    if (item instanceof Item.Shape shape) {
      return new Item.Shape(
          shape.paths().stream().map(path -> path.transformed(map)).toList(), shape.role());
    }
    if (item instanceof Item.Lettering text) {
      return new Item.Lettering(
          text.text(), map.apply(text.anchor()), text.alignment(), text.angle(), text.role());
    }
    Item.Group group = (Item.Group) item;
    return new Item.Group(
        group.clip() == null ? null : group.clip().transformed(map),
        map.after(group.map()),
        group.layer(),
        group.otherLayers(),
        group.items());
  }
}
