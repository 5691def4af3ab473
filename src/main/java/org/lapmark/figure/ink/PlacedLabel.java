package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A label at its place.
 *
 * @param wish what was wished for
 * @param lines its lines of text
 * @param box the box around them
 * @param start where the leader leaves the box, or null without a leader
 * @param anchor the point named, or null without a leader
 * @param cost how far from ideal it is
 */
public record PlacedLabel(
    Canvas.Wish wish, List<String> lines, Box box, Point start, Point anchor, double cost) {
  /** What labels keep clear of each other, in millimetres. */
  private static final double APART = 0.9;

  /** How far round lettering a texture stops. */
  private static final double PATCH = 0.6;

  private static final double LEADERS_APART = 0.7;

  PlacedLabel costing(double other) {
    return new PlacedLabel(wish, lines, box, start, anchor, other);
  }

  /** Whether two labels come too near to each other. */
  boolean conflicts(PlacedLabel other) {
    if (box.expanded(APART).overlaps(other.box.expanded(APART))) {
      return true;
    }
    if (start != null && Polygons.crosses(other.box.expanded(APART), start, anchor)
        || other.start != null
            && Polygons.crosses(box.expanded(APART), other.start, other.anchor)) {
      return true;
    }
    return start != null
        && other.start != null
        && distance(start, anchor, other.start, other.anchor) < LEADERS_APART;
  }

  private static double distance(Point a, Point b, Point c, Point d) {
    if (Polygons.side(a, b, c) * Polygons.side(a, b, d) < 0
        && Polygons.side(c, d, a) * Polygons.side(c, d, b) < 0) {
      return 0;
    }
    return Math.min(
        Math.min(Polygons.distance(a, c, d), Polygons.distance(b, c, d)),
        Math.min(Polygons.distance(c, a, b), Polygons.distance(d, a, b)));
  }

  /**
   * Letters it.
   *
   * @param canvas the canvas that wished for it
   * @return what is drawn
   */
  public List<Item> items(Canvas canvas) {
    List<Item> items = new ArrayList<>();
    if (!wish.ring() && canvas.isTextured(box.centre())) {
      // Where words stand, the texture stops.
      items.add(new Item.Shape(List.of(Path.rectangle(box.expanded(PATCH))), "figure-patch"));
    }
    if (start != null) {
      items.add(new Item.Shape(List.of(Path.polyline(List.of(start, anchor))), "figure-leader"));
      items.add(new Item.Shape(List.of(Path.circle(anchor, 0.5)), "figure-leader-dot"));
    }
    if (wish.ring()) {
      items.add(
          new Item.Shape(List.of(Path.circle(box.centre(), LabelPlacer.RING / 2)), "figure-ring"));
      double top = box.centre().y() - canvas.lineHeight() / 2;
      items.add(
          canvas.lettering(wish.text(), new Point(box.centre().x(), top), Item.Alignment.MIDDLE));
      return items;
    }
    // Lines are set against the leader, centred without one.
    Item.Alignment alignment = Item.Alignment.MIDDLE;
    double x = box.centre().x();
    if (start != null && start.x() < box.minX()) {
      alignment = Item.Alignment.START;
      x = box.minX();
    } else if (start != null && start.x() > box.maxX()) {
      alignment = Item.Alignment.END;
      x = box.maxX();
    }
    for (int i = 0; i < lines.size(); i++) {
      double top = box.minY() + i * canvas.leading();
      items.add(canvas.lettering(lines.get(i), new Point(x, top), alignment));
    }
    return items;
  }
}
