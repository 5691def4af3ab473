package org.lapmark.cli.grade;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapmark.cli.console.Millimetres;
import org.lapmark.grade.GradeReport;

/** What the forms of a grade report have in common. */
final class GradeWords {
  private static final double SQUARE_CENTIMETRE = 100;

  private GradeWords() {}

  /** The choices of a report, as {@code option=choice}; empty without options. */
  static String choices(GradeReport report) {
    return report.choices().entrySet().stream()
        .map(choice -> choice.getKey() + "=" + choice.getValue())
        .collect(Collectors.joining(" "));
  }

  static String kind(GradeReport.Row row) {
    return row.kind().name().toLowerCase(Locale.ROOT);
  }

  /** Millimetres; of an area, square centimetres. */
  static double shown(GradeReport.Row row, double value) {
    return row.kind() == GradeReport.Kind.AREA ? value / SQUARE_CENTIMETRE : value;
  }

  static String value(GradeReport.Row row, int size) {
    return row.values().get(size).map(value -> hundredths(row, value)).orElse("");
  }

  static String increment(GradeReport.Row row, int size) {
    return row.increment(size).map(value -> hundredths(row, value)).orElse("");
  }

  /** The same with its sign. */
  static String signed(GradeReport.Row row, int size) {
    Optional<Double> increment = row.increment(size);
    String text = increment(row, size);
    return increment.isPresent() && !text.startsWith("-") ? "+" + text : text;
  }

  static String allowances(GradeReport.Row row) {
    return row.allowances().stream().map(Millimetres::brief).collect(Collectors.joining(" "));
  }

  private static String hundredths(GradeReport.Row row, double value) {
    return Millimetres.hundredths(shown(row, value));
  }
}
