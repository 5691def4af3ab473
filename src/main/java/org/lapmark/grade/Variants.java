package org.lapmark.grade;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Variant;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.OptionsSource.ForbiddenSource;
import org.lapmark.source.OptionsSource.OptionSource;
import org.lapmark.source.PatternSource;

/** The variants of a pattern: which there are, what they are called, which can't be made. */
public final class Variants {
  /** How many combinations of one size are all looked at; of more, every two choices meet. */
  public static final int MOST_COMBINATIONS = 256;

  private final PatternSource source;
  private final OptionsSource options;
  private final Findings findings;
  private final Map<String, SortedMap<String, String>> standards = new LinkedHashMap<>();
  private final Set<String> never = new LinkedHashSet<>();
  private boolean complete = true;

  /**
   * The variants of a pattern.
   *
   * @param source the pattern as read, whole
   * @param findings where problems go
   */
  public Variants(PatternSource source, Findings findings) {
    this.source = source;
    this.options = source.options();
    this.findings = findings;
  }

  static Variant completed(PatternSource source, Variant variant, Findings findings) {
    return source.options().options().isEmpty()
        ? variant
        : new Variants(source, findings).of(variant.size(), variant.choices());
  }

  /**
   * A size with what is chosen by default.
   *
   * @param size the size
   * @return the variant
   */
  public Variant standard(String size) {
    return of(size, Collections.emptySortedMap());
  }

  /**
   * A size with some choices; what isn't chosen is as by default.
   *
   * @param size the size
   * @param choices the choice by the option's name
   * @return the variant
   */
  public Variant of(String size, Map<String, String> choices) {
    SortedMap<String, String> all = new TreeMap<>(standards.computeIfAbsent(size, this::defaults));
    all.putAll(choices);
    return new Variant(size, all);
  }

  private SortedMap<String, String> defaults(String size) {
    SortedMap<String, String> defaults = new TreeMap<>();
    for (OptionSource option : options.options()) {
      String choice = option.standard();
      if (choice == null) {
        Variant undecided = Variant.ofSize(size);
        choice =
            holds(option.standardWhen(), scope(undecided)) ? OptionsSource.YES : OptionsSource.NO;
      }
      defaults.put(option.name().text(), choice);
    }
    return defaults;
  }

