package org.lapmark.lay;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;

/** Items moved to another place. */
final class Moved {
  private Moved() {}

  static List<Item> all(List<Item> items, Affine shift) {
    List<Item> moved = new ArrayList<>();
    for (Item item : items) {
      moved.add(one(item, shift));
    }
    return moved;
  }

  private static Item one(Item item, Affine shift) {
    if (item instanceof Item.Shape shape) {
      List<Path> paths = shape.paths().stream().map(path -> path.transformed(shift)).toList();
      return new Item.Shape(paths, shape.role());
    }
    if (item instanceof Item.Lettering text) {
      return new Item.Lettering(
          text.text(), shift.apply(text.anchor()), text.alignment(), text.angle(), text.role());
    }
    Item.Group group = (Item.Group) item;
    Path clip = group.clip() == null ? null : group.clip().transformed(shift);
    return new Item.Group(
        clip, shift.after(group.map()), group.layer(), group.otherLayers(), group.items());
  }
}
