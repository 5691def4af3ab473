package org.lapmark.print.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;

/**
 * On which layers something is drawn.
 *
 * @param any it is seen as long as one of these is; always, where there is none
 * @param within and only while this one is seen as well; empty for no such condition
 */
public record Layering(List<String> any, String within) {
  /** Seen always. */
  public static final Layering NONE = new Layering(List.of(), "");

  /** Copies the list. */
  public Layering {
    any = List.copyOf(any);
  }

  /** Puts items on their layers: one group a layering, in the order of first appearance. */
  public static final class Sorter {
    private final Map<Layering, List<Item>> items = new LinkedHashMap<>();

    public void add(Layering layering, Item item) {
      items.computeIfAbsent(layering, unused -> new ArrayList<>()).add(item);
    }

    public List<Item> items() {
      List<Item> all = new ArrayList<>();
      items.forEach((layering, list) -> all.addAll(layering.on(list)));
      return Collections.unmodifiableList(all);
    }
  }

  private List<Item> on(List<Item> items) {
    List<Item> inner = items;
    if (!within.isEmpty()) {
      inner = List.of(new Item.Group(null, Affine.IDENTITY, within, inner));
    }
    return any.isEmpty()
        ? inner
        : List.of(
            new Item.Group(null, Affine.IDENTITY, any.get(0), any.subList(1, any.size()), inner));
  }
}
