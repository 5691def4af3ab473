package org.lapmark.figure.operation.plan;

import java.util.List;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;

/**
 * A layer of cloth.
 *
 * @param texture how its material is shown
 * @param up the side that is seen
 * @param rim its rim
 * @param aside how far it lies aside on paper, so that it is seen under what covers it
 * @param name its name; empty where it is named elsewhere
 */
record Sheet(Texture texture, Side up, Rim rim, Point aside, String name) implements Part {
  private Affine map(double scale) {
    return Affine.translation(aside.x(), aside.y()).after(Affine.scaling(scale, scale));
  }

  @Override
  public void draw(Canvas canvas, double scale, List<List<Point>> above) {
    Affine map = map(scale);
    canvas.cloth(rim.path(map), texture, up, 0);
    rim.draw(canvas, map);
    if (!name.isEmpty()) {
      canvas.name(name, rim.polygon(map), above);
    }
  }

  @Override
  public boolean isDark() {
    return texture == Texture.BINDING && up == Side.RIGHT;
  }

  @Override
  public List<Point> cover(double scale) {
    return rim.polygon(map(scale));
  }
}
