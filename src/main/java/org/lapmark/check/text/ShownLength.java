package org.lapmark.check.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintForm.Units;
import org.lapmark.measure.print.TemplateText;

/**
 * A length as readers see it in each unit.
 *
 * @param expression what the author wrote, or what the length is
 * @param form what the author wrote after {@code as}; empty for nothing
 * @param position where it is written
 * @param metric millimetres under its metric name
 * @param inches millimetres under its name in inches, which differs for stock sizes alone
 * @param metricText how it is printed where metric is printed
 * @param inchText how it is printed where inches are printed
 */
record ShownLength(
    String expression,
    String form,
    Position position,
    double metric,
    double inches,
    String metricText,
    String inchText) {
  /** The lengths that a text prints, in order. */
  static List<ShownLength> in(SourceText text, EvaluatedPattern pattern) {
    return in(TemplateText.parse(text, new Findings()), pattern);
  }

  /** The lengths that a text prints, in order. */
  static List<ShownLength> in(TemplateText text, EvaluatedPattern pattern) {
    List<ShownLength> all = new ArrayList<>();
    text.placeholders().forEach(one -> of(text, one, pattern).ifPresent(all::add));
    return all;
  }

  private static Optional<ShownLength> of(
      TemplateText text, TemplateText.Placeholder placeholder, EvaluatedPattern pattern) {
    Optional<Value.Lengths> lengths =
        pattern.value(placeholder.formula(), new Findings()).flatMap(Value::lengths);
    if (lengths.isEmpty()) {
      return Optional.empty();
    }
    double metric = lengths.get().metric();
    double inches = lengths.get().inches();
    TemplateText alone = new TemplateText(text.source(), List.of(placeholder));
    PrintForm form = pattern.source().masthead().form();
    Findings told = new Findings(); // What can't be printed is reported where texts are read.
    Optional<PrintedText> first = PrintedText.of(alone, pattern, form.with(Units.METRIC), told);
    Optional<PrintedText> second = PrintedText.of(alone, pattern, form.with(Units.INCHES), told);
    return first.isEmpty() || second.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ShownLength(
                placeholder.formula().text().text(),
                placeholder.form() == null ? "" : placeholder.form().text(),
                placeholder.formula().text().position(),
                metric,
                inches,
                first.get().text(),
                second.get().text()));
  }

  /** A length that no text of the author's asks for. */
  static ShownLength computed(String name, double millimetres, Position position, PrintForm form) {
    Value.Quantity length = Value.Quantity.length(millimetres);
    return new ShownLength(
        name,
        "",
        position,
        millimetres,
        millimetres,
        form.with(Units.METRIC).print(length),
        form.with(Units.INCHES).print(length));
  }

  /** How this and another length are both printed though they differ; nothing if they aren't. */
  Optional<String> alike(ShownLength other, Units units) {
    boolean inMetric =
        units != Units.INCHES
            && PrintForm.differ(metric, other.metric)
            && metricText.equals(other.metricText);
    boolean inInches =
        units != Units.METRIC
            && PrintForm.differ(inches, other.inches)
            && inchText.equals(other.inchText);
    return inInches ? Optional.of(inchText) : inMetric ? Optional.of(metricText) : Optional.empty();
  }

  /** What to write after {@code as} so that this and another are told apart; maybe nothing. */
  Optional<String> apart(ShownLength other, PrintForm form) {
    boolean inInches = inchText.equals(other.inchText) && form.units() != Units.METRIC;
    String both = form.units() == Units.INCHES ? "in" : "both";
    if (inInches) {
      for (int parts : new int[] {16, 32}) {
        if (isApart(other, form.with(Units.INCHES).inches(parts))) {
          return Optional.of(both + " 1/" + parts);
        }
      }
      return Optional.empty();
    }
    for (String step : List.of("1", "0.1")) {
      if (isApart(other, form.with(Units.METRIC).metric(Double.parseDouble(step)))) {
        return Optional.of("mm " + step);
      }
    }
    return Optional.empty();
  }

  private boolean isApart(ShownLength other, PrintForm form) {
    return !form.print(Value.Quantity.length(inches))
        .equals(form.print(Value.Quantity.length(other.inches)));
  }

  /** With a form, as it is written in a text. */
  String written(String as) {
    return "{" + expression + " as " + as + "}";
  }
}
