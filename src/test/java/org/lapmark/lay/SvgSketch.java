package org.lapmark.lay;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.document.DocumentWriter;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;
import org.lapmark.wording.Wording;

/**
 * Writes layouts as SVG to look at. Its arguments are the folder they go to and a pattern folder;
 * without the second it takes the examples.
 */
final class SvgSketch {
  private final StyleSheet styles;
  private final StringBuilder out = new StringBuilder();
  private int clips;

  private SvgSketch(StyleSheet styles) {
    this.styles = styles;
  }

  public static void main(String[] arguments) throws Exception {
    DocumentWriter writer = Samples.writer();
    Wording wording = writer.wording(Locale.UK);
    PrintForm form = PrintForm.DEFAULT.with(NumberWords.of(wording));
    LayDrawing drawer = new LayDrawing(wording, writer.styles(), writer.lettering(), form);
    LayWords words = new LayWords(wording, form);
    StringBuilder page = new StringBuilder("<meta charset=utf-8><body style='width:175mm'>");
    Map<String, Lay> lays = arguments.length > 1 ? ofFolder(arguments[1]) : Examples.all();
    for (Map.Entry<String, Lay> entry : lays.entrySet()) {
      Lay lay = entry.getValue();
      long start = System.nanoTime();
      Drawing drawing = drawer.draw(lay, 165, 150);
      System.out.printf(
          "%s %.1f x %.1f, %d ms%n%s%n",
          entry.getKey(),
          drawing.width(),
          drawing.height(),
          (System.nanoTime() - start) / 1_000_000,
          words.alternative(lay));
      page.append("<h4>").append(words.title(lay)).append("</h4>");
      page.append("<p>").append(words.purchase(lay));
      page.append(new SvgSketch(writer.styles()).svg(drawing));
    }
    Files.write(
        Path.of(arguments[0]).resolve("lays.html"),
        page.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static Map<String, Lay> ofFolder(String folder) throws Exception {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(Path.of(folder), findings);
    Map<String, Lay> lays = new LinkedHashMap<>();
    for (String size : source.sizes().sizes()) {
      EvaluatedPattern pattern = Grader.grade(source, Variant.ofSize(size), findings);
      for (ClothPlan plan : LayPlanner.plan(pattern, findings)) {
        plan.lays()
            .forEach(lay -> lays.put(size + plan.cloth().id() + lay.width().property(), lay));
      }
    }
    return lays;
  }

  private String svg(Drawing drawing) {
    out.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns='http://www.w3.org/2000/svg' width='%smm' height='%smm' viewBox='0 0 %s %s'"
                + " style='display:block'>",
            drawing.width(),
            drawing.height(),
            drawing.width(),
            drawing.height()));
    drawing.items().forEach(this::item);
    return out.append("</svg>").toString();
  }

  private void item(Item item) {
    if (item instanceof Item.Shape shape) {
      Style style = styles.style(shape.role());
      StringBuilder data = new StringBuilder();
      shape.paths().forEach(path -> data.append(path(path)));
      out.append(
          String.format(
              Locale.ROOT,
              "<path d='%s' fill='%s' stroke='%s' stroke-width='%s' stroke-dasharray='%s'/>",
              data,
              style.fillGrey() < 0 ? "none" : grey(style.fillGrey()),
              style.strokeWidth() == 0 ? "none" : grey(style.strokeGrey()),
              style.strokeWidth(),
              style.dash().isEmpty()
                  ? "none"
                  : style.dash().toString().replaceAll("[\\[\\]]", "")));
    } else if (item instanceof Item.Lettering text) {
      Style style = styles.style(text.role());
      out.append(
          String.format(
              Locale.ROOT,
              "<text transform='translate(%s %s) rotate(%s)' font-family='Source Sans Pro,Arimo,Liberation"
                  + " Sans,sans-serif' font-size='%s' font-weight='%s' textLength='%s'"
                  + " lengthAdjust='spacingAndGlyphs' text-anchor='start' paint-order='stroke'"
                  + " stroke='white' stroke-width='%s'>%s</text>",
              text.anchor().x(),
              text.anchor().y(),
              text.angle(),
              style.fontSize() * 25.4 / 72,
              style.bold() ? "bold" : "normal",
              Samples.writer().lettering().width(text.text(), style),
              2 * style.halo(),
              text.text()));
    } else if (item instanceof Item.Group group) {
      String id = "c" + System.identityHashCode(this) + "-" + clips++;
      if (group.clip() != null) {
        out.append("<clipPath id='" + id + "'><path d='" + path(group.clip()) + "'/></clipPath>");
      }
      Affine map = group.map();
      out.append(group.clip() == null ? "<g>" : "<g clip-path='url(#" + id + ")'>");
      out.append(
          String.format(
              Locale.ROOT,
              "<g transform='matrix(%s %s %s %s %s %s)'>",
              map.a(),
              map.b(),
              map.c(),
              map.d(),
              map.e(),
              map.f()));
      group.items().forEach(this::item);
      out.append("</g></g>");
    }
  }

  private static String path(org.lapmark.geometry.Path path) {
    StringBuilder data = new StringBuilder();
    List<Point> points = path.flattened(0.01);
    for (int i = 0; i < points.size(); i++) {
      data.append(i == 0 ? "M" : "L")
          .append(points.get(i).x())
          .append(' ')
          .append(points.get(i).y());
    }
    return data + (path.isClosed() ? "Z" : "");
  }

  private static String grey(double grey) {
    int level = (int) Math.round(255 * grey);
    return String.format("rgb(%d,%d,%d)", level, level, level);
  }
}
