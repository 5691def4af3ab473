package org.lapmark.grade;

import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Findings;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.Scope;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Variant;

/**
 * A choice that a variant can't be changed to, all its other choices staying.
 *
 * @param option the option's name
 * @param choice the choice's id
 * @param reason why it is forbidden
 * @param scope what names in the reason stand for
 * @param variant the variant that can't be made
 */
public record Refusal(
    String option, String choice, TemplateText reason, Scope scope, Variant variant) {
  /**
   * The reason as readers see it.
   *
   * @param form how values are printed
   * @return strings and printed values; nothing when it can't be printed, which is reported where
   *     the folder is checked
   */
  public List<Object> printed(PrintForm form) {
    Optional<Printed> printed = Printed.of(reason, scope, variant, form, new Findings());
    return printed.map(Printed::parts).orElse(List.of());
  }
}
