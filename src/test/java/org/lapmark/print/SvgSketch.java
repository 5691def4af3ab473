package org.lapmark.print;

import java.io.IOException;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

/** Writes the sample patterns' drawings as SVG files, to be looked at. */
final class SvgSketch {
  private final StyleSheet styles;
  private final StringBuilder out = new StringBuilder();

  private SvgSketch(StyleSheet styles) {
    this.styles = styles;
  }

  /**
   * Writes everything.
   *
   * @param arguments the folder to write into
   * @throws IOException when that fails
   */
  public static void main(String[] arguments) throws IOException {
    java.nio.file.Path folder = java.nio.file.Path.of(arguments[0]);
    Files.createDirectories(folder);
    SheetPlanner planner = SamplePatterns.planner();
    for (Paper paper : new Paper[] {Paper.A4, Paper.LETTER}) {
      Files.writeString(
          folder.resolve("printing-" + paper.id() + ".svg"),
          svg(planner.printingPage(paper), planner.styles()));
      for (var entry : SamplePatterns.all().entrySet()) {
        String name = entry.getKey().replace(' ', '-') + "-" + paper.id();
        long start = System.nanoTime();
        SheetPlan plan = planner.plan(entry.getValue(), paper);
        long spent = System.nanoTime() - start;
        System.out.println(
            name + ": " + plan.tiles().size() + " tiles, " + spent / 1_000_000 + " ms");
        Map<String, Integer> pages = new LinkedHashMap<>();
        for (Tile tile : plan.tiles()) {
          pages.put(tile.code(), 9 + pages.size());
          Files.writeString(
              folder.resolve(name + "-" + tile.code() + ".svg"),
              svg(tile.page(), planner.styles()));
        }
        Files.writeString(
            folder.resolve(name + "-map.svg"),
            svg(planner.pageMap(plan, pages, 165, 220), planner.styles()));
      }
    }
  }

  static String svg(Drawing drawing, StyleSheet styles) {
    SvgSketch sketch = new SvgSketch(styles);
    sketch.out.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%fmm\" height=\"%fmm\""
                + " viewBox=\"0 0 %f %f\" style=\"background:white\">%n",
            drawing.width(),
            drawing.height(),
            drawing.width(),
            drawing.height()));
    drawing.items().forEach(sketch::item);
    return sketch.out.append("</svg>\n").toString();
  }

  private void item(Item item) {
    if (item instanceof Item.Shape shape) {
      Style style = styles.style(shape.role());
      out.append(
          String.format(
              Locale.ROOT,
              "<path d=\"%s\" fill=\"%s\" fill-rule=\"evenodd\" stroke=\"%s\" stroke-width=\"%f\""
                  + " stroke-dasharray=\"%s\"/>%n",
              shape.paths().stream().map(SvgSketch::data).collect(Collectors.joining(" ")),
              style.fillGrey() < 0 ? "none" : grey(style.fillGrey()),
              style.strokeWidth() == 0 ? "none" : grey(style.strokeGrey()),
              style.strokeWidth(),
              style.dash().stream().map(String::valueOf).collect(Collectors.joining(" "))));
    } else if (item instanceof Item.Lettering text) {
      Style style = styles.style(text.role());
      out.append(
          String.format(
              Locale.ROOT,
              "<text transform=\"translate(%f %f) rotate(%f)\" font-family=\"Source Sans Pro\""
                  + " font-size=\"%f\" font-weight=\"%s\" text-anchor=\"%s\" fill=\"%s\""
                  + " stroke=\"white\" stroke-width=\"%f\" paint-order=\"stroke\""
                  + " xml:space=\"preserve\">%s</text>%n",
              text.anchor().x(),
              text.anchor().y(),
              text.angle(),
              style.fontSize() * 25.4 / 72,
              style.bold() ? "bold" : "normal",
              text.alignment().name().toLowerCase(Locale.ROOT),
              grey(style.strokeGrey()),
              2 * style.halo(),
              text.text().replace("&", "&amp;").replace("<", "&lt;")));
    }
  }

  private static String grey(double grey) {
    long level = Math.round(255 * grey);
    return "rgb(" + level + "," + level + "," + level + ")";
  }

  private static String data(Path path) {
    StringBuilder data = new StringBuilder("M" + point(path.start()));
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        data.append(" C" + point(cubic.control1()) + point(cubic.control2()) + point(cubic.end()));
      } else if (curve instanceof Arc arc) {
        arc.flattened(0.005).forEach(point -> data.append(" L" + point(point)));
      } else {
        data.append(" L" + point(curve.end()));
      }
    }
    return data.toString();
  }

  private static String point(Point point) {
    return String.format(Locale.ROOT, " %.4f %.4f", point.x(), point.y());
  }
}
