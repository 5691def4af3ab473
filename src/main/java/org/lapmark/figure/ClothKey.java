package org.lapmark.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.stage.Cloths;
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

  static Drawing draw(Cloths cloths, Canvas canvas) {
    List<Swatch> swatches = swatches(cloths);
    double widest = swatches.stream().mapToDouble(one -> canvas.width(one.name)).max().orElse(0);
    int fitting = (int) (FigureDrawer.FULL / (WIDE + BESIDE + widest + APART));
    // Names too long for two columns are broken into lines.
    int columns = Math.max(2, Math.min(COLUMNS, fitting));
    double room = FigureDrawer.FULL / columns - WIDE - BESIDE - APART;
    List<List<String>> names = swatches.stream().map(one -> lines(one.name, room, canvas)).toList();
    int lines = names.stream().mapToInt(List::size).max().orElse(1);
    double row = Math.max(ROW, lines * canvas.leading() + ROW - HIGH);
    int rows = (swatches.size() + columns - 1) / columns;
    for (int i = 0; i < swatches.size(); i++) {
      Swatch swatch = swatches.get(i);
      double x = 1 + i / rows * FigureDrawer.FULL / columns;
      double middle = 1 + (row - ROW + HIGH) / 2 + i % rows * row;
      Path box = Path.rectangle(Box.at(x, middle - HIGH / 2, WIDE, HIGH));
      canvas.cloth(box, swatch.texture, swatch.side, 0);
      canvas.line(box, "figure-outline");
      List<String> name = names.get(i);
      for (int k = 0; k < name.size(); k++) {
        double y = middle + (k - (name.size() - 1) / 2.0) * canvas.leading();
        canvas.fixed(name.get(k), new Point(x + WIDE + BESIDE + canvas.width(name.get(k)) / 2, y));
      }
    }
    List<Item> items = new ArrayList<>();
    items.add(new Item.Group(null, Affine.IDENTITY, null, canvas.items()));
    return new Drawing(FigureDrawer.FULL, 2 + rows * row - ROW + HIGH, items);
  }

  /** One for each side of each texture, with the names of all materials that are shown by it. */
  private static List<Swatch> swatches(Cloths cloths) {
    Map<Texture, Set<String>> names = new LinkedHashMap<>();
    for (ThingSource material : cloths.staging().pattern().source().materials()) {
      String id = material.id().text();
      names
          .computeIfAbsent(cloths.texture(id), unused -> new LinkedHashSet<>())
          .add(name(cloths, id));
    }
    List<Swatch> swatches = new ArrayList<>();
    names.forEach(
        (texture, materials) -> {
          String name = String.join(", ", materials);
          if (texture.sided()) {
            for (Side side : Side.values()) {
              swatches.add(new Swatch(texture, side, cloths.sided(name, side)));
            }
          } else {
            swatches.add(new Swatch(texture, Side.RIGHT, name));
          }
        });
    return swatches;
  }

  /** A material's own name, behind the word by which labels call it unless that is part of it. */
  private static String name(Cloths cloths, String material) {
    String word = cloths.name(material);
    String name = cloths.statedName(material);
    return name.contains(word)
        ? name
        : cloths.staging().words().word("cloth.named", "word", word, "name", name);
  }

  private static List<String> lines(String name, double room, Canvas canvas) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : name.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && canvas.width(longer) > room) {
        lines.add(line);
        longer = word;
      }
      line = longer;
    }
    lines.add(line);
    return lines;
  }
}
