package org.lapmark.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.FigureSource.Side;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.source.ThingSource;

/** The key of sides and materials: a swatch and a name for each, in rows. */
final class ClothKey {
  private static final double WIDE = 14;
  private static final double HIGH = 8;
  private static final double ROW = 12;
  private static final int COLUMNS = 3;
  private static final double BESIDE = 2.5;
  private static final double APART = 3;

  private ClothKey() {}

  /** A swatch's material, side and name. */
  private record Swatch(Texture texture, Side side, String name) {}

  static Drawing draw(Evaluation evaluation, StyleSheet styles, LetteringMeasure lettering) {
    Set<Swatch> swatches = new LinkedHashSet<>();
    for (ThingSource material : evaluation.pattern().source().materials()) {
      String id = material.id().text();
      Texture texture = evaluation.texture(id);
      swatches.add(new Swatch(texture, Side.RIGHT, evaluation.clothAndSide(id, Side.RIGHT)));
      if (texture.sided()) {
        swatches.add(new Swatch(texture, Side.WRONG, evaluation.clothAndSide(id, Side.WRONG)));
      }
    }
    Canvas canvas = new Canvas(styles, lettering);
    int count = swatches.size();
    double widest = swatches.stream().mapToDouble(one -> canvas.width(one.name)).max().orElse(0);
    int fitting = (int) (FigureDrawer.FULL / (WIDE + BESIDE + widest + APART));
    int columns = Math.max(1, Math.min(COLUMNS, fitting));
    int rows = (count + columns - 1) / columns;
    int index = 0;
    for (Swatch swatch : swatches) {
      double x = 1 + index / rows * FigureDrawer.FULL / columns;
      double y = 1 + index % rows * ROW;
      Path box = Path.rectangle(Box.at(x, y, WIDE, HIGH));
      canvas.cloth(box, swatch.texture, swatch.side, 0);
      canvas.line(box, "figure-outline");
      canvas.fixed(
          swatch.name, new Point(x + WIDE + BESIDE + canvas.width(swatch.name) / 2, y + HIGH / 2));
      index++;
    }
    List<org.lapmark.drawing.Item> items = new ArrayList<>();
    items.add(new org.lapmark.drawing.Item.Group(null, Affine.IDENTITY, null, canvas.items()));
    return new Drawing(FigureDrawer.FULL, 2 + (rows - 1) * ROW + HIGH, items);
  }
}
