package org.lapmark.bench;

import java.util.Locale;

/**
 * A line of the table: what was measured, and whether it is as it must be.
 *
 * @param what what was done
 * @param found what was measured, in words and numbers
 * @param must what must be
 * @param met whether it is so
 */
record Measured(String what, String found, String must, boolean met) {
  static final String HEADING = "| what | measured | must be | |%n| --- | --- | --- | --- |%n";

  /** A number that must be at most another. */
  static Measured atMost(String what, String found, double number, double most, String unit) {
    return new Measured(
        what, found, String.format(Locale.ROOT, "%s%s", plain(most), unit), number <= most);
  }

  private static String plain(double number) {
    return number == Math.rint(number)
        ? Long.toString((long) number)
        : String.format(Locale.ROOT, "%.1f", number);
  }

  String line() {
    return "| " + String.join(" | ", what, found, must, met ? "met" : "NOT met") + " |";
  }
}
