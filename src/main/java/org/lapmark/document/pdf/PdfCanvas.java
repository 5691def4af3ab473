package org.lapmark.document.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Ink;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Writes drawings to a PDF content stream.
 *
 * <p>Points are mapped in double precision and written in points with four decimals, which is
 * within 0.0001 mm on any page; arcs become cubics within 0.0001 mm. The map of a group moves
 * points: line widths, dashes and the size of lettering stay as the style states them for paper,
 * and lettering turns with the map but is never mirrored.
 */
final class PdfCanvas {
  /** Points in a millimetre. */
  static final double POINTS = 72 / 25.4;

  /** The height of capitals and the depth of descenders that a halo covers, in ems. */
  private static final double HALO_ABOVE = 0.67;

  private static final double HALO_BELOW = 0.21;

  private final PDPageContentStream out;
  private final StyleSheet styles;
  private final PdfFonts fonts;
  private final Layers layers;
  private final PdfImages images;
  private Style line;
  private double fill;

  PdfCanvas(
      PDPageContentStream out, StyleSheet styles, PdfFonts fonts, Layers layers, PdfImages images) {
    this.images = images;
    this.out = out;
    this.styles = styles;
    this.fonts = fonts;
    this.layers = layers;
    forgetState();
  }

  /**
   * Draws with the drawing's top left corner at a place.
   *
   * @param drawing the drawing
   * @param left millimetres from the left edge of the stream's coordinates
   * @param top millimetres from their bottom edge up to the drawing's top edge
   */
  void draw(Drawing drawing, double left, double top) throws IOException {
    items(drawing.items(), new Affine(POINTS, 0, 0, -POINTS, left * POINTS, top * POINTS));
  }

  private void items(List<Item> items, Affine map) throws IOException {
    Item.Reader<IOException> painter = new Painter(map);
    for (Item item : items) {
      item.read(painter);
    }
  }

  /** Paints items whose coordinates a map takes to the stream's. */
  private final class Painter implements Item.Reader<IOException> {
    private final Affine map;

    Painter(Affine map) {
      this.map = map;
    }

    @Override
    public void shape(Item.Shape shape) throws IOException {
      PdfCanvas.this.shape(shape, map);
    }

    @Override
    public void lettering(Item.Lettering line) throws IOException {
      PdfCanvas.this.lettering(line, map);
    }

    @Override
    public void group(Item.Group group) throws IOException {
      PdfCanvas.this.group(group, map);
    }

    @Override
    public void art(Item.Art art) throws IOException {
      out.saveGraphicsState();
      if (art instanceof Item.Inked inked) {
        inked(inked, map);
      } else if (art instanceof Item.Words words) {
        PdfCanvas.this.lettering(words.line(), words.style(), words.colour(), map);
      } else if (art instanceof Item.Photo photo) {
        images.draw(photo, map, out);
      }
      out.restoreGraphicsState();
      forgetState();
    }
  }

  private void shape(Item.Shape shape, Affine map) throws IOException {
    Style style = styles.style(shape.role());
    boolean filled = style.fillGrey() >= 0;
    boolean stroked = style.strokeWidth() > 0;
    if (!filled && !stroked) {
      return;
    }
    if (filled) {
      fillGrey(style.fillGrey());
    }
    if (stroked) {
      stroke(style);
    }
    for (Path path : shape.paths()) {
      trace(path, map);
    }
    if (filled && stroked) {
      out.fillAndStrokeEvenOdd();
    } else if (filled) {
      out.fillEvenOdd();
    } else {
      out.stroke();
    }
  }

  private void trace(Path path, Affine map) throws IOException {
    Point start = map.apply(path.start());
    out.moveTo((float) start.x(), (float) start.y());
    for (Curve curve : path.curves()) {
      if (curve instanceof Line line) {
        Point end = map.apply(line.end());
        out.lineTo((float) end.x(), (float) end.y());
      } else if (curve instanceof Cubic cubic) {
        cubic(cubic, map);
      } else if (curve instanceof Arc arc) {
        for (Cubic cubic : arc.cubics()) {
          cubic(cubic, map);
        }
      }
    }
    if (path.isClosed()) {
      out.closePath();
    }
  }

  private void cubic(Cubic cubic, Affine map) throws IOException {
    Point first = map.apply(cubic.control1());
    Point second = map.apply(cubic.control2());
    Point end = map.apply(cubic.end());
    out.curveTo(
        (float) first.x(),
        (float) first.y(),
        (float) second.x(),
        (float) second.y(),
        (float) end.x(),
        (float) end.y());
  }

