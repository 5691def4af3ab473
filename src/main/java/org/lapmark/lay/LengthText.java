package org.lapmark.lay;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;

/** Prints computed lengths through the printer that prints the author's placeholders. */
final class LengthText {
  private LengthText() {}

  /** A length in the document's units. */
  static String of(double millimetres, PrintForm form) {
    return form.print(Value.Quantity.length(Math.rint(millimetres * 1e6) / 1e6));
  }

  /** A length that is needed, never less than it is. */
  static String atLeast(double millimetres, PrintForm form) {
    return form.printAtLeast(Math.rint(millimetres * 1e6) / 1e6);
  }

  /** A length in one unit, such as {@code "m 0.1"}. */
  static String of(double millimetres, String as, PrintForm form) {
    return print(number(millimetres) + " mm", " as " + as, form);
  }

  /** A stated length or nominal pair in the document's units. */
  static String of(Value stated, PrintForm form) {
    if (stated instanceof Value.NominalPair pair) {
      return print(pair.metricText() + " (" + pair.inchText() + ")", "", form);
    }
    return of(((Value.Quantity) stated).amount(), form);
  }

  private static String number(double millimetres) {
    return BigDecimal.valueOf(millimetres).setScale(6, RoundingMode.HALF_UP).toPlainString();
  }

  private static String print(String formula, String as, PrintForm form) {
    SourceFile file = new SourceFile("computed", formula + as);
    SourceText text = SourceText.verbatim(file, 0, file.content().length());
    return TemplateText.Placeholder.parse(text).print(null, Variant.ofSize(""), form).text();
  }
}
