package org.lapmark.document.companion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.art.ArtDrawer;
import org.lapmark.document.film.FilmLink;
import org.lapmark.document.svg.SvgWriter;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureDrawer;
import org.lapmark.figure.FigureSource;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.packing.Effort;
import org.lapmark.source.outside.Outside;
import org.lapmark.text.Block;
import org.lapmark.text.Markup;

/**
 * Draws the figures of a companion in every size. Lengths in figures are printed in the author's
 * units, whatever a reader chooses for the text. A figure that comes out the same in every size
 * stands there once.
 */
final class CompanionFigures {
  private final CompanionSizes sizes;
  private final boolean drawn;
  private final FigureDrawer drawer;
  private final SvgWriter svg;
  private final PrintForm form;
  private final ArtDrawer art;
  private int count;
  private int pictures;

  /**
   * Figures of one page.
   *
   * @param drawn whether they are drawn; if not, only their captions are read
   */
  CompanionFigures(CompanionSizes sizes, boolean drawn, DocumentWriter documents) {
    this.sizes = sizes;
    this.drawn = drawn;
    StyleSheet styles = documents.styles();
    LetteringMeasure lettering = documents.lettering();
    this.drawer =
        new FigureDrawer(
            sizes.wording(),
            styles,
            lettering,
            FigureDrawer.HIGHEST,
            documents.memory(),
            Effort.FULL);
    this.svg = new SvgWriter(styles, lettering);
    this.art =
        new ArtDrawer(
            FigureDrawer.FULL,
            FigureDrawer.HIGHEST,
            ArtDrawer.FOR_SCREEN,
            lettering,
            documents.memory());
    this.form = sizes.source().masthead().form().with(NumberWords.of(sizes.wording()));
  }

  /** How many figures have been drawn. */
  int count() {
    return count;
  }

  /** The key of sides and materials. */
  String key() {
    EvaluatedPattern pattern = sizes.patterns().get(sizes.typical());
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
    String caption = sizes.html(source.get().caption());
    if (!drawn) {
      return;
    }
    Map<Integer, Figure> figures = draw(source.get(), sizes.findings());
    if (figures.isEmpty()) {
      return;
    }
    // On a phone a wide figure is read in the width of a narrow one, with letters of full size.
    Map<Integer, Figure> narrow =
        source.get().half() ? Map.of() : draw(narrow(source.get()), new Findings());
    boolean swapped = narrow.keySet().equals(figures.keySet());
    count++;
    out.open("figure");
    sheets(
        figures,
        source.get().half() ? "sheet" : swapped ? "sheet wide swapped" : "sheet wide",
        out);
    if (swapped) {
      sheets(narrow, "sheet narrow", out);
    }
    boolean alike = isAlike(figures) && (!swapped || isAlike(narrow));
    if (!caption.isEmpty() || !alike) {
      out.open("figcaption").raw(caption);
      if (!alike) {
        String typical = sizes.names().get(sizes.typical());
        out.open("span", "class", "drawn")
            .text(sizes.wording().text("companion.drawn", Map.of("size", typical)))
            .close();
      }
      out.close();
    }
    out.close();
  }

  /** Draws a picture from outside and writes it; nothing where it can't be, which is reported. */
  void art(Block.Art block, String alternative, String caption, Markup out) {
    if (!drawn) {
      return;
    }
    Map<Integer, Figure> figures = new LinkedHashMap<>();
    for (int i = 0; i < sizes.patterns().size(); i++) {
      Optional<Drawing> drawing =
          art.draw(block.path(), sizes.patterns().get(i), form, sizes.findings());
      if (drawing.isPresent()) {
        figures.put(i, new Figure(drawing.get(), "", alternative));
      }
    }
    if (!figures.isEmpty()) {
      pictures++;
      out.open("figure");
      sheets(shared(figures), "art-" + pictures, "sheet picture", out);
      if (!caption.isEmpty()) {
        out.open("figcaption").raw(caption).close();
      }
      out.close();
    }
  }

