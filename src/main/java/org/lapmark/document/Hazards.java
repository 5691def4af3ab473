package org.lapmark.document;

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
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Printed;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.MakingSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.ThingSource;
import org.lapmark.text.Steps;
import org.lapmark.wording.Wording;

/** Which cautions a pattern calls for, and where. */
final class Hazards {
  private static final String BEFORE = "caution.";
  private static final String SHORT = ".short";
  private static final String TITLE = ".title";
  private static final String TEXT = ".text";

  private final Manual manual;
  private final Wording wording;
  private final Map<String, List<String>> byThing = new LinkedHashMap<>();

  Hazards(Manual manual, Wording wording) {
    this.manual = manual;
    this.wording = wording;
    PatternSource source = manual.pattern().source();
    source.making().tools().forEach(tool -> add(tool.id(), tool.hazards()));
    source.materials().forEach(thing -> add(thing.id(), thing.hazards()));
    source.hardware().forEach(thing -> add(thing.id(), thing.hazards()));
  }

  private void add(SourceText id, List<SourceText> hazards) {
    byThing.put(id.text(), hazards.stream().map(SourceText::text).filter(this::hasWords).toList());
  }

  /** The hazards that there are words for. */
  static List<String> known(Wording wording) {
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
  List<MakingSource.ToolSource> toolsUsed() {
    Set<String> used = new LinkedHashSet<>();
    for (StepSource step : manual.pattern().source().steps()) {
      step.uses().forEach(use -> used.add(use.text()));
    }
    return manual.pattern().source().making().tools().stream()
        .filter(tool -> used.contains(tool.id().text()))
        .toList();
  }

  /** For each step, by number, the short lines of the hazards that it is the first to meet. */
  Map<Integer, List<String>> atSteps() {
    Set<String> met = new LinkedHashSet<>();
    Map<Integer, List<String>> lines = new LinkedHashMap<>();
    List<Steps.Step> steps = manual.steps().all();
    List<StepSource> sources = manual.pattern().source().steps();
    for (int i = 0; i < steps.size(); i++) {
      List<String> own = new ArrayList<>();
      for (SourceText use : sources.get(i).uses()) {
        for (String hazard : byThing.getOrDefault(use.text(), List.of())) {
          if (met.add(hazard)) {
            own.add(say(hazard, SHORT));
          }
        }
      }
      lines.put(steps.get(i).number(), own);
    }
    return lines;
  }

  /** The short lines of the hazards of the article's use. */
  List<String> inUse() {
    return use().stream().map(hazard -> say(hazard, SHORT)).toList();
  }

  private List<String> use() {
    return manual.pattern().source().making().useHazards().stream()
        .map(SourceText::text)
        .filter(this::hasWords)
        .distinct()
        .toList();
  }

  /** Every caution once: of tools used, materials, hardware, use. */
  List<ManualPages.Caution> gathered() {
    Set<String> hazards = new LinkedHashSet<>();
    toolsUsed().forEach(tool -> hazards.addAll(byThing.get(tool.id().text())));
    List<ThingSource> things = new ArrayList<>(manual.pattern().source().materials());
    things.addAll(manual.pattern().source().hardware());
    things.forEach(thing -> hazards.addAll(byThing.get(thing.id().text())));
    hazards.addAll(use());
    return hazards.stream()
        .map(hazard -> new ManualPages.Caution(say(hazard, TITLE), say(hazard, TEXT)))
        .toList();
  }

  private String say(String hazard, String part) {
    Optional<String> limit =
        Optional.ofNullable(manual.pattern().source().making().loadLimit()).flatMap(this::printed);
    return wording.text(BEFORE + hazard + part, Map.of("limit", limit.orElse("none")));
  }

  private Optional<String> printed(TemplateText text) {
    List<String> names = new ArrayList<>();
    List<List<Object>> bySize = new ArrayList<>();
    for (GradedPattern pattern : manual.sizes()) {
      names.add(pattern.variant().size());
      Printed.of(text, pattern, manual.form(), new Findings())
          .ifPresent(printed -> bySize.add(printed.parts()));
    }
    return bySize.size() < names.size()
        ? Optional.empty()
        : Optional.of(SizeWords.plain(new SizeWords(names, wording).runs(bySize)));
  }
}
