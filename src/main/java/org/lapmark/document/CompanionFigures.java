package org.lapmark.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureDrawer;
import org.lapmark.figure.FigureSource;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.measure.NumberWords;
import org.lapmark.measure.PrintForm;
import org.lapmark.text.Block;
import org.lapmark.text.Markup;

/**
 * Draws the figures of a companion in every size. Lengths in figures are printed in the author's
 * units, whatever a reader chooses for the text. A figure that comes out the same in every size
 * stands there once.
 */
final class CompanionFigures {
  private final CompanionSizes sizes;
  private final FigureDrawer drawer;
  private final SvgWriter svg;
  private final PrintForm form;
  private int count;

  CompanionFigures(CompanionSizes sizes, StyleSheet styles, LetteringMeasure lettering) {
    this.sizes = sizes;
    this.drawer = new FigureDrawer(sizes.wording(), styles, lettering);
    this.svg = new SvgWriter(styles, lettering);
    this.form = sizes.source().masthead().form().with(NumberWords.of(sizes.wording()));
  }

  /** How many figures have been drawn. */
  int count() {
    return count;
  }

  /** The key of sides and materials. */
  String key() {
    GradedPattern pattern = sizes.patterns().get(sizes.typical());
    return svg.write(
        drawer.key(pattern),
        "figure-key",
        sizes.wording().text("companion.key"),
        sizes.wording().text("companion.key-text"));
  }

  /** Draws a figure and writes it; nothing where it can't be drawn, which is then reported. */
  void write(Block.Figure block, Markup out) {
    Optional<FigureSource> source = FigureSource.parse(block.content(), sizes.findings());
    if (source.isEmpty()) {
      return;
    }
    Map<Integer, Figure> figures = new LinkedHashMap<>();
    for (int i = 0; i < sizes.patterns().size(); i++) {
      Findings findings = sizes.findings();
      Optional<Figure> figure = drawer.draw(source.get(), sizes.patterns().get(i), form, findings);
      if (figure.isPresent()) {
        figures.put(i, figure.get());
      }
    }
    if (figures.isEmpty()) {
      return;
    }
    String id = "figure-" + ++count;
    out.open("figure");
    if (isAlike(figures)) {
      sheet(figures.values().iterator().next(), id, null, out);
    } else {
      figures.forEach((size, figure) -> sheet(figure, id + "-" + size, size, out));
    }
    String caption = sizes.html(source.get().caption());
    if (!caption.isEmpty() || !isAlike(figures)) {
      out.open("figcaption").raw(caption);
      if (!isAlike(figures)) {
        String typical = sizes.names().get(sizes.typical());
        out.open("span", "class", "drawn")
            .text(sizes.wording().text("companion.drawn", Map.of("size", typical)))
            .close();
      }
      out.close();
    }
    out.close();
  }

  private void sheet(Figure figure, String id, Integer size, Markup out) {
    Drawing drawing = figure.drawing();
    boolean typical = size != null && size == sizes.typical();
    out.open(
        "div",
        "class",
        (drawing.width() > FigureDrawer.HALF ? "sheet wide" : "sheet")
            + (typical ? " typical" : ""),
        "data-for",
        size == null ? null : String.valueOf(size));
    String title =
        figure.caption().isEmpty()
            ? sizes.wording().text("companion.figure", Map.of("number", count))
            : figure.caption();
    out.raw(svg.write(drawing, id, title, figure.alternative()));
    out.close();
  }

  private boolean isAlike(Map<Integer, Figure> figures) {
    List<Figure> all = new ArrayList<>(figures.values());
    return figures.size() == sizes.patterns().size() && all.stream().distinct().count() == 1;
  }
}
