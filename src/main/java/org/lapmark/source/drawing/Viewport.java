package org.lapmark.source.drawing;

import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.source.drawing.text.NumberText;
import org.lapmark.source.drawing.text.SvgLength;
import org.lapmark.source.drawing.xml.XmlElement;

/**
 * A viewport: how a view box is fitted into it (SVG 2, sections 8.6 and 8.7).
 *
 * @param map from the coordinates inside to those outside; millimetres outside the drawing's root
 * @param extent its size in the coordinates inside
 */
record Viewport(Affine map, ViewportSize extent) {
  private static final double PIXEL = 25.4 / 96;
  private static final double LARGEST = 1e9;
  private static final int LONGEST = 200;

  /** How much two scales may differ where width and height are rounded. */
  private static final double ROUNDED = 1e-3;

  private static final List<String> ALIGNMENTS = List.of("Min", "Mid", "Max");

  /**
   * The root's viewport: how large the drawing's user unit is.
   *
   * @throws FindingException when the drawing doesn't say
   */
  static Viewport of(XmlElement root) {
    double[] box = viewBox(root);
    SvgLength width = length(root, "width");
    SvgLength height = length(root, "height");
    if (box == null) {
      ViewportSize extent =
          new ViewportSize(
              width == null ? Double.NaN : width.pixels(),
              height == null ? Double.NaN : height.pixels());
      return new Viewport(Affine.scaling(PIXEL, PIXEL), extent);
    }
    if (width == null && height == null) {
      throw new FindingException(Finding.of(DrawingCode.SVG_SCALE_UNKNOWN, root.position()));
    }
    double across = width == null ? Double.NaN : width.millimetres();
    double down = height == null ? Double.NaN : height.millimetres();
    across = width == null ? down * box[2] / box[3] : across;
    down = height == null ? across * box[3] / box[2] : down;
    return new Viewport(fitted(box, across, down, root), new ViewportSize(box[2], box[3]));
  }

  /** What is to be told of the size of a drawing. */
  enum Doubt {
    /** It is stated in pixels. */
    PIXELS,
    /** Width and height don't have the proportions of the view box. */
    PROPORTIONS
  }

  /**
   * Why the size at which a drawing comes out may not be the one that was meant.
   *
   * @param root the drawing's root, whose viewport is known
   * @return the reason, or null
   */
  static Doubt doubt(XmlElement root) {
    double[] box = viewBox(root);
    SvgLength width = length(root, "width");
    SvgLength height = length(root, "height");
    if (box == null || width != null && width.isPixels() || height != null && height.isPixels()) {
      return Doubt.PIXELS;
    }
    if (width == null || height == null) {
      return null;
    }
    double ratio = width.millimetres() / box[2] * box[3] / height.millimetres();
    return Math.abs(ratio - 1) > ROUNDED ? Doubt.PROPORTIONS : null;
  }

  /**
   * The viewport of a drawing or symbol inside the drawing.
   *
   * @param element the inner {@code svg} or {@code symbol}
   * @param numbers its x, y, width and height, a copy's own width and height going before
   * @throws FindingException when an attribute is wrong, or a size that is needed isn't known
   */
  static Viewport inside(XmlElement element, SvgNumbers numbers) {
    double[] box = viewBox(element);
    double width = size(numbers, "width");
    double height = size(numbers, "height");
    Affine shift = Affine.translation(numbers.get("x"), numbers.get("y"));
    if (box == null) {
      return new Viewport(shift, new ViewportSize(width, height));
    }
    if (!(width > 0 && height > 0)) {
      throw new FindingException(Finding.of(DrawingCode.SVG_SCALE_UNKNOWN, element.position()));
    }
    return new Viewport(
        shift.after(fitted(box, width, height, element)), new ViewportSize(box[2], box[3]));
  }

  private static double size(SvgNumbers numbers, String attribute) {
    AttributeText text = numbers.attributes().get(attribute);
    return text == null || text.source().text().strip().equals("auto")
        ? numbers.extent().whole(attribute)
        : numbers.positive(attribute);
  }

  private static Affine fitted(double[] box, double width, double height, XmlElement element) {
    double scaleX = width / box[2];
    double scaleY = height / box[3];
    double freeX = 0;
    double freeY = 0;
    SourceText aspect = element.value("preserveAspectRatio");
    if (aspect != null && aspect.text().length() > LONGEST) {
      throw SvgNumbers.fault(aspect.part(0, LONGEST), "preserveAspectRatio");
    }
    String[] words =
        aspect == null ? new String[] {"xMidYMid"} : aspect.text().strip().split("\\s+");
    if (!words[0].equals("none")) {
      boolean slice = words.length == 2 && words[1].equals("slice");
      int alongX = words[0].length() == 8 ? ALIGNMENTS.indexOf(words[0].substring(1, 4)) : -1;
      int alongY = words[0].length() == 8 ? ALIGNMENTS.indexOf(words[0].substring(5)) : -1;
      boolean wrong =
          alongX < 0
              || alongY < 0
              || words[0].charAt(0) != 'x'
              || words[0].charAt(4) != 'Y'
              || words.length > 2
              || words.length == 2 && !slice && !words[1].equals("meet");
      if (wrong) {
        throw SvgNumbers.fault(aspect, "preserveAspectRatio");
      }
      double scale = slice ? Math.max(scaleX, scaleY) : Math.min(scaleX, scaleY);
      freeX = (scaleX - scale) * box[2] * alongX / 2;
      freeY = (scaleY - scale) * box[3] * alongY / 2;
      scaleX = scale;
      scaleY = scale;
    }
    return Affine.translation(freeX, freeY)
        .after(Affine.scaling(scaleX, scaleY))
        .after(Affine.translation(-box[0], -box[1]));
  }

  private static SvgLength length(XmlElement root, String attribute) {
    SourceText text = root.value(attribute);
    if (text == null || text.text().strip().endsWith("%") || text.text().strip().equals("auto")) {
      return null;
    }
    SvgLength length = SvgLength.parse(text.text());
    if (length == null || length.number() <= 0) {
      throw SvgNumbers.fault(text, attribute);
    }
    return length;
  }

  private static double[] viewBox(XmlElement element) {
    SourceText text = element.value("viewBox");
    if (text == null) {
      return null;
    }
    if (text.text().length() > LONGEST) {
      throw SvgNumbers.fault(text.part(0, LONGEST), "viewBox");
    }
    String[] words = text.text().strip().split("\\s*,\\s*|\\s+");
    double[] box = new double[4];
    boolean wrong = words.length != 4;
    for (int i = 0; i < 4 && !wrong; i++) {
      wrong = NumberText.end(words[i], 0) != words[i].length();
      box[i] = wrong ? 0 : Double.parseDouble(words[i]);
      wrong |= !(Math.abs(box[i]) <= LARGEST);
    }
    if (wrong || box[2] <= 0 || box[3] <= 0) {
      throw SvgNumbers.fault(text, "viewBox");
    }
    return box;
  }
}
