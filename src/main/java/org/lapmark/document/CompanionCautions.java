package org.lapmark.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.Printed;
import org.lapmark.source.MakingSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/** Chooses the cautions that tools, materials, hardware and use call for. */
final class CompanionCautions {
  private final CompanionSizes sizes;
  private final Map<String, List<String>> hazards = new LinkedHashMap<>();

  CompanionCautions(CompanionSizes sizes) {
    this.sizes = sizes;
    PatternSource source = sizes.source();
    for (MakingSource.ToolSource tool : source.making().tools()) {
      hazards.put(tool.id().text(), texts(tool.hazards()));
    }
    for (List<ThingSource> things : List.of(source.materials(), source.hardware())) {
      things.forEach(thing -> hazards.put(thing.id().text(), texts(thing.hazards())));
    }
  }

  /** The ids of the tools that a step uses, in the order stated. */
  List<MakingSource.ToolSource> tools() {
    Set<String> used = new LinkedHashSet<>();
    sizes.source().steps().forEach(step -> used.addAll(texts(step.uses())));
    return sizes.source().making().tools().stream()
        .filter(tool -> used.contains(tool.id().text()))
        .toList();
  }

  /** One line a hazard of what a step uses. */
  List<String> at(StepSource step) {
    Set<String> found = new LinkedHashSet<>();
    texts(step.uses()).forEach(id -> found.addAll(hazards.getOrDefault(id, List.of())));
    return found.stream().filter(this::isKnown).map(id -> say("caution." + id + ".short")).toList();
  }

  /** A caution in full. */
  record Caution(String title, SizedText text) {}

  /** All cautions of the pattern, each once: of its use, then of tools, materials and hardware. */
  List<Caution> all() {
    Set<String> found = new LinkedHashSet<>(texts(sizes.source().making().useHazards()));
    tools().forEach(tool -> found.addAll(texts(tool.hazards())));
    for (List<ThingSource> things :
        List.of(sizes.source().materials(), sizes.source().hardware())) {
      things.forEach(thing -> found.addAll(texts(thing.hazards())));
    }
    List<Caution> cautions = new ArrayList<>();
    for (String id : found) {
      if (isKnown(id)) {
        cautions.add(new Caution(say("caution." + id + ".title"), text(id)));
      }
    }
    return cautions;
  }

  private SizedText text(String id) {
    return sizes.sized(
        (pattern, form) -> {
          var load = sizes.source().making().loadLimit();
          String limit =
              load == null
                  ? "none"
                  : Printed.of(load, pattern, form, sizes.findings())
                      .map(Printed::text)
                      .orElse("none");
          return sizes.wording().text("caution." + id + ".text", Map.of("limit", limit));
        });
  }

  private boolean isKnown(String id) {
    Wording wording = sizes.wording();
    return wording.messages().containsKey("caution." + id + ".text");
  }

  private String say(String key) {
    return sizes.wording().text(key);
  }

  private static List<String> texts(List<SourceText> texts) {
    return texts.stream().map(SourceText::text).toList();
  }
}