  /** The picture that the pattern brings for its cover; nothing where it brings none. */
  Optional<String> cover() {
    Outside.CoverSource stated = sizes.source().outside().cover();
    if (!drawn || stated == null) {
      return Optional.empty();
    }
    Map<Integer, Figure> figures = new LinkedHashMap<>();
    for (int i = 0; i < sizes.patterns().size(); i++) {
      EvaluatedPattern pattern = sizes.patterns().get(i);
      Optional<Drawing> drawing = art.draw(stated.path(), pattern, form, sizes.findings());
      Optional<PrintedText> words =
          PrintedText.of(stated.alternative(), pattern, form, sizes.findings());
      if (drawing.isPresent() && words.isPresent()) {
        figures.put(i, new Figure(drawing.get(), "", words.get().text()));
      }
    }
    if (figures.isEmpty()) {
      return Optional.empty();
    }
    Markup out = new Markup();
    out.open("figure", "class", "cover");
    sheets(shared(figures), "cover", "sheet picture", out);
    return Optional.of(out.close().toString());
  }

  /** A picture that only its words tell apart stands there once, with the words of each size. */
  private Map<Integer, Figure> shared(Map<Integer, Figure> figures) {
    if (figures.values().stream().map(Figure::drawing).distinct().count() > 1
        || figures.values().stream().distinct().count() == 1) {
      return figures;
    }
    List<String> words = new ArrayList<>();
    figures.forEach(
        (size, figure) ->
            words.add(
                sizes
                    .wording()
                    .text(
                        "companion.picture.words",
                        Map.of("size", sizes.names().get(size), "words", figure.caption()))));
    Figure any = figures.values().iterator().next();
    Figure all = new Figure(any.drawing(), any.alternative(), String.join(" ", words));
    Map<Integer, Figure> shared = new LinkedHashMap<>();
    figures.keySet().forEach(size -> shared.put(size, all));
    return shared;
  }

  /** The link to the film of a step, with its code for whoever reads on a larger screen. */
  String film(String step) {
    return FilmLink.of(sizes.source(), step, sizes.wording())
        .map(film -> film(film, "film-" + step))
        .orElse("");
  }

  private String film(FilmLink film, String id) {
    Markup out = new Markup();
    out.open("div", "class", "film").open("div", "class", "sheet");
    out.raw(svg.write(film.code(), id, film.alternative(), "")).close();
    out.open("p").open("a", "href", film.address()).text(film.words()).close().close();
    return out.close().toString();
  }

  private static FigureSource narrow(FigureSource figure) {
    return new FigureSource(
        figure.position(), true, figure.caption(), figure.alternative(), figure.frames());
  }

  /** The figure by size, where it can be drawn. */
  private Map<Integer, Figure> draw(FigureSource source, Findings findings) {
    Map<Integer, Figure> figures = new LinkedHashMap<>();
    for (int i = 0; i < sizes.patterns().size(); i++) {
      Optional<Figure> figure = drawer.draw(source, sizes.patterns().get(i), form, findings);
      if (figure.isPresent()) {
        figures.put(i, figure.get());
      }
    }
    return figures;
  }

  private void sheets(Map<Integer, Figure> figures, String look, Markup out) {
    sheets(figures, "figure-" + count + (look.contains("narrow") ? "-narrow" : ""), look, out);
  }

  private void sheets(Map<Integer, Figure> figures, String id, String look, Markup out) {
    if (isAlike(figures)) {
      sheet(figures.values().iterator().next(), id, look, null, out);
    } else {
      figures.forEach((size, figure) -> sheet(figure, id + "-" + size, look, size, out));
    }
  }

  private void sheet(Figure figure, String id, String look, Integer size, Markup out) {
    boolean typical = size != null && size == sizes.typical();
    out.open(
        "div",
        "class",
        typical ? look + " typical" : look,
        "data-for",
        size == null ? null : String.valueOf(size));
    String title =
        figure.caption().isEmpty()
            ? sizes.wording().text("companion.figure", Map.of("number", count))
            : figure.caption();
    out.raw(svg.write(figure.drawing(), id, title, figure.alternative()));
    out.close();
  }

  private boolean isAlike(Map<Integer, Figure> figures) {
    List<Figure> all = new ArrayList<>(figures.values());
    return figures.size() == sizes.patterns().size() && all.stream().distinct().count() == 1;
  }
}
