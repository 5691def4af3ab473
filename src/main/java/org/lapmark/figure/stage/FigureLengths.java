package org.lapmark.figure.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.PrintForm.Units;
import org.lapmark.measure.PrintedValue;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Value;

/**
 * The lengths that one figure prints, each known by where it is stated, however often it is drawn:
 * those of dimensions, which are computed, and those of captions and labels, which an author
 * writes. What an author writes is held against itself where its step or note is read.
 */
final class FigureLengths {
  private final Map<Position, Double> dimensions = new LinkedHashMap<>();
  private final Map<Position, TemplateText> words = new LinkedHashMap<>();

  /**
   * A length in each unit.
   *
   * @param expression what the author wrote; empty for a dimension
   * @param metric millimetres under its metric name
   * @param inches millimetres under its name in inches, which differs for stock sizes alone
   * @param metricText how it is printed where metric is printed
   * @param inchText how it is printed where inches are printed
   */
  private record Shown(
      String expression,
      Position position,
      double metric,
      double inches,
      String metricText,
      String inchText) {
    /** How this and another are both printed though they differ. */
    Optional<String> alike(Shown other, Units units) {
      if (units != Units.METRIC
          && PrintForm.differ(inches, other.inches)
          && inchText.equals(other.inchText)) {
        return Optional.of(inchText);
      }
      return units != Units.INCHES
              && PrintForm.differ(metric, other.metric)
              && metricText.equals(other.metricText)
          ? Optional.of(metricText)
          : Optional.empty();
    }
  }

  /** Keeps a dimension; what comes to it is which of the figure's dimensions it is, from 0. */
  int dimension(Position place, double millimetres) {
    dimensions.put(place, millimetres);
    return List.copyOf(dimensions.keySet()).indexOf(place);
  }

  Position place(int number) {
    return List.copyOf(dimensions.keySet()).get(number);
  }

  void text(TemplateText text) {
    for (TemplateText.Placeholder placeholder : text.placeholders()) {
      words.putIfAbsent(
          placeholder.formula().text().position(),
          new TemplateText(text.source(), List.of(placeholder)));
    }
  }

  /** Says of dimensions that differ from other lengths when readers see no difference. */
  void compare(Staging staging) {
    if (dimensions.isEmpty()) {
      return;
    }
    List<Shown> before = new ArrayList<>();
    words.values().forEach(text -> stated(text, staging).ifPresent(before::add));
    for (Map.Entry<Position, Double> dimension : dimensions.entrySet()) {
      double length = dimension.getValue();
      Shown shown =
          new Shown(
              "",
              dimension.getKey(),
              length,
              length,
              print(length, staging.form().with(Units.METRIC)),
              print(length, staging.form().with(Units.INCHES)));
      for (Shown other : before) {
        Optional<String> text = shown.alike(other, staging.form().units());
        if (text.isPresent()) {
          notice(shown, other, text.get(), staging);
          break;
        }
      }
      before.add(shown);
    }
  }

  private static void notice(Shown dimension, Shown other, String text, Staging staging) {
    boolean inches = text.equals(dimension.inchText) && !text.equals(dimension.metricText);
    staging.notice(
        dimension.position,
        FigureCode.FIGURE_DIMENSIONS_ALIKE,
        "with",
        other.expression.isEmpty() ? "dimension" : "words",
        "expression",
        other.expression,
        "first",
        Math.rint((inches ? other.inches : other.metric) * 100) / 100,
        "second",
        Math.rint(dimension.metric * 100) / 100,
        "text",
        text.replace('\u00a0', ' '),
        "size",
        staging.size());
  }

  /** A length that words print; nothing for what is no length or can't be printed. */
  private static Optional<Shown> stated(TemplateText text, Staging staging) {
    try {
      PrintedValue metric = printed(text, staging, Units.METRIC);
      PrintedValue inches = printed(text, staging, Units.INCHES);
      Optional<Value.Lengths> lengths = metric.exact().lengths();
      if (lengths.isEmpty()) {
        return Optional.empty();
      }
      double inMetric = lengths.get().metric();
      double inInches = lengths.get().inches();
      return Optional.of(
          new Shown(
              metric.expression(),
              metric.position(),
              inMetric,
              inInches,
              metric.text(),
              inches.text()));
    } catch (FindingException e) {
      // It is told where the text is read.
      return Optional.empty();
    }
  }

  private static PrintedValue printed(TemplateText text, Staging staging, Units units) {
    return (PrintedValue)
        text.print(
                staging.pattern().scope(), staging.pattern().variant(), staging.form().with(units))
            .get(0);
  }

  /** A computed length as a reader sees it; sums leave no trace in it. */
  static String print(double millimetres, PrintForm form) {
    return form.print(Value.Quantity.length(Math.rint(millimetres * 1e6) / 1e6));
  }
}