  private void inked(Item.Inked inked, Affine map) throws IOException {
    Ink ink = inked.ink();
    if (ink.fills()) {
      colour(ink.fill(), false);
    }
    if (ink.strokes()) {
      colour(ink.stroke(), true);
      out.setLineWidth((float) (ink.width() * POINTS));
      out.setLineCapStyle(ink.cap().ordinal());
      out.setLineJoinStyle(ink.join().ordinal());
      float[] dash = new float[ink.dash().size()];
      for (int i = 0; i < dash.length; i++) {
        dash[i] = (float) (ink.dash().get(i) * POINTS);
      }
      out.setLineDashPattern(dash, 0);
    }
    for (Path path : inked.paths()) {
      trace(path, map);
    }
    if (ink.fills() && ink.strokes()) {
      if (ink.evenOdd()) {
        out.fillAndStrokeEvenOdd();
      } else {
        out.fillAndStroke();
      }
    } else if (ink.strokes()) {
      out.stroke();
    } else if (ink.evenOdd()) {
      out.fillEvenOdd();
    } else {
      out.fill();
    }
  }

  private void colour(int rgb, boolean stroking) throws IOException {
    float red = (rgb >> 16 & 0xff) / 255f;
    float green = (rgb >> 8 & 0xff) / 255f;
    float blue = (rgb & 0xff) / 255f;
    if (stroking) {
      out.setStrokingColor(red, green, blue);
    } else {
      out.setNonStrokingColor(red, green, blue);
    }
  }

  private void lettering(Item.Lettering lettering, Affine map) throws IOException {
    Style style = styles.style(lettering.role());
    lettering(lettering, style, Ink.NONE, map);
  }

  /** In a colour, or in the grey of the style where there is none. */
  private void lettering(Item.Lettering lettering, Style style, int colour, Affine map)
      throws IOException {
    String text = fonts.glyphs().printable(lettering.text());
    if (text.isBlank() || style.fontSize() <= 0) {
      return;
    }
    PDFont font = fonts.font(Typeface.of(style.bold()));
    double width = font.getStringWidth(text) / 1000 * style.fontSize();
    double shift =
        switch (lettering.alignment()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    Point along = baseline(lettering, map);
    Point anchor = map.apply(lettering.anchor());
    Point start = anchor.plus(along.times(shift));
    if (style.halo() > 0) {
      halo(style, start, along, width);
    }
    if (colour == Ink.NONE) {
      fillGrey(style.fillGrey() >= 0 ? style.fillGrey() : style.strokeGrey());
    } else {
      colour(colour, false);
    }
    out.beginText();
    out.setFont(font, (float) style.fontSize());
    out.setTextMatrix(
        new Matrix(
            (float) along.x(),
            (float) along.y(),
            (float) -along.y(),
            (float) along.x(),
            (float) start.x(),
            (float) start.y()));
    out.showText(text);
    out.endText();
  }

  /** The direction of the baseline in the stream's coordinates, of length 1. */
  private static Point baseline(Item.Lettering lettering, Affine map) {
    Point along = Affine.rotation(lettering.angle()).applyVector(new Point(1, 0));
    return map.applyVector(along).unit();
  }

  private void halo(Style style, Point start, Point along, double width) throws IOException {
    double margin = style.halo() * POINTS;
    double above = HALO_ABOVE * style.fontSize() + margin;
    double below = HALO_BELOW * style.fontSize() + margin;
    Point up = new Point(-along.y(), along.x());
    Point left = start.minus(along.times(margin));
    Point right = start.plus(along.times(width + margin));
    fillGrey(1);
    corner(left.minus(up.times(below)), true);
    corner(right.minus(up.times(below)), false);
    corner(right.plus(up.times(above)), false);
    corner(left.plus(up.times(above)), false);
    out.closePath();
    out.fill();
  }

  private void corner(Point point, boolean first) throws IOException {
    if (first) {
      out.moveTo((float) point.x(), (float) point.y());
    } else {
      out.lineTo((float) point.x(), (float) point.y());
    }
  }

  private void group(Item.Group group, Affine map) throws IOException {
    if (group.layer() != null) {
      out.beginMarkedContent(COSName.OC, layers.of(group.layer(), group.otherLayers()));
    }
    if (group.clip() != null) {
      out.saveGraphicsState();
      trace(group.clip(), map);
      out.clipEvenOdd();
    }
    items(group.items(), map.after(group.map()));
    if (group.clip() != null) {
      out.restoreGraphicsState();
      forgetState();
    }
    if (group.layer() != null) {
      out.endMarkedContent();
    }
  }

  private void stroke(Style style) throws IOException {
    if (line != null
        && line.strokeWidth() == style.strokeWidth()
        && line.strokeGrey() == style.strokeGrey()
        && line.dash().equals(style.dash())) {
      return;
    }
    out.setLineWidth((float) (style.strokeWidth() * POINTS));
    out.setStrokingColor((float) style.strokeGrey());
    float[] dash = new float[style.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = (float) (style.dash().get(i) * POINTS);
    }
    out.setLineDashPattern(dash, 0);
    line = style;
  }

  private void fillGrey(double grey) throws IOException {
    if (grey != fill) {
      out.setNonStrokingColor((float) grey);
      fill = grey;
    }
  }

  private void forgetState() {
    line = null;
    fill = -1;
  }
}
