package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.source.drawing.text.NumberText;

/** Reads the transform attribute of SVG 1.1, section 7.6. */
final class TransformParser {
  /** Every shape inside has to go through it again. */
  private static final int LONGEST = 1000;

  private final SourceText source;
  private final String text;
  private int at;

  private TransformParser(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  /**
   * The map that a transform attribute states.
   *
   * @throws FindingException at the first character that doesn't fit, or when the text is longer
   *     than 1,000 characters
   */
  static Affine parse(SourceText source) {
    TransformParser parser = new TransformParser(source);
    if (parser.text.length() > LONGEST) {
      throw parser.fault(0, LONGEST);
    }
    Affine all = Affine.IDENTITY;
    parser.skip();
    while (parser.at < parser.text.length()) {
      all = all.after(parser.one());
      parser.skip();
    }
    return all;
  }

  private Affine one() {
    int start = at;
    while (at < text.length() && Character.isLetter(text.charAt(at))) {
      at++;
    }
    String name = text.substring(start, at);
    skipSpace();
    if (at >= text.length() || text.charAt(at) != '(') {
      throw fault(start, Math.max(at, start + 1));
    }
    at++;
    List<Double> n = new ArrayList<>();
    skipSpace();
    while (at < text.length() && text.charAt(at) != ')') {
      int end = NumberText.end(text, at);
      if (end < 0 || n.size() == 6) {
        throw fault(at, at + 1);
      }
      double number = Double.parseDouble(text.substring(at, end));
      if (Math.abs(number) > 1e9) {
        throw fault(at, end);
      }
      n.add(number);
      at = end;
      skip();
    }
    if (at >= text.length()) {
      throw fault(start, text.length());
    }
    at++;
    Affine map = map(name, n);
    if (map == null) {
      throw fault(start, at);
    }
    return map;
  }

  private static Affine map(String name, List<Double> n) {
    int count = n.size();
    switch (name) {
      case "matrix":
        return count == 6
            ? new Affine(n.get(0), n.get(1), n.get(2), n.get(3), n.get(4), n.get(5))
            : null;
      case "translate":
        return count == 1 || count == 2
            ? Affine.translation(n.get(0), count == 2 ? n.get(1) : 0)
            : null;
      case "scale":
        return count == 1 || count == 2 ? Affine.scaling(n.get(0), n.get(count - 1)) : null;
      case "rotate":
        if (count == 1) {
          return Affine.rotation(n.get(0));
        }
        return count == 3
            ? Affine.translation(n.get(1), n.get(2))
                .after(Affine.rotation(n.get(0)))
                .after(Affine.translation(-n.get(1), -n.get(2)))
            : null;
      case "skewX":
        return count == 1 ? new Affine(1, 0, tangent(n.get(0)), 1, 0, 0) : null;
      case "skewY":
        return count == 1 ? new Affine(1, tangent(n.get(0)), 0, 1, 0, 0) : null;
      default:
        return null;
    }
  }

  private static double tangent(double degrees) {
    return StrictMath.tan(StrictMath.toRadians(degrees));
  }

  private void skipSpace() {
    while (at < text.length() && text.charAt(at) <= ' ') {
      at++;
    }
  }

  private void skip() {
    skipSpace();
    if (at < text.length() && text.charAt(at) == ',') {
      at++;
      skipSpace();
    }
  }

  private FindingException fault(int from, int to) {
    int end = Math.min(to, text.length());
    return new FindingException(
        Finding.of(
            DrawingCode.TRANSFORM_SYNTAX,
            source.position(Math.min(from, text.length()), end),
            "text",
            text.substring(Math.min(from, end), Math.min(end, from + 40))));
  }
}
