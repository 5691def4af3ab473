package org.lapmark.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.source.PatternSource;

/** Writes the demo's figures as SVG, to be looked at: a folder, then sizes and names if wanted. */
final class Sketch {
  private final StyleSheet styles;
  private final StringBuilder out = new StringBuilder();
  private int clips;

  private Sketch(StyleSheet styles) {
    this.styles = styles;
  }

  public static void main(String[] arguments) throws IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    PatternSource source = DemoFigures.source();
    FigureDrawer drawer = DemoFigures.drawer();
    List<String> sizes = arguments.length > 1 ? List.of(arguments[1].split(",")) : List.of("M");
    for (String size : sizes) {
      EvaluatedPattern pattern = DemoFigures.pattern(source, size);
      for (Map.Entry<String, SourceText> block : DemoFigures.blocks(source).entrySet()) {
        if (arguments.length > 2 && !block.getKey().matches(arguments[2])) {
          continue;
        }
        Findings findings = new Findings();
        long start = System.nanoTime();
        FigureSource.parse(block.getValue(), findings)
            .flatMap(figure -> drawer.draw(figure, pattern, source.masthead().form(), findings))
            .ifPresent(
                figure -> {
                  try {
                    Files.writeString(
                        folder.resolve(block.getKey() + "-" + size + ".svg"),
                        svg(figure.drawing()));
                  } catch (IOException e) {
                    throw new IllegalStateException(e);
                  }
                  System.out.println(
                      block.getKey()
                          + " "
                          + size
                          + " "
                          + (System.nanoTime() - start) / 1_000_000
                          + " ms: "
                          + figure.alternative());
                });
        if (!findings.sorted().isEmpty()) {
          System.out.println(block.getKey() + " " + size + " " + DemoFigures.said(findings));
        }
      }
    }
    Files.writeString(folder.resolve("key.svg"), svg(drawer.key(DemoFigures.pattern(source, "M"))));
  }

  static String svg(Drawing drawing) {
    Sketch sketch = new Sketch(DemoFigures.styles());
    sketch.out.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns='http://www.w3.org/2000/svg' width='%.2fmm' height='%.2fmm' viewBox='0 0"
                + " %.3f %.3f'><rect width='100%%' height='100%%' fill='white'/>",
            drawing.width(),
            drawing.height(),
            drawing.width(),
            drawing.height()));
    sketch.items(drawing.items(), Affine.IDENTITY);
    return sketch.out.append("</svg>").toString();
  }

  private void items(List<Item> items, Affine map) {
    for (Item item : items) {
      if (item instanceof Item.Shape shape) {
        shape(shape, map);
      } else if (item instanceof Item.Lettering lettering) {
        lettering(lettering, map);
      } else if (item instanceof Item.Group group) {
        if (group.clip() != null) {
          String id = "c" + clips++;
          out.append("<clipPath id='" + id + "'><path d='" + data(group.clip(), map) + "'/>");
          out.append("</clipPath><g clip-path='url(#" + id + ")'>");
        }
        items(group.items(), map.after(group.map()));
        if (group.clip() != null) {
          out.append("</g>");
        }
      }
    }
  }

  private void shape(Item.Shape shape, Affine map) {
    Style style = styles.style(shape.role());
    StringBuilder data = new StringBuilder();
    shape.paths().forEach(path -> data.append(data(path, map)));
    out.append("<path d='").append(data).append("' fill='").append(fill(style.fillGrey()));
    out.append("' fill-rule='evenodd'");
    if (style.strokeWidth() > 0) {
      out.append(" stroke='").append(fill(style.strokeGrey())).append("' stroke-width='");
      out.append(style.strokeWidth()).append("'");
      if (!style.dash().isEmpty()) {
        out.append(" stroke-dasharray='");
        style.dash().forEach(dash -> out.append(dash).append(' '));
        out.append("'");
      }
    }
    out.append("/>\n");
  }

  private static String fill(double grey) {
    if (grey < 0) {
      return "none";
    }
    int level = (int) Math.round(grey * 255);
    return String.format("rgb(%d,%d,%d)", level, level, level);
  }

  private static String data(org.lapmark.geometry.Path path, Affine map) {
    StringBuilder data = new StringBuilder("M" + at(map.apply(path.start())));
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        data.append("C").append(at(map.apply(cubic.control1())));
        data.append(at(map.apply(cubic.control2()))).append(at(map.apply(cubic.end())));
      } else if (curve instanceof Arc arc) {
        for (Cubic cubic : arc.cubics()) {
          data.append("C").append(at(map.apply(cubic.control1())));
          data.append(at(map.apply(cubic.control2()))).append(at(map.apply(cubic.end())));
        }
      } else {
        data.append("L").append(at(map.apply(curve.end())));
      }
    }
    return path.isClosed() ? data.append("Z").toString() : data.toString();
  }

  private static String at(Point point) {
    return String.format(Locale.ROOT, "%.3f,%.3f ", point.x(), point.y());
  }

  private void lettering(Item.Lettering lettering, Affine map) {
    Style style = styles.style(lettering.role());
    Point anchor = map.apply(lettering.anchor());
    double size = style.fontSize() * 25.4 / 72;
    double width = new FontMeasure().width(lettering.text(), style);
    double left =
        anchor.x()
            - switch (lettering.alignment()) {
              case START -> 0;
              case MIDDLE -> width / 2;
              case END -> width;
            };
    if (style.halo() > 0) {
      out.append(
          String.format(
              Locale.ROOT,
              "<rect x='%.3f' y='%.3f' width='%.3f' height='%.3f' fill='white'/>",
              left - style.halo(),
              anchor.y() - 0.67 * size - style.halo(),
              width + 2 * style.halo(),
              0.88 * size + 2 * style.halo()));
    }
    out.append(
        String.format(
            Locale.ROOT,
            "<text x='%.3f' y='%.3f' font-family='Source Sans Pro' font-size='%.3f'>%s</text>\n",
            left,
            anchor.y(),
            size,
            lettering.text().replace("&", "&amp;").replace("<", "&lt;")));
  }
}
