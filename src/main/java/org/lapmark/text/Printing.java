package org.lapmark.text;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;

/**
 * What placeholders come to in one variant, or in each of several for a document of all sizes.
 * Immutable.
 */
public final class Printing {
  private final Map<Inline.Value, List<PrintedValue>> printed;

  private Printing(Map<Inline.Value, List<PrintedValue>> printed) {
    this.printed = printed;
  }

  /**
   * Prints placeholders.
   *
   * @param values the placeholders
   * @param patterns the pattern in one variant, or in all of a document in the order they are
   *     listed
   * @param form how the document prints values where a placeholder doesn't say
   * @param findings where problems go, once each
   * @return what they come to
   */
  public static Printing of(
      Collection<Inline.Value> values,
      List<EvaluatedPattern> patterns,
      PrintForm form,
      Findings findings) {
    Map<Inline.Value, List<PrintedValue>> printed = new LinkedHashMap<>();
    for (Inline.Value value : values) {
      TemplateText.Placeholder placeholder = value.placeholder();
      TemplateText text = new TemplateText(placeholder.formula().text(), List.of(placeholder));
      List<PrintedValue> all = new ArrayList<>();
      for (EvaluatedPattern pattern : patterns) {
        PrintedText.of(text, pattern, form, findings)
            .ifPresent(one -> all.add((PrintedValue) one.parts().get(0)));
      }
      printed.put(value, Collections.unmodifiableList(all));
    }
    return new Printing(printed);
  }

  /**
   * What one placeholder comes to.
   *
   * @param value the placeholder
   * @return its values in the order of the patterns; without those that couldn't be computed
   */
  public List<PrintedValue> of(Inline.Value value) {
    return printed.getOrDefault(value, List.of());
  }

  /**
   * Every printed value, in the order the placeholders were given.
   *
   * @return the values
   */
  public List<PrintedValue> all() {
    return printed.values().stream().flatMap(List::stream).toList();
  }
}
