package org.lapmark.grade;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.measure.Scope;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.measure.print.TemplateText;

/**
 * An author's text with its placeholders printed in one variant.
 *
 * @param parts strings and {@link PrintedValue}s in order
 */
public record PrintedText(List<Object> parts) {
  /** Copies the list. */
  public PrintedText {
    parts = List.copyOf(parts);
  }

  /**
   * Prints a text.
   *
   * @param text the text
   * @param pattern the pattern in one variant
   * @param findings where problems go
   * @return the printed text; nothing when a placeholder couldn't be printed, which is then
   *     reported
   */
  public static Optional<PrintedText> of(
      TemplateText text, EvaluatedPattern pattern, Findings findings) {
    return of(
        text, pattern.scope(), pattern.variant(), pattern.source().masthead().form(), findings);
  }

  /**
   * Prints a text in another form than the pattern's own.
   *
   * @param text the text
   * @param pattern the pattern in one variant
   * @param form how values are printed where a placeholder doesn't say
   * @param findings where problems go
   * @return the printed text; nothing when a placeholder couldn't be printed, which is then
   *     reported
   */
  public static Optional<PrintedText> of(
      TemplateText text, EvaluatedPattern pattern, PrintForm form, Findings findings) {
    return of(text, pattern.scope(), pattern.variant(), pattern.printing(form), findings);
  }

  static Optional<PrintedText> of(
      TemplateText text, Scope scope, Variant variant, PrintForm form, Findings findings) {
    try {
      return Optional.of(new PrintedText(text.print(scope, variant, form)));
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (DemandGraph.Unavailable e) {
      // What is missing has been reported where it went wrong.
    }
    return Optional.empty();
  }

  /**
   * The text as one string.
   *
   * @return the text
   */
  public String text() {
    return PrintedValue.text(parts);
  }
}
