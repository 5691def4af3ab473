package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;

/** Works out how large a fixed drawing's user unit is, from the root's size and view box. */
final class Viewport {
  private static final double PIXEL = 25.4 / 96;
  private static final List<String> ALIGNMENTS = List.of("Min", "Mid", "Max");

  private Viewport() {}

  /**
   * The map from user units to millimetres (SVG 1.1, sections 7.7 and 7.8).
   *
   * @throws FindingException when the drawing doesn't say
   */
  static Affine of(XmlElement root) {
    double[] box = viewBox(root);
    SvgLength width = length(root, "width");
    SvgLength height = length(root, "height");
    if (box == null) {
      return Affine.scaling(PIXEL, PIXEL);
    }
    if (width == null && height == null) {
      throw new FindingException(Finding.of(SourceCode.SVG_SCALE_UNKNOWN, root.position()));
    }
    double scaleX = width == null ? 0 : width.millimetres() / box[2];
    double scaleY = height == null ? 0 : height.millimetres() / box[3];
    scaleX = width == null ? scaleY : scaleX;
    scaleY = height == null ? scaleX : scaleY;
    double freeX = 0;
    double freeY = 0;
    SourceText aspect = root.value("preserveAspectRatio");
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
        throw fault(aspect, "preserveAspectRatio");
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
      throw fault(text, attribute);
    }
    return length;
  }

  private static double[] viewBox(XmlElement root) {
    SourceText text = root.value("viewBox");
    if (text == null) {
      return null;
    }
    String[] words = text.text().strip().split("\\s*,\\s*|\\s+");
    double[] box = new double[4];
    boolean wrong = words.length != 4;
    for (int i = 0; i < 4 && !wrong; i++) {
      wrong = NumberText.end(words[i], 0) != words[i].length();
      box[i] = wrong ? 0 : Double.parseDouble(words[i]);
      wrong |= !(Math.abs(box[i]) <= 1e9);
    }
    if (wrong || box[2] <= 0 || box[3] <= 0) {
      throw fault(text, "viewBox");
    }
    return box;
  }

  private static FindingException fault(SourceText text, String attribute) {
    return new FindingException(
        Finding.of(
            SourceCode.ATTRIBUTE_WRONG,
            text.position(),
            "attribute",
            attribute,
            "text",
            text.text().strip()));
  }
}
