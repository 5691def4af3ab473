package org.lapmark.source.drawing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.MeasureCode;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.KeyCode;

/**
 * An attribute's text, whose placeholders are replaced by numbers while every character keeps its
 * place: those of a number have the place of their placeholder's brace.
 */
final class AttributeText {
  private final SourceText source;
  private final List<Placeholder> placeholders;
  private final boolean broken;

  private AttributeText(SourceText source, List<Placeholder> placeholders, boolean broken) {
    this.source = source;
    this.placeholders = placeholders;
    this.broken = broken;
  }

  private record Placeholder(int start, int end, Formula formula) {}

  /** A text without placeholders. */
  static AttributeText literal(SourceText source) {
    return new AttributeText(source, List.of(), false);
  }

  /** Takes a text apart; what is wrong is reported. */
  static AttributeText parse(SourceText source, Findings findings) {
    List<Placeholder> placeholders = new ArrayList<>();
    boolean broken = false;
    String text = source.text();
    int at = 0;
    while (at < text.length()) {
      char c = text.charAt(at);
      int end = c == '{' ? TemplateText.closing(text, at) : at;
      if (c == '{' && end >= 0) {
        try {
          placeholders.add(new Placeholder(at, end + 1, formula(source, at, end)));
        } catch (FindingException e) {
          findings.add(e.finding());
          broken = true;
        }
        at = end;
      } else if (c == '{' || c == '}') {
        findings.add(
            c == '{' ? MeasureCode.PLACEHOLDER_UNCLOSED : MeasureCode.PLACEHOLDER_UNOPENED,
            source.position(at, at + 1));
        broken = true;
      }
      at++;
    }
    return new AttributeText(source, placeholders, broken);
  }

  private static Formula formula(SourceText source, int opening, int closing) {
    if (source.text().substring(opening + 1, closing).isBlank()) {
      throw new FindingException(
          Finding.of(MeasureCode.PLACEHOLDER_EMPTY, source.position(opening, closing + 1)));
    }
    TemplateText.Placeholder placeholder =
        TemplateText.Placeholder.parse(source.part(opening + 1, closing));
    if (placeholder.form() != null) {
      throw new FindingException(
          Finding.of(
              DrawingCode.PLACEHOLDER_FORM_NOT_HERE,
              placeholder.form().position(),
              "form",
              placeholder.form().text()));
    }
    return placeholder.formula();
  }

  SourceText source() {
    return source;
  }

  boolean hasPlaceholders() {
    return !placeholders.isEmpty() || broken;
  }

  /** Whether a placeholder couldn't be understood, which has been reported. */
  boolean isBroken() {
    return broken;
  }

  /**
   * The text with numbers in it, each between spaces, so that it can't run into its neighbours.
   *
   * @throws FindingException from the evaluator, or where a number isn't finite
   */
  SourceText resolve(Function<Formula, Double> evaluator) {
    if (placeholders.isEmpty()) {
      return source;
    }
    StringBuilder text = new StringBuilder();
    List<Integer> places = new ArrayList<>();
    int at = 0;
    for (Placeholder placeholder : placeholders) {
      copy(at, placeholder.start(), text, places);
      double number = evaluator.apply(placeholder.formula());
      if (!Double.isFinite(number)) {
        throw new FindingException(
            Finding.of(
                KeyCode.NUMBER_TOO_LARGE,
                source.position(placeholder.start(), placeholder.end()),
                "text",
                source.text().substring(placeholder.start(), placeholder.end())));
      }
      String written = ' ' + BigDecimal.valueOf(number + 0.0).toPlainString() + ' ';
      text.append(written);
      int place = source.offset(placeholder.start());
      for (int i = 0; i < written.length(); i++) {
        places.add(place);
      }
      at = placeholder.end();
    }
    copy(at, source.text().length(), text, places);
    places.add(source.offset(source.text().length()));
    int[] offsets = places.stream().mapToInt(Integer::intValue).toArray();
    return SourceText.mapped(source.file(), text.toString(), offsets);
  }

  private void copy(int from, int to, StringBuilder text, List<Integer> places) {
    for (int i = from; i < to; i++) {
      text.append(source.text().charAt(i));
      places.add(source.offset(i));
    }
  }
}
