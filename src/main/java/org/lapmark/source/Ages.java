package org.lapmark.source;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How old those are who wear or use a size.
 *
 * @param first the youngest
 * @param last the oldest, if it is stated; whoever is older fits as well if not
 * @param inMonths whether both are months; else they are years
 */
public record Ages(double first, OptionalDouble last, boolean inMonths) {
  /** Below it a wearer is a child, whose neck no cord may go round. */
  private static final double GROWN = 14;

  /** Below it whatever comes off is put into the mouth. */
  private static final double PAST_MOUTHING = 3;

  private static final double MONTHS = 12;
  private static final Pattern RANGE =
      Pattern.compile(
          "(from )?([0-9]{1,3}(?:\\.[0-9]{1,2})?)(?:(?: to |-|–)([0-9]{1,3}(?:\\.[0-9]{1,2})?))?"
              + "(?: (months?|years?))?");

  /** Nobody is younger than grown-ups. */
  public static final Ages ADULTS = new Ages(18, OptionalDouble.empty(), false);

  /**
   * Reads ages as an author writes them: {@code 3 to 10}, {@code from 6}, {@code 6 to 18 months},
   * {@code adults}.
   *
   * @param text the text
   * @return the ages, or nothing when it is something else
   */
  public static Optional<Ages> of(String text) {
    if (text.equals("adults")) {
      return Optional.of(ADULTS);
    }
    Matcher range = RANGE.matcher(text);
    if (!range.matches()) {
      return Optional.empty();
    }
    double first = Double.parseDouble(range.group(2));
    OptionalDouble last = OptionalDouble.empty();
    if (range.group(3) != null) {
      last = OptionalDouble.of(Double.parseDouble(range.group(3)));
    } else if (range.group(1) == null) {
      last = OptionalDouble.of(first);
    }
    if (last.isPresent() && last.getAsDouble() < first) {
      return Optional.empty();
    }
    boolean months = range.group(4) != null && range.group(4).startsWith("month");
    return Optional.of(new Ages(first, last, months));
  }

  private double youngest() {
    return inMonths ? first / MONTHS : first;
  }

  /**
   * Whether children wear it.
   *
   * @return true when the youngest is a child
   */
  public boolean isChild() {
    return youngest() < GROWN;
  }

  /**
   * Whether infants use it.
   *
   * @return true when the youngest is under three
   */
  public boolean isInfant() {
    return youngest() < PAST_MOUTHING;
  }
}
