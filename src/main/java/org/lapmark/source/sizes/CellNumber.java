package org.lapmark.source.sizes;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a cell of the size table says. A number that can be read in two ways is never guessed, and
 * what a spreadsheet makes of a fraction is recognised.
 *
 * @param kind what kind of cell it is
 * @param number its number, or 0
 */
record CellNumber(Kind kind, double number) {
  /** What kind of cell it is. */
  enum Kind {
    /** A number. */
    NUMBER,
    /** Nothing. */
    EMPTY,
    /** A date, probably made from a fraction. */
    DATE,
    /** A comma, point or gap that may or may not separate thousands. */
    AMBIGUOUS,
    /** A formula, or a spreadsheet's error. */
    FORMULA,
    /** Something else. */
    OTHER
  }

  private static final int LONGEST = 40;
  private static final Pattern DECIMAL = Pattern.compile("[+-]?([0-9]+([.,][0-9]*)?|[.,][0-9]+)");
  private static final Pattern FRACTION =
      Pattern.compile("([+-]?)(?:([0-9]{1,6}) +)?([0-9]{1,4}) ?[/\u2044] ?([0-9]{1,4})");
  // Three digits behind a comma or point, or gaps between thousands.
  private static final Pattern COMMA_THOUSANDS =
      Pattern.compile("[+-]?[1-9][0-9]{0,2}(,[0-9]{3})+");
  private static final Pattern POINT_THOUSANDS =
      Pattern.compile("[+-]?[1-9][0-9]{0,2}(\\.[0-9]{3})+");
  private static final Pattern GROUPED =
      Pattern.compile(
          "[+-]?[0-9]{1,3}(([.][0-9]{3})+,[0-9]*|(,[0-9]{3})+\\.[0-9]*|"
              + "([ '\u00a0\u2009\u202f\u2019][0-9]{3})+([.,][0-9]*)?)");
  private static final Pattern DIGIT_DATE =
      Pattern.compile(
          "[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}([T ].*)?"
              + "|[0-9]{1,2}([./-])[0-9]{1,2}\\2([0-9]{2}|[0-9]{4})?"
              + "|[0-9]{1,2}-[0-9]{1,2}");
  private static final Pattern WORD_DATE =
      Pattern.compile(
          "(?:[0-9]{1,2}[ ./-]{1,2})?(\\p{L}{3,10})\\.?(?:[ ./-]{1,2}[0-9]{1,4})?"
              + "(?:[ ./-]{1,2}[0-9]{2,4})?");
  private static final List<String> MONTHS =
      List.of(
          "jan", "feb", "mar", "mrz", "maer", "apr", "mai", "may", "jun", "jul", "aug", "sep",
          "oct", "okt", "nov", "dec", "dez", "fev", "avr", "juin", "juil", "aou", "ene", "abr",
          "ago", "dic", "gen", "mag", "giu", "lug", "set", "ott", "mei", "mrt");

  /**
   * Reads a cell.
   *
   * @param cell the cell's text
   * @param commaDecimals whether a comma is the decimal separator elsewhere in the table, so that a
   *     point may separate thousands
   */
  static CellNumber parse(String cell, boolean commaDecimals) {
    String text = cell.strip().replace('\u2212', '-');
    if (text.isEmpty()) {
      return of(Kind.EMPTY);
    }
    if (text.startsWith("=") || text.matches("#[A-Z0-9/]{1,12}[!?]?")) {
      return of(Kind.FORMULA);
    }
    if (text.length() > LONGEST) {
      return of(Kind.OTHER);
    }
    if (COMMA_THOUSANDS.matcher(text).matches()
        || commaDecimals && POINT_THOUSANDS.matcher(text).matches()
        || text.matches("[+-]?[0-9]{1,3}(\\.[0-9]{3}){2,}")
        || GROUPED.matcher(text).matches()) {
      return of(Kind.AMBIGUOUS);
    }
    if (DECIMAL.matcher(text).matches()) {
      return new CellNumber(Kind.NUMBER, Double.parseDouble(text.replace(',', '.')));
    }
    Matcher fraction = FRACTION.matcher(spelled(text));
    if (fraction.matches() && Integer.parseInt(fraction.group(4)) != 0) {
      int whole = fraction.group(2) == null ? 0 : Integer.parseInt(fraction.group(2));
      double part =
          (double) Integer.parseInt(fraction.group(3)) / Integer.parseInt(fraction.group(4));
      // Half a number may stand behind a whole one; more than one has been mistyped.
      if (fraction.group(2) == null || part < 1) {
        return new CellNumber(
            Kind.NUMBER, (fraction.group(1).equals("-") ? -1 : 1) * (whole + part));
      }
    }
    return of(isDate(text) ? Kind.DATE : Kind.OTHER);
  }

  /** Whether a cell says beyond doubt that the comma is a decimal separator. */
  static boolean hasDecimalComma(String cell) {
    String text = cell.strip();
    return text.length() <= LONGEST
        && text.indexOf(',') >= 0
        && DECIMAL.matcher(text).matches()
        && !COMMA_THOUSANDS.matcher(text).matches();
  }

  /** How a number would be written without any doubt. */
  static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private static CellNumber of(Kind kind) {
    return new CellNumber(kind, 0);
  }

  /** Fraction signs such as ⅜ written out. */
  private static String spelled(String text) {
    StringBuilder all = new StringBuilder();
    for (char c : text.toCharArray()) {
      String plain = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKC);
      all.append(plain.indexOf('\u2044') > 0 ? " " + plain : String.valueOf(c));
    }
    return all.toString().strip();
  }

  private static boolean isDate(String text) {
    if (DIGIT_DATE.matcher(text).matches()) {
      return true;
    }
    Matcher words = WORD_DATE.matcher(text);
    if (!words.matches() || text.chars().noneMatch(c -> c >= '0' && c <= '9')) {
      return false;
    }
    String month =
        Normalizer.normalize(
                words.group(1).toLowerCase(Locale.ROOT).replace("ä", "ae"), Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "");
    return MONTHS.stream().anyMatch(month::startsWith);
  }
}