  /**
   * Whether a condition holds. What is wrong with it is reported; what is wrong with what it asks
   * for shows where the pattern is evaluated.
   */
  private boolean holds(Formula condition, PatternScope scope) {
    try {
      return condition.holds(scope);
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (DemandGraph.Unavailable e) {
      // Reported where the pattern is evaluated.
    }
    return false;
  }

  /**
   * Why a variant can't be made.
   *
   * @param variant the variant, with a choice for every option
   * @return the first reason, or nothing when it can be made
   */
  public Optional<String> forbidden(Variant variant) {
    return breach(variant).map(one -> reason(one, variant));
  }

  /**
   * What a variant can't be changed to by another choice of one option.
   *
   * @param variant the variant, with a choice for every option
   * @return by option and choice in the order stated, each with the first reason
   */
  List<Refusal> refusals(Variant variant) {
    List<Refusal> refusals = new ArrayList<>();
    if (options.forbidden().isEmpty()) {
      return refusals;
    }
    for (OptionSource option : options.options()) {
      String name = option.name().text();
      for (String choice : option.ids()) {
        if (!choice.equals(variant.choices().get(name))) {
          SortedMap<String, String> choices = new TreeMap<>(variant.choices());
          choices.put(name, choice);
          Variant other = new Variant(variant.size(), choices);
          breach(other)
              .ifPresent(
                  one ->
                      refusals.add(new Refusal(name, choice, one.reason(), scope(other), other)));
        }
      }
    }
    return refusals;
  }

  private Optional<ForbiddenSource> breach(Variant variant) {
    if (options.forbidden().isEmpty()) {
      return Optional.empty();
    }
    PatternScope scope = scope(variant);
    return options.forbidden().stream().filter(one -> holds(one.when(), scope)).findFirst();
  }

  private PatternScope scope(Variant variant) {
    return new PatternEvaluator(source, variant, new Findings()).scope();
  }

  private String reason(ForbiddenSource one, Variant variant) {
    return Printed.of(one.reason(), scope(variant), variant, source.masthead().form(), findings)
        .map(Printed::text)
        .orElse(one.reason().source().text());
  }

  /**
   * The variants to look at: of every size all combinations that aren't forbidden, the default
   * first; where there are more than {@link #MOST_COMBINATIONS} of them, so many that every two
   * choices meet that can, and a finding says so. Also reports what is forbidden that shouldn't be.
   *
   * @return the variants, by size in the order of the size table
   */
  public List<Variant> all() {
    List<Variant> all = new ArrayList<>();
    if (source.sizes() == null) {
      return all;
    }
    boolean whole = true;
    for (String size : source.sizes().sizes()) {
      if (checkDefault(size)) {
        all.addAll(of(size));
      } else {
        whole = false;
      }
    }
    if (whole && !all.isEmpty()) {
      reportNeverChosen(all);
      reportNeverForbidding();
    }
    return Collections.unmodifiableList(all);
  }

  /** Reports what can't be chosen in any size. */
  private void reportNeverChosen(List<Variant> all) {
    for (OptionSource option : options.options()) {
      String name = option.name().text();
      for (String id : option.ids()) {
        if (all.stream().anyMatch(variant -> id.equals(variant.choices().get(name)))) {
          continue;
        }
        never.add(name);
        if (source.sizes().sizes().stream()
            .anyMatch(size -> id.equals(standard(size).choices().get(name)))) {
          continue; // Told as a default that can't be made.
        }
        Variant first = all.get(0);
        SortedMap<String, String> choices = new TreeMap<>(first.choices());
        choices.put(name, id);
        Variant forbidden = new Variant(first.size(), choices);
        findings.add(
            GradeCode.CHOICE_NEVER,
            place(option, id),
            "option",
            name,
            "choice",
            id,
            "kind",
            option.isYesOrNo() ? id : "choice",
            "reason",
            forbidden(forbidden).orElse(""));
      }
    }
  }

  /** Where a choice is stated. */
  private static Position place(OptionSource option, String id) {
    return option.choices().stream()
        .filter(choice -> choice.id().text().equals(id))
        .findFirst()
        .map(choice -> choice.id().position())
        .orElse(option.name().position());
  }

  /** Reports what never forbids anything. */
  private void reportNeverForbidding() {
    Set<ForbiddenSource> idle = new LinkedHashSet<>(options.forbidden());
    for (String size : source.sizes().sizes()) {
      Combinations combinations = new Combinations(slots(standard(size)), choices -> true);
      if (combinations.count() > MOST_COMBINATIONS) {
        return;
      }
      for (SortedMap<String, String> choices : combinations.all()) {
        PatternScope scope = scope(new Variant(size, choices));
        idle.removeIf(one -> mayHold(one.when(), scope));
      }
    }
    idle.forEach(
        one ->
            findings.add(GradeCode.WHEN_NEVER, one.when().text().position(), "kind", "forbidden"));
  }

  /** Whether a condition holds or can't be computed. */
  private static boolean mayHold(Formula condition, PatternScope scope) {
    try {
      return condition.holds(scope);
    } catch (FindingException | DemandGraph.Unavailable e) {
      return true;
    }
  }

  /**
   * The options of which a choice can't be made in any size.
   *
   * @return their names, once {@link #all} has been asked for
   */
  public Set<String> neverChosen() {
    return Collections.unmodifiableSet(never);
  }

  /**
   * Whether {@link #all} gave every combination.
   *
   * @return false when they were too many
   */
  public boolean isComplete() {
    return complete;
  }

  /**
   * Reports a default that can't be made.
   *
   * @param size the size
   * @return false when nothing at all can be made in the size, which is then reported
   */
  public boolean checkDefault(String size) {
    Variant standard = standard(size);
    Optional<ForbiddenSource> breach = breach(standard);
    if (breach.isEmpty()) {
      return true;
    }
    Position place = breach.get().when().text().position();
    List<Variant> possible = of(size);
    if (possible.isEmpty()) {
      findings.add(GradeCode.ALL_FORBIDDEN, place, "size", size);
      return false;
    }
    // A default that can't be made whatever else is chosen is wrong itself.
    for (OptionSource option : options.options()) {
      String name = option.name().text();
      String chosen = standard.choices().get(name);
      if (possible.stream().noneMatch(one -> chosen.equals(one.choices().get(name)))) {
        place = option.name().position();
      }
    }
    findings.add(
        GradeCode.DEFAULT_FORBIDDEN, place, "size", size, "reason", reason(breach.get(), standard));
    return true;
  }

  private List<Variant> of(String size) {
    Combinations combinations =
        new Combinations(
            slots(standard(size)), choices -> breach(new Variant(size, choices)).isEmpty());
    if (combinations.count() <= MOST_COMBINATIONS) {
      return combinations.all().stream().map(one -> new Variant(size, one)).toList();
    }
    complete = false;
    List<Variant> some = combinations.pairs().stream().map(one -> new Variant(size, one)).toList();
    if (!some.isEmpty()) {
      findings.add(
          GradeCode.VARIANTS_IN_PAIRS,
          options.options().get(0).name().position(),
          "limit",
          MOST_COMBINATIONS,
          "count",
          some.size(),
          "size",
          size);
    }
    return some;
  }

  /** What can be chosen, the default first. */
  private List<Combinations.Slot> slots(Variant standard) {
    List<Combinations.Slot> slots = new ArrayList<>();
    for (OptionSource option : options.options()) {
      String name = option.name().text();
      List<String> ids = new ArrayList<>(option.ids());
      ids.remove(standard.choices().get(name));
      ids.add(0, standard.choices().get(name));
      slots.add(new Combinations.Slot(name, ids));
    }
    return slots;
  }

  /**
   * What a variant chooses other than by default.
   *
   * @param variant the variant
   * @return the choice by the option's name, in the order of the options
   */
  public Map<String, String> unusual(Variant variant) {
    Map<String, String> standard = standard(variant.size()).choices();
    Map<String, String> unusual = new LinkedHashMap<>();
    for (OptionSource option : options.options()) {
      String name = option.name().text();
      String choice = variant.choices().get(name);
      if (choice != null && !choice.equals(standard.get(name))) {
        unusual.put(name, choice);
      }
    }
    return Collections.unmodifiableMap(unusual);
  }

  /**
   * A variant as findings name it: the size, and what is chosen other than by default.
   *
   * @param variant the variant
   * @return such as {@code M}, {@code M with piping} or {@code M without piping, closure flap}
   */
  public String described(Variant variant) {
    List<String> words = new ArrayList<>();
    unusual(variant)
        .forEach(
            (name, choice) -> {
              boolean yesOrNo = options.option(name).map(OptionSource::isYesOrNo).orElse(false);
              if (!yesOrNo) {
                words.add(name + " " + choice);
              } else {
                words.add((choice.equals(OptionsSource.YES) ? "with " : "without ") + name);
              }
            });
    if (words.isEmpty()) {
      return variant.size();
    }
    String first = words.get(0);
    boolean joined = first.startsWith("with");
    return variant.size() + (joined ? " " : ", ") + String.join(", ", words);
  }

  /**
   * Adds what was found in several variants. What shows in a size as by default is added for each
   * size, so that whoever tells it can name them all; what other choices show as well isn't said
   * again, and what only they show is said once, naming the first.
   *
   * @param found what was found, by variant
   * @param variants the variants in the same order
   */
  public void join(List<Findings> found, List<Variant> variants) {
    Set<Finding> seen = new LinkedHashSet<>();
    for (int i = 0; i < variants.size(); i++) {
      Variant variant = variants.get(i);
      findings.addAll(
          found.get(i),
          finding -> {
            if (!variant.size().equals(finding.arguments().get("size"))) {
              return Optional.of(finding);
            }
            Map<String, Object> rest = new LinkedHashMap<>(finding.arguments());
            rest.remove("size");
            boolean first = seen.add(new Finding(finding.code(), finding.position(), rest));
            if (unusual(variant).isEmpty()) {
              return Optional.of(finding);
            }
            if (!first) {
              return Optional.empty();
            }
            Map<String, Object> named = new LinkedHashMap<>(finding.arguments());
            named.put("size", described(variant));
            return Optional.of(new Finding(finding.code(), finding.position(), named));
          });
    }
  }

  /**
   * Some of the variants, among them the first, in which together every choice occurs that occurs
   * in any.
   *
   * @param variants variants of one size
   * @return some of them in the same order
   */
  public static List<Variant> everyChoice(List<Variant> variants) {
    Set<Map.Entry<String, String>> seen = new LinkedHashSet<>();
    List<Variant> some = new ArrayList<>();
    for (Variant variant : variants) {
      if (seen.addAll(variant.choices().entrySet()) || some.isEmpty()) {
        some.add(variant);
      }
    }
    return Collections.unmodifiableList(some);
  }
}
