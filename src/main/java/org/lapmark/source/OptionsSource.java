package org.lapmark.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Ref;

/**
 * What a maker can choose, and what depends on it.
 *
 * @param options the options, in the order stated
 * @param forbidden what can't be combined
 * @param conditions when something belongs to a variant; what isn't here belongs to every one
 * @param unread what is stated and couldn't be read, or of which nobody can tell to which variants
 *     it belongs: all this has been reported, and what asks for it is no further mistake
 */
public record OptionsSource(
    List<OptionSource> options,
    List<ForbiddenSource> forbidden,
    Map<Ref, Formula> conditions,
    Set<Ref> unread) {
  /** A choice of yes. */
  public static final String YES = "yes";

  /** A choice of no. */
  public static final String NO = "no";

  /** Nothing can be chosen. */
  public static final OptionsSource NONE =
      new OptionsSource(List.of(), List.of(), Collections.emptyMap(), Collections.emptySet());

  /** Copies the collections, keeping their order. */
  public OptionsSource {
    options = List.copyOf(options);
    forbidden = List.copyOf(forbidden);
    conditions = Collections.unmodifiableMap(new LinkedHashMap<>(conditions));
    unread = Collections.unmodifiableSet(new LinkedHashSet<>(unread));
  }

  /** Whether something is stated of which too little could be read to know it. */
  public boolean isUnread(Ref what) {
    return unread.contains(what);
  }

  /**
   * An option by its name.
   *
   * @param name the name
   * @return the option, if there is one
   */
  public Optional<OptionSource> option(String name) {
    return options.stream().filter(option -> option.name().text().equals(name)).findFirst();
  }

  /**
   * Something that is chosen: yes or no, or one of several.
   *
   * @param name its name in formulas
   * @param label what readers see
   * @param choices what it is chosen from; empty for yes or no
   * @param standard what is chosen where nobody says so: a choice's id, {@code yes} or {@code no};
   *     null where a formula says it
   * @param standardWhen when {@code yes} is chosen where nobody says so: a condition on the size
   *     and the size table; null where {@code standard} says it
   * @param text what readers should know before they choose, or null
   */
  public record OptionSource(
      SourceText name,
      SourceText label,
      List<ChoiceSource> choices,
      String standard,
      Formula standardWhen,
      TemplateText text) {
    /** Copies the list. */
    public OptionSource {
      choices = List.copyOf(choices);
    }

    /**
     * Whether it is a matter of yes or no.
     *
     * @return false when it is one of several
     */
    public boolean isYesOrNo() {
      return choices.isEmpty();
    }

    /**
     * Everything that can be chosen.
     *
     * @return the ids in the order stated, or {@code yes} and {@code no}
     */
    public List<String> ids() {
      return isYesOrNo()
          ? List.of(YES, NO)
          : choices.stream().map(choice -> choice.id().text()).toList();
    }
  }

  /**
   * One of several.
   *
   * @param id its name in formulas
   * @param label what readers see
   */
  public record ChoiceSource(SourceText id, SourceText label) {}

  /**
   * A combination that can't be made.
   *
   * @param when a condition on options, the size and measures
   * @param reason why it can't be made
   */
  public record ForbiddenSource(Formula when, TemplateText reason) {}
}
