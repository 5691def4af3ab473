package org.lapmark.publish;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.manual.Manual;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.publish.output.FileNames;
import org.lapmark.publish.output.Manifest;
import org.lapmark.publish.output.Receiver;
import org.lapmark.publish.product.Arrangements;
import org.lapmark.publish.product.Bench;
import org.lapmark.publish.product.Desk;
import org.lapmark.publish.product.Job;
import org.lapmark.publish.product.Manuals;

/** Where the files of one folder are made: fonts belong to one thread, so each has a desk. */
final class Workroom {
  private final OpenedFolder one;
  private final Crew crew;
  private final ThreadLocal<Desk> desks;

  Workroom(OpenedFolder one, Stages stages, Crew crew, boolean blankPages, Effort effort) {
    this.one = one;
    this.crew = crew;
    Locale language = one.source().masthead().language();
    this.desks = ThreadLocal.withInitial(() -> stages.desk(language, blankPages, effort));
  }

  /** What a variant chooses other than by default, as manifest and file names know it. */
  Map<Variant, String> choices(List<Variant> variants) {
    Variants known = new Variants(one.source(), one.findings());
    Map<Variant, String> choices = new LinkedHashMap<>();
    variants.forEach(made -> choices.put(made, FileNames.choices(known.unusual(made))));
    return choices;
  }

  /** What the instructions of each variant say. */
  Map<Variant, Manuals> manuals(List<EvaluatedPattern> patterns, boolean largePrint)
      throws IOException {
    List<Crew.Task<Manuals>> tasks = new ArrayList<>();
    for (EvaluatedPattern pattern : patterns) {
      tasks.add(
          findings -> {
            Manual standard = desks.get().manual(pattern, findings);
            return new Manuals(
                standard,
                largePrint
                    ? Optional.of(desks.get().enlarged(standard, findings))
                    : Optional.empty());
          });
    }
    List<Variant> variants = patterns.stream().map(EvaluatedPattern::variant).toList();
    Variants known = new Variants(one.source(), one.findings());
    Map<Variant, Manuals> manuals = new LinkedHashMap<>();
    crew.all(tasks, found -> known.join(found, variants))
        .forEach(made -> manuals.put(made.standard().pattern().variant(), made));
    return manuals;
  }

  /** Does all jobs, and gives the files made in their order. */
  List<Manifest.Entry> make(List<Job> jobs, Receiver receiver, Arrangements arrangements)
      throws IOException {
    List<Crew.Task<List<Manifest.Entry>>> tasks = new ArrayList<>();
    for (Job.Work work : Job.together(jobs)) {
      tasks.add(findings -> work.at(new Bench(desks.get(), findings, receiver, arrangements)));
    }
    return crew.all(tasks, found -> found.forEach(one.findings()::addAll)).stream()
        .flatMap(List::stream)
        .toList();
  }
}
