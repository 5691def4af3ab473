package org.lapmark.source.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and lengths as line drawings write them. */
final class LineNumbers {
  private static final Pattern LENGTH =
      Pattern.compile(
          "([+-]?(?:[0-9]{1,12}\\.?[0-9]{0,12}|\\.[0-9]{1,12})(?:[eE][+-]?[0-9])?)"
              + "\\s*(px|mm|cm|in|pt|pc|Q|)");

  /** User units in an inch. */
  private static final double UNITS = 96;

  /** Millimetres in a user unit. */
  static final double MILLIMETRE = 25.4 / UNITS;

  private LineNumbers() {}

  /** A length in user units; nothing if it isn't one, or is a share of something. */
  static OptionalDouble length(String written) {
    Matcher length = LENGTH.matcher(written.strip());
    if (!length.matches()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(length.group(1));
    double unit =
        switch (length.group(2)) {
          case "mm" -> 1 / MILLIMETRE;
          case "cm" -> 10 / MILLIMETRE;
          case "Q" -> 0.25 / MILLIMETRE;
          case "in" -> UNITS;
          case "pt" -> UNITS / 72;
          case "pc" -> UNITS / 6;
          default -> 1;
        };
    return OptionalDouble.of(number * unit);
  }

  /** Lengths with blanks or commas between; nothing if one isn't. */
  static List<Double> lengths(String written) {
    List<Double> all = new ArrayList<>();
    for (String word : written.strip().split("[\\s,]+")) {
      OptionalDouble length = length(word);
      if (length.isEmpty()) {
        return List.of();
      }
      all.add(length.getAsDouble());
    }
    return all;
  }
}
