package org.lapmark.document.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Refusal;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.OptionsSource.OptionSource;
import org.lapmark.wording.Wording;

/**
 * What is chosen for one option in the document at hand.
 *
 * @param label what readers see of the option
 * @param choice what is chosen, in words
 * @param text what to know about it; null when nothing is stated, or nothing else can be chosen
 * @param refused what can't be chosen in its place in some size of the document
 */
public record ChosenOption(String label, String choice, TemplateText text, List<Refused> refused) {
  public ChosenOption {
    refused = List.copyOf(refused);
  }

  /**
   * A choice that is forbidden.
   *
   * @param option the option's name
   * @param id the choice
   * @param words how a sentence that gives the reason begins; empty for a matter of yes or no
   */
  public record Refused(String option, String id, String words) {
    /** The reason in one size, as one string. */
    public Optional<String> in(EvaluatedPattern pattern, PrintForm form) {
      return refusal(pattern, option, id)
          .map(refusal -> SizeWords.plain(pattern.reason(refusal, form)))
          .filter(reason -> !reason.isEmpty())
          .map(reason -> words + reason);
    }
  }

  private static Optional<Refusal> refusal(EvaluatedPattern pattern, String option, String id) {
    return pattern.refusals().stream()
        .filter(refusal -> refusal.option().equals(option) && refusal.choice().equals(id))
        .findFirst();
  }

  /**
   * What is chosen for every option, in the order stated.
   *
   * @param sizes the pattern in every size of the document, with the same choices
   */
  public static List<ChosenOption> in(List<EvaluatedPattern> sizes, Wording wording) {
    EvaluatedPattern first = sizes.get(0);
    List<ChosenOption> all = new ArrayList<>();
    for (OptionSource option : first.source().options().options()) {
      String choice = first.variant().choices().get(option.name().text());
      if (choice != null) {
        all.add(
            new ChosenOption(
                option.label().text(),
                inWords(option, choice, wording),
                // Where nothing else can be made, its advantages are no use to anybody.
                isAlone(option, choice, sizes) ? null : option.text(),
                refused(option, sizes, wording)));
      }
    }
    return all;
  }

  private static boolean isAlone(OptionSource option, String choice, List<EvaluatedPattern> sizes) {
    String name = option.name().text();
    return option.ids().stream()
        .filter(id -> !id.equals(choice))
        .allMatch(id -> sizes.stream().allMatch(size -> refusal(size, name, id).isPresent()));
  }

  private static List<Refused> refused(
      OptionSource option, List<EvaluatedPattern> sizes, Wording wording) {
    String name = option.name().text();
    List<Refused> refused = new ArrayList<>();
    for (String id : option.ids()) {
      if (sizes.stream().anyMatch(size -> refusal(size, name, id).isPresent())) {
        String words =
            option.isYesOrNo()
                ? ""
                : wording.text("choice.refused", Map.of("choice", inWords(option, id, wording)));
        refused.add(new Refused(name, id, words));
      }
    }
    return refused;
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
   * As pages print it.
   *
   * @param line option and choice
   * @param text what to know about it, which may be nothing
   * @param reasons why something else can't be chosen, each a sentence or more
   */
  public record Line(String line, List<Object> text, List<String> reasons) {
    public Line {
      text = List.copyOf(text);
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * As pages print it.
   *
   * @param sizes the pattern in every size of the document
   */
  public Line printed(List<EvaluatedPattern> sizes, Wording wording, PrintForm form) {
    EvaluatedPattern first = sizes.get(0);
    SizeWords words =
        new SizeWords(sizes.stream().map(size -> size.variant().size()).toList(), wording);
    List<String> reasons = new ArrayList<>();
    for (Refused one : refused) {
      reasons.addAll(
          words.led(sizes.stream().map(size -> one.in(size, form).stream().toList()).toList()));
    }
    return new Line(
        line(wording),
        text == null ? List.of() : text.print(first.scope(), first.variant(), first.printing(form)),
        reasons);
  }
}
