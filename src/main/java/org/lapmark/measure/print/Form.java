package org.lapmark.measure.print;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.MeasureCode;
import org.lapmark.measure.Rounding;
import org.lapmark.measure.Unit;

/**
 * What a placeholder's author wrote after {@code as}.
 *
 * @param style which units, or none
 * @param unit the one unit, when the style is {@link Style#UNIT}
 * @param step the step in millimetres to which metric lengths are rounded, or 0 for the document's
 * @param denominator the denominator of fractions, or 0 for the document's; of a plain number, for
 *     decimals
 * @param rounding to which side
 */
record Form(Style style, Unit unit, double step, int denominator, Rounding rounding) {
  /** As the document has it. */
  static final Form DOCUMENT = new Form(Style.DOCUMENT, null, 0, 0, Rounding.NEAREST);

  enum Style {
    DOCUMENT,
    UNIT,
    METRIC,
    INCHES,
    BOTH,
    NUMBER
  }

  private static final List<String> WORDS =
      List.of("mm", "cm", "m", "in", "ft", "yd", "both", "metric", "inches", "number");
  private static final Pattern WRITTEN = Pattern.compile("(\\S+)(?:\\s+(\\S+))?");
  private static final Pattern SIDE = Pattern.compile("(.*?)\\s*\\bat\\s+(most|least)");
  private static final Pattern FRACTION = Pattern.compile("1/(2|4|8|16|32)");
  private static final Pattern DECIMAL = Pattern.compile("\\d{1,4}(?:\\.\\d{1,3})?");

  /** Reads a form; null stands for the document's own. */
  public static Form parse(SourceText written) {
    if (written == null) {
      return DOCUMENT;
    }
    Matcher side = SIDE.matcher(written.text());
    if (!side.matches()) {
      return units(written, Rounding.NEAREST);
    }
    Rounding rounding = side.group(2).equals("most") ? Rounding.AT_MOST : Rounding.AT_LEAST;
    return side.group(1).isEmpty()
        ? new Form(Style.DOCUMENT, null, 0, 0, rounding)
        : units(written.part(0, side.end(1)), rounding);
  }

  private static Form units(SourceText written, Rounding rounding) {
    Matcher matcher = WRITTEN.matcher(written.text());
    if (!matcher.matches() || !WORDS.contains(matcher.group(1))) {
      throw unknown(written, written.text().split("\\s+", 2)[0]);
    }
    String word = matcher.group(1);
    Style style =
        switch (word) {
          case "both" -> Style.BOTH;
          case "metric" -> Style.METRIC;
          case "inches" -> Style.INCHES;
          case "number" -> Style.NUMBER;
          default -> Style.UNIT;
        };
    Unit unit = style == Style.UNIT ? Unit.of(word).orElseThrow() : null;
    String step = matcher.group(2);
    if (step == null) {
      return new Form(style, unit, 0, 0, rounding);
    }
    boolean fractions = unit != null ? !unit.metric() : style != Style.METRIC;
    boolean decimals = unit != null ? unit.metric() : style == Style.METRIC;
    Matcher fraction = FRACTION.matcher(step);
    if (fractions && fraction.matches()) {
      return new Form(style, unit, 0, Integer.parseInt(fraction.group(1)), rounding);
    }
    if (decimals && DECIMAL.matcher(step).matches() && Double.parseDouble(step) > 0) {
      double size = unit == null ? 1 : unit.size();
      // Back to the decimal that was meant: 0.57 cm is 5.7 mm, not 5.699999999999999.
      double millimetres = Math.rint(Double.parseDouble(step) * size * 1e6) / 1e6;
      return new Form(style, unit, millimetres, 0, rounding);
    }
    throw unknown(written, step);
  }

  private static FindingException unknown(SourceText written, String form) {
    String nearest = WORDS.contains(form) ? "" : NearestWord.of(form, WORDS).orElse("");
    return new FindingException(
        Finding.of(
            MeasureCode.PLACEHOLDER_UNKNOWN_FORM,
            written.position(),
            "form",
            form,
            "nearest",
            nearest,
            "hasNearest",
            nearest.isEmpty() ? "no" : "yes",
            "known",
            Known.listed(WORDS)));
  }
}
