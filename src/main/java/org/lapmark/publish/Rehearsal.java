package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.FileNames;
import org.lapmark.publish.output.Manifest;
import org.lapmark.publish.output.Receiver;
import org.lapmark.publish.product.Arrangements;
import org.lapmark.publish.product.Bench;
import org.lapmark.publish.product.Desk;
import org.lapmark.publish.product.Job;
import org.lapmark.publish.product.Manuals;
import org.lapmark.publish.product.Product;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.product.Run;
import org.lapmark.publish.product.VariantContents;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;

/**
 * Makes what a run without wishes publishes and keeps nothing of it, so that what can't be
 * published is found. Words are laid out, not drawn, once for all variants that consist of the
 * same, on the first paper; pieces are arranged on all, without searching on where they have found
 * a place; of what isn't as by default, words are set in the first size that has it. What isn't
 * done can't fail where this doesn't, for the program's own templates; a user's are set to the end.
 */
final class Rehearsal {
  private static final Receiver NOBODY =
      (name, size, paper, kind, choices, content) ->
          new Manifest.Entry(name, "", size, paper, kind, choices, "");

  private static final Request REQUEST = new Request(List.of(), List.of(), Path.of(""));

  private final OpenedFolder one;
  private final List<EvaluatedPattern> graded;
  private final FileNames names;

  Rehearsal(OpenedFolder one, List<EvaluatedPattern> graded) {
    this.one = one;
    this.graded = graded;
    this.names = FileNames.of(one.name(), one.source());
  }

  /**
   * Makes it.
   *
   * @param everyKind whether a document of each kind is made as well: only then templates of the
   *     user's own show what they do
   */
  void make(Stages stages, Crew crew, boolean everyKind) throws IOException {
    Workroom room = new Workroom(one, stages, crew, true, Effort.LEAST);
    Map<Variant, Manuals> manuals = room.manuals(graded, false);
    if (one.findings().hasErrors()) {
      return;
    }
    Map<Variant, String> choices =
        room.choices(graded.stream().map(EvaluatedPattern::variant).toList());
    Run run =
        new Run(
            one.source(),
            REQUEST,
            List.of(Papers.USUAL.get(0)),
            graded,
            everyKind ? onPaper(choices) : oneOfEachMakeup(onPaper(choices)),
            manuals,
            choices,
            names);
    List<Job> jobs = new ArrayList<>();
    for (Product product : Products.wanted(REQUEST)) {
      jobs.addAll(product.rehearsal(run));
    }
    if (everyKind && !manuals.isEmpty()) {
      jobs.add(Job.of(bench -> everyKind(bench.desk(), manuals)));
    }
    for (EvaluatedPattern pattern : graded) {
      for (Paper paper : Papers.USUAL) {
        jobs.add(Job.arranging(pattern, paper));
      }
    }
    room.make(jobs, NOBODY, new Arrangements());
  }

  /** The variants as by default, and the first with each other choice. */
  private List<EvaluatedPattern> onPaper(Map<Variant, String> choices) {
    Set<String> shown = new LinkedHashSet<>();
    return graded.stream()
        .filter(
            pattern -> {
              String chosen = choices.get(pattern.variant());
              return shown.add(chosen) || chosen.isEmpty();
            })
        .toList();
  }

  /**
   * Variants that consist of the same say the same with other values, which the documents of all
   * sizes have as well. The program's own templates do the same with any value; of a user's that
   * isn't known.
   */
  private static List<EvaluatedPattern> oneOfEachMakeup(List<EvaluatedPattern> patterns) {
    return VariantContents.groups(patterns).stream().map(group -> group.get(0)).toList();
  }

  /** Makes one document of each kind of one variant a size. */
  private List<Manifest.Entry> everyKind(Desk desk, Map<Variant, Manuals> manuals)
      throws IOException {
    Map<String, EvaluatedPattern> bySize = new LinkedHashMap<>();
    graded.forEach(pattern -> bySize.putIfAbsent(pattern.variant().size(), pattern));
    List<EvaluatedPattern> sizes = List.copyOf(bySize.values());
    Findings told = new Findings(); // All of it has been found already.
    Map<Variant, Manuals> all = new LinkedHashMap<>();
    Map<Variant, String> choices = new LinkedHashMap<>();
    for (EvaluatedPattern pattern : sizes) {
      choices.put(pattern.variant(), "");
      Manuals made = manuals.get(pattern.variant());
      if (made != null) {
        Optional<Manual> large =
            all.isEmpty() ? Optional.of(desk.enlarged(made.standard(), told)) : Optional.empty();
        all.put(pattern.variant(), new Manuals(made.standard(), large).walked());
      }
    }
    Run run =
        new Run(
            one.source(),
            REQUEST.with(Products.extras().toArray(Extra[]::new)),
            List.of(Papers.USUAL.get(0)),
            sizes,
            sizes.subList(0, 1),
            all,
            choices,
            names);
    Bench bench = new Bench(desk, told, NOBODY, new Arrangements());
    for (Product product : Products.ALL) {
      for (Job job : product.jobs(run).stream().limit(1).toList()) {
        job.work().at(bench);
      }
    }
    return List.of();
  }
}
