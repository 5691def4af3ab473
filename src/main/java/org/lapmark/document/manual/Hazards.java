package org.lapmark.document.manual;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.CareSource;
import org.lapmark.source.MakingSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/** Which cautions a pattern calls for, where, and in which words: for every kind of document. */
public final class Hazards {
  private static final String BEFORE = "caution.";
  private static final String SHORT = ".short";
  private static final String TITLE = ".title";
  private static final String TEXT = ".text";
  private static final String NO_LIMIT = "none";

  private final List<EvaluatedPattern> patterns;
  private final PatternSource source;
  private final PrintForm form;
  private final Wording wording;
  private final Map<String, List<String>> byThing = new LinkedHashMap<>();

  /**
   * The cautions of a document.
   *
   * @param patterns the pattern in every size that the document speaks of; all consist of the same
   * @param form how a load limit is printed
   */
  public Hazards(List<EvaluatedPattern> patterns, PrintForm form, Wording wording) {
    this.patterns = List.copyOf(patterns);
    this.source = patterns.get(0).source();
    this.form = form;
    this.wording = wording;
    boolean child =
        patterns.stream()
            .anyMatch(one -> source.making().use().agesOf(one.variant().size()).isChild());
    source.making().tools().forEach(tool -> add(tool.id(), tool.care(), child));
    source.materials().forEach(thing -> add(thing.id(), thing.care(), child));
    source.hardware().forEach(thing -> add(thing.id(), thing.care(), child));
  }

  public static Hazards of(Manual manual, Wording wording) {
    return new Hazards(manual.sizes(), manual.form(), wording);
  }

  private void add(SourceText id, CareSource care, boolean child) {
    byThing.put(id.text(), care.hazards(child).stream().filter(this::hasWords).toList());
  }

  /** The hazards that there are words for. */
  public static List<String> known(Wording wording) {
    List<String> known = new ArrayList<>();
    for (String key : wording.messages().keySet()) {
      if (key.startsWith(BEFORE) && key.endsWith(TEXT)) {
        known.add(key.substring(BEFORE.length(), key.length() - TEXT.length()));
      }
    }
    Collections.sort(known);
    return known;
  }

  private boolean hasWords(String hazard) {
    return wording.messages().containsKey(BEFORE + hazard + TEXT);
  }

  /** Tools that a step uses, as stated. */
  public List<MakingSource.ToolSource> toolsUsed() {
    Set<String> used = new LinkedHashSet<>();
    for (StepSource step : source.steps()) {
      step.uses().forEach(use -> used.add(use.text()));
    }
    return source.making().tools().stream()
        .filter(tool -> used.contains(tool.id().text()))
        .toList();
  }

  /** The short lines of every step, in their order, whatever earlier steps have said. */
  public List<List<String>> atEveryStep() {
    return source.steps().stream().map(step -> lines(met(step))).toList();
  }

  /** The short lines of every step, in their order: of hazards that it is the first to meet. */
  public List<List<String>> atFirstSteps() {
    Set<String> known = new LinkedHashSet<>();
    List<List<String>> lines = new ArrayList<>();
    for (StepSource step : source.steps()) {
      Set<String> own = met(step);
      own.removeAll(known);
      known.addAll(own);
      lines.add(lines(own));
    }
    return lines;
  }

  private Set<String> met(StepSource step) {
    Set<String> met = new LinkedHashSet<>();
    step.uses().forEach(use -> met.addAll(byThing.getOrDefault(use.text(), List.of())));
    return met;
  }

  private List<String> lines(Set<String> hazards) {
    return hazards.stream().map(hazard -> say(hazard, SHORT, limit())).toList();
  }

  /** The short lines of the hazards of the article's use. */
  public List<String> inUse() {
    return lines(use());
  }

  private Set<String> use() {
    Set<String> use = new LinkedHashSet<>();
    for (EvaluatedPattern pattern : patterns) {
      use.addAll(source.making().use().hazards(pattern.variant().size()));
    }
    use.removeIf(hazard -> !hasWords(hazard));
    return use;
  }

  /** Every hazard once: of tools used, materials, hardware, use. */
  public List<String> gathered() {
    Set<String> hazards = new LinkedHashSet<>();
    toolsUsed().forEach(tool -> hazards.addAll(byThing.get(tool.id().text())));
    List<ThingSource> things = new ArrayList<>(source.materials());
    things.addAll(source.hardware());
    things.forEach(thing -> hazards.addAll(byThing.get(thing.id().text())));
    hazards.addAll(use());
    return List.copyOf(hazards);
  }

  /** What a hazard is called. */
  public String title(String hazard) {
    return wording.text(BEFORE + hazard + TITLE);
  }

  /** A caution in full, where one text stands for all sizes. */
  public String text(String hazard) {
    return say(hazard, TEXT, limit());
  }

  /** A caution in full for one size; nothing when a load limit can't be printed. */
  public Optional<String> text(
      String hazard, EvaluatedPattern pattern, PrintForm inForm, Findings findings) {
    TemplateText load = source.making().use().loadLimit();
    if (load == null) {
      return Optional.of(say(hazard, TEXT, NO_LIMIT));
    }
    return PrintedText.of(load, pattern, inForm, findings)
        .map(limit -> say(hazard, TEXT, limit.text()));
  }

  private String say(String hazard, String part, String limit) {
    return wording.text(BEFORE + hazard + part, Map.of("limit", limit));
  }

  private String limit() {
    TemplateText load = source.making().use().loadLimit();
    if (load == null) {
      return NO_LIMIT;
    }
    List<String> names = new ArrayList<>();
    List<List<Object>> bySize = new ArrayList<>();
    for (EvaluatedPattern pattern : patterns) {
      names.add(pattern.variant().size());
      PrintedText.of(load, pattern, form, new Findings())
          .ifPresent(printed -> bySize.add(printed.parts()));
    }
    return bySize.size() < names.size()
        ? NO_LIMIT
        : SizeWords.plain(new SizeWords(names, wording).runs(bySize));
  }
}
