package org.lapmark.document.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Point;
import org.lapmark.text.Markup;

/**
 * Writes a drawing as SVG whose user unit is a millimetre and which has the drawing's size on
 * paper. Curves stay what they are: arcs are arcs and cubics cubics; all numbers are rounded to
 * 0.001 mm. Coordinates are those of the drawing, groups' maps applied, so that line widths and
 * lettering keep the sizes that their roles state.
 *
 * <p>Lettering is text in whatever font the reader's device has; each line is set to the width that
 * it has in the documents' own font, so that a label never grows over its neighbour.
 */
public final class SvgWriter {

  /** Fine enough for what is looked at. */
  private static final SvgNumbering NUMBERS = new SvgNumbering(3);

  private final StyleSheet styles;
  private final LetteringMeasure lettering;

  /**
   * A writer.
   *
   * @param styles the look of the drawings' roles
   * @param lettering the font in which lettering was placed
   */
  public SvgWriter(StyleSheet styles, LetteringMeasure lettering) {
    this.styles = Objects.requireNonNull(styles);
    this.lettering = Objects.requireNonNull(lettering);
  }

  /**
   * Writes a drawing.
   *
   * @param drawing the drawing
   * @param id what the ids inside begin with, unique in the document and fit for an id
   * @param title what the drawing is called; empty for one that shows nothing beyond the text
   *     around it
   * @param description what it shows, in words; may be empty
   * @return an {@code svg} element
   */
  public String write(Drawing drawing, String id, String title, String description) {
    return new Writing(id).write(drawing, title, description);
  }

  /** One drawing being written. */
  private final class Writing {
    private final Markup out = new Markup();
    private final String id;
    private int clips;

    Writing(String id) {
      this.id = id;
    }

    public String write(Drawing drawing, String title, String description) {
      String width = NUMBERS.number(drawing.width());
      String height = NUMBERS.number(drawing.height());
      boolean named = !title.isEmpty();
      boolean described = named && !description.isEmpty();
      String labels = id + "-title" + (described ? " " + id + "-text" : "");
      out.open(
          "svg",
          "xmlns",
          "http://www.w3.org/2000/svg",
          "width",
          width + "mm",
          "height",
          height + "mm",
          "viewBox",
          "0 0 " + width + " " + height,
          "role",
          named ? "img" : null,
          "aria-labelledby",
          named ? labels : null,
          "aria-hidden",
          named ? null : "true");
      if (named) {
        out.open("title", "id", id + "-title").text(title).close();
      }
      if (described) {
        out.open("desc", "id", id + "-text").text(description).close();
      }
      drawing.items().forEach(item -> item.read(in(Affine.IDENTITY)));
      return out.close().toString();
    }

    /** Writes items in coordinates that a map takes to the drawing's. */
    private Item.Reader<RuntimeException> in(Affine map) {
      return new Item.Reader<>() {
        @Override
        public void shape(Item.Shape shape) {
          Writing.this.shape(shape, map);
        }

        @Override
        public void lettering(Item.Lettering line) {
          Writing.this.lettering(line, map);
        }

        @Override
        public void group(Item.Group group) {
          Writing.this.group(group, map);
        }

        @Override
        public void art(Item.Art art) {
          SvgArt.write(art, map, NUMBERS, lettering, out);
        }
      };
    }

    private void shape(Item.Shape shape, Affine map) {
      Style style = styles.style(shape.role());
      boolean filled = style.fillGrey() >= 0;
      boolean stroked = style.strokeWidth() > 0;
      if (shape.paths().isEmpty() || !filled && !stroked) {
        return;
      }
      StringBuilder data = new StringBuilder();
      shape.paths().forEach(path -> NUMBERS.trace(path, map, data));
      out.empty(
          "path",
          "d",
          data.toString(),
          "fill",
          filled ? grey(style.fillGrey()) : "none",
          "fill-rule",
          filled && shape.paths().size() > 1 ? "evenodd" : null,
          "stroke",
          stroked ? grey(style.strokeGrey()) : null,
          "stroke-width",
          stroked ? NUMBERS.number(style.strokeWidth()) : null,
          "stroke-dasharray",
          stroked && !style.dash().isEmpty() ? dash(style) : null);
    }

    private void lettering(Item.Lettering line, Affine map) {
      Style style = styles.style(line.role());
      if (line.text().isBlank() || style.fontSize() <= 0) {
        return;
      }
      Point along = Affine.rotation(line.angle()).applyVector(new Point(1, 0));
      Point turned = map.applyVector(along);
      double angle = StrictMath.toDegrees(StrictMath.atan2(turned.y(), turned.x()));
      Point anchor = map.apply(line.anchor());
      List<String> attributes =
          new ArrayList<>(SvgLettering.attributes(line, anchor, angle, style, lettering, NUMBERS));
      attributes.add("fill");
      attributes.add(grey(style.fillGrey() >= 0 ? style.fillGrey() : style.strokeGrey()));
      if (style.halo() > 0) {
        attributes.addAll(
            List.of(
                "stroke",
                "#fff",
                "stroke-width",
                NUMBERS.number(2 * style.halo()),
                "stroke-linejoin",
                "round",
                "paint-order",
                "stroke"));
      }
      out.open("text", attributes.toArray(String[]::new));
      out.text(line.text()).close();
    }

    private void group(Item.Group group, Affine map) {
      String clip = null;
      if (group.clip() != null) {
        clip = id + "-clip-" + ++clips;
        StringBuilder data = new StringBuilder();
        NUMBERS.trace(group.clip(), map, data);
        out.open("clipPath", "id", clip);
        out.empty("path", "d", data.toString(), "clip-rule", "evenodd").close();
      }
      boolean apart = clip != null || group.layer() != null;
      if (apart) {
        out.open(
            "g",
            "clip-path",
            clip == null ? null : "url(#" + clip + ")",
            "data-layer",
            group.layer());
      }
      Affine inner = map.after(group.map());
      group.items().forEach(item -> item.read(in(inner)));
      if (apart) {
        out.close();
      }
    }
  }

  private static String dash(Style style) {
    return String.join(" ", style.dash().stream().map(NUMBERS::number).toList());
  }

  private static String grey(double grey) {
    return String.format(Locale.ROOT, "#%1$02x%1$02x%1$02x", Math.round(grey * 255));
  }
}
