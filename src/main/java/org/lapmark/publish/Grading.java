package org.lapmark.publish;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.grade.Conditions;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.publish.request.Request;

/** Evaluates the variants of a folder. */
record Grading(Stages stages, Crew crew) {
  /** Evaluates variants and holds them against each other. */
  List<EvaluatedPattern> grade(OpenedFolder one, List<Variant> variants) throws IOException {
    List<Crew.Task<EvaluatedPattern>> tasks = new ArrayList<>();
    for (Variant variant : variants) {
      tasks.add(findings -> stages.grade(one.source(), variant, findings));
    }
    Variants known = new Variants(one.source(), one.findings());
    List<EvaluatedPattern> graded = crew.all(tasks, found -> known.join(found, variants));
    stages.across(graded, one.findings());
    return graded;
  }

  /**
   * Evaluates all variants, one size after another, and keeps so many that every choice occurs:
   * they stand for the others on paper.
   */
  List<EvaluatedPattern> gradeAll(OpenedFolder one, List<Variant> variants, Conditions conditions)
      throws IOException {
    List<EvaluatedPattern> kept = new ArrayList<>();
    Map<String, List<Variant>> bySize = new LinkedHashMap<>();
    variants.forEach(
        variant ->
            bySize.computeIfAbsent(variant.size(), unused -> new ArrayList<>()).add(variant));
    for (List<Variant> ofSize : bySize.values()) {
      List<Variant> some = Variants.everyChoice(ofSize);
      for (EvaluatedPattern pattern : grade(one, ofSize)) {
        conditions.see(pattern);
        if (some.contains(pattern.variant())) {
          kept.add(pattern);
        }
      }
    }
    return kept;
  }

  /** All variants of the sizes wanted, or of every size. */
  static List<Variant> everyVariant(OpenedFolder one, List<String> sizes) {
    return new Variants(one.source(), one.findings())
        .all().stream()
            .filter(variant -> sizes.isEmpty() || sizes.contains(variant.size()))
            .toList();
  }

  /** One variant for each of the sizes wanted, or for every size, with the choices wanted. */
  static List<Variant> variants(OpenedFolder one, Request request) {
    if (!one.hasSizes()) {
      return List.of();
    }
    List<Variant> variants = new ArrayList<>();
    Variants all = new Variants(one.source(), one.findings());
    for (String size : one.source().sizes().sizes()) {
      if (request.sizes().isEmpty() || request.sizes().contains(size)) {
        if (request.choices().isEmpty()) {
          all.checkDefault(size);
        }
        variants.add(all.of(size, request.choices()));
      }
    }
    return variants;
  }
}
