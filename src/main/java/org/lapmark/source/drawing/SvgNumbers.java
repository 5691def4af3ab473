package org.lapmark.source.drawing;

import java.util.Map;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.drawing.text.NumberText;
import org.lapmark.source.drawing.text.SvgLength;

/**
 * An element's numbers in user units.
 *
 * @param attributes by name
 * @param evaluator gives placeholders' numbers
 * @param computed whether a user unit is a millimetre, whatever the view box
 * @param extent of what percentages are shares; they are refused in a computed drawing
 */
record SvgNumbers(
    Map<String, AttributeText> attributes,
    Function<Formula, Double> evaluator,
    boolean computed,
    ViewportSize extent) {
  private static final int LONGEST = 1000;
  private static final double LARGEST = 1e9;

  /** A text, or null if the attribute is missing. */
  SourceText text(String attribute) {
    AttributeText text = attributes.get(attribute);
    return text == null ? null : text.resolve(evaluator);
  }

  /** A number that isn't negative; 0 if the attribute is missing. */
  double positive(String attribute) {
    double number = get(attribute);
    if (number < 0) {
      throw fault(text(attribute), attribute);
    }
    return number;
  }

  /** A number, 0 if the attribute is missing. */
  double get(String attribute) {
    AttributeText written = attributes.get(attribute);
    if (written == null) {
      return 0;
    }
    if (written.source().text().length() > LONGEST) {
      throw fault(written.source().part(0, LONGEST), attribute);
    }
    SourceText text = written.resolve(evaluator);
    String trimmed = text.text().strip();
    if (trimmed.endsWith("%")) {
      return share(text, trimmed.substring(0, trimmed.length() - 1), attribute);
    }
    SvgLength length = SvgLength.parse(trimmed);
    if (length == null || Math.abs(length.number()) > LARGEST) {
      throw fault(text, attribute);
    }
    if (length.unit().isEmpty()) {
      return length.number();
    }
    return computed ? length.millimetres() : length.pixels();
  }

  private double share(SourceText text, String number, String attribute) {
    double whole = computed ? Double.NaN : extent.whole(attribute);
    boolean isNumber = !number.isEmpty() && NumberText.end(number, 0) == number.length();
    double share = isNumber ? Double.parseDouble(number) : Double.NaN;
    if (!(Math.abs(share) <= LARGEST) || Double.isNaN(whole)) {
      throw fault(text, attribute);
    }
    return whole * share / 100;
  }

  static FindingException fault(SourceText text, String attribute) {
    return new FindingException(
        Finding.of(
            DrawingCode.ATTRIBUTE_WRONG,
            text.position(),
            "attribute",
            attribute,
            "text",
            text.text().strip()));
  }
}
