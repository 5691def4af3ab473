package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Consumer;
import java.util.function.Function;
import org.lapmark.grade.Conditions;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.Checkpoint;
import org.lapmark.publish.output.OutputFolder;
import org.lapmark.publish.output.OutputLock;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;

/**
 * The order of the stages. Folders are worked on one after another, the variants and papers of a
 * folder in parallel; results and findings are joined in a fixed order, so that threads never show.
 */
final class Pipeline {
  private final Stages stages;
  private final int threads;
  private final Checkpoint checkpoint;

  Pipeline(Stages stages, int threads, Checkpoint checkpoint) {
    this.stages = stages;
    this.threads = threads;
    this.checkpoint = checkpoint;
  }

  List<Outcome> publish(List<Path> folders, Request request, Listener listener) throws IOException {
    List<Path> patterns = PatternFolders.distinct(folders);
    PatternFolders.refuseOverlap(patterns, request.output());
    TemplateTrial trial = new TemplateTrial(stages);
    if (!trial.passes()) {
      return trial.told(listener);
    }
    List<Paper> papers = request.papers().isEmpty() ? Papers.USUAL : request.papers();
    Refusals.refuse(request, papers);
    Orders orders = new Orders(patterns, request, papers, stages);
    orders.refuseUnfit();
    List<Outcome> outcomes = new ArrayList<>();
    if (orders.areDone()) {
      orders.all().forEach(order -> outcomes.add(order.told(listener)));
    } else {
      outcomes.addAll(publish(orders, trial, listener));
    }
    outcomes.addAll(trial.told(listener));
    return outcomes;
  }

  private List<Outcome> publish(Orders orders, TemplateTrial trial, Listener listener)
      throws IOException {
    Request request = orders.request();
    List<Outcome> outcomes = new ArrayList<>();
    try (Crew crew = new Crew(threads);
        OutputLock lock = OutputLock.take(request.output())) {
      Publication.Output output =
          (pattern, edition) -> new OutputFolder(lock.folder(), pattern, edition, checkpoint);
      for (Orders.Order order : orders.all()) {
        if (order.isDone()) {
          outcomes.add(order.told(listener));
          continue;
        }
        OpenedFolder one = order.take();
        Publication publication =
            new Publication(one, request, orders.papers(), listener, order::unchanged);
        outcomes.add(one.attempt(trial, listener, () -> publication.write(stages, crew, output)));
      }
    }
    return outcomes;
  }

  List<Outcome> check(List<Path> folders, Listener listener) {
    TemplateTrial trial = new TemplateTrial(stages);
    if (!trial.passes()) {
      return trial.told(listener);
    }
    List<Outcome> outcomes = new ArrayList<>();
    try (Crew crew = new Crew(threads)) {
      for (Path folder : PatternFolders.distinct(folders)) {
        OpenedFolder one = OpenedFolder.open(folder, stages);
        outcomes.add(
            one.attempt(
                trial,
                listener,
                () -> {
                  check(one, crew, trial.isOn(), listener);
                  return List.of();
                }));
      }
    }
    outcomes.addAll(trial.told(listener));
    return outcomes;
  }

  private void check(OpenedFolder one, Crew crew, boolean everyKind, Listener listener)
      throws IOException {
    Variants known = new Variants(one.source(), one.findings());
    List<Variant> variants = known.all();
    int sizes = (int) variants.stream().map(Variant::size).distinct().count();
    listener.begun(one.folder(), sizes, Papers.USUAL.size());
    Conditions conditions = new Conditions(one.source());
    List<EvaluatedPattern> graded = new Grading(stages, crew).gradeAll(one, variants, conditions);
    conditions.report(known.neverChosen(), known.isComplete(), one.findings());
    if (!one.findings().hasErrors()) {
      new Rehearsal(one, graded).make(stages, crew, everyKind);
    }
  }

  List<EvaluatedFolder> walk(List<Path> folders, List<String> sizes) {
    return evaluate(folders, sizes, one -> {}, one -> Grading.everyVariant(one, sizes));
  }

  List<EvaluatedFolder> grade(
      List<Path> folders, List<String> sizes, SortedMap<String, String> choices) {
    Request request = new Request(sizes, List.of(), choices, Path.of("")); // Nothing is written.
    return evaluate(
        folders,
        sizes,
        one -> Refusals.refuseChoices(one, request),
        one -> Grading.variants(one, request));
  }

  private List<EvaluatedFolder> evaluate(
      List<Path> folders,
      List<String> sizes,
      Consumer<OpenedFolder> refusal,
      Function<OpenedFolder, List<Variant>> variants) {
    List<OpenedFolder> opened =
        PatternFolders.distinct(folders).stream()
            .map(folder -> OpenedFolder.open(folder, stages))
            .toList();
    opened.forEach(one -> Refusals.refuseUnknownSizes(one, sizes));
    opened.forEach(refusal);
    List<EvaluatedFolder> walks = new ArrayList<>();
    try (Crew crew = new Crew(threads)) {
      for (OpenedFolder one : opened) {
        List<EvaluatedPattern> graded = new ArrayList<>();
        Outcome outcome =
            one.attempt(
                new TemplateTrial(stages),
                new Listener() {},
                () -> {
                  graded.addAll(new Grading(stages, crew).grade(one, variants.apply(one)));
                  return List.of();
                });
        walks.add(new EvaluatedFolder(outcome, graded));
      }
    }
    return walks;
  }
}
