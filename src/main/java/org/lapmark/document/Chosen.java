package org.lapmark.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.grade.GradedPattern;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.OptionsSource.OptionSource;
import org.lapmark.wording.Wording;

/**
 * What is chosen for one option in the document at hand.
 *
 * @param label what readers see of the option
 * @param choice what is chosen, in words
 * @param text what to know about it; null when nothing is stated
 */
record Chosen(String label, String choice, TemplateText text) {
  /** What is chosen for every option of a variant, in the order stated. */
  static List<Chosen> in(GradedPattern pattern, Wording wording) {
    List<Chosen> all = new ArrayList<>();
    for (OptionSource option : pattern.source().options().options()) {
      String choice = pattern.variant().choices().get(option.name().text());
      if (choice != null) {
        all.add(new Chosen(option.label().text(), inWords(option, choice, wording), option.text()));
      }
    }
    return all;
  }

  private static String inWords(OptionSource option, String choice, Wording wording) {
    if (option.isYesOrNo()) {
      return wording.text("choice." + (choice.equals(OptionsSource.YES) ? "yes" : "no"));
    }
    return option.choices().stream()
        .filter(one -> one.id().text().equals(choice))
        .map(one -> one.label().text())
        .findFirst()
        .orElse(choice);
  }

  /** The option and what is chosen, on one line. */
  String line(Wording wording) {
    return wording.text("choice.line", Map.of("option", label, "choice", choice));
  }

  /**
   * As the pages of one variant print it.
   *
   * @param line option and choice
   * @param text what to know about it, which may be nothing
   */
  record Printed(String line, List<Object> text) {
    Printed {
      text = List.copyOf(text);
    }
  }

  Printed printed(GradedPattern pattern, Wording wording, PrintForm form) {
    return new Printed(
        line(wording),
        text == null
            ? List.of()
            : text.print(pattern.scope(), pattern.variant(), pattern.printing(form)));
  }
}
