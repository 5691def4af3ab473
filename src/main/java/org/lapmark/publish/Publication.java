package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.print.arrange.PlanQuality;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.FileNames;
import org.lapmark.publish.output.Manifest;
import org.lapmark.publish.output.OutputFolder;
import org.lapmark.publish.output.ToldBefore;
import org.lapmark.publish.product.Arrangements;
import org.lapmark.publish.product.LargePrint;
import org.lapmark.publish.product.Manuals;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.product.Run;
import org.lapmark.publish.request.ChosenPieces;
import org.lapmark.publish.request.Request;

/** Makes what is wanted of one folder, and writes it all at once. */
final class Publication {
  private final OpenedFolder one;
  private final Request request;
  private final List<Paper> papers;
  private final Listener listener;
  private final Supplier<Optional<String>> hash;
  private final List<String> omitted = new ArrayList<>();

  /**
   * A run over one folder.
   *
   * @param hash gives the hash of all that the files depend on once they are made, or nothing if
   *     that has changed since they were begun
   */
  Publication(
      OpenedFolder one,
      Request request,
      List<Paper> papers,
      Listener listener,
      Supplier<Optional<String>> hash) {
    this.hash = hash;
    this.one = one;
    this.request = request;
    this.papers = papers;
    this.listener = listener;
  }

  /**
   * Writes the files.
   *
   * @param output opens the folder of that name, for files of that edition
   * @return the files written, sorted; none of a folder with errors
   */
  List<Path> write(Stages stages, Crew crew, Output output) throws IOException {
    List<Variant> variants = Grading.variants(one, request);
    listener.begun(one.folder(), variants.size(), papers.size());
    if (!one.hasSizes()) {
      return List.of();
    }
    ChosenPieces pieces = Refusals.pieces(one, request);
    String pattern =
        one.name() + request.presentation().suffix() + measuredSuffix() + pieces.suffix();
    FileNames names = FileNames.of(pattern, one.source());
    OutputFolder folder = output.of(pattern, names.edition());
    folder.repair();
    List<EvaluatedPattern> graded = new Grading(stages, crew).grade(one, variants);
    if (one.findings().hasErrors() || graded.isEmpty()) {
      return List.of();
    }
    Workroom room =
        new Workroom(
            one,
            stages,
            crew,
            !request.extras().contains(Products.WITHOUT_BLANK_PAGES),
            Effort.FULL);
    List<EvaluatedPattern> printed = pieces.in(one.name(), graded, told()::omitted);
    Map<Variant, Manuals> manuals = manuals(room, pieces.isEverything() ? graded : List.of());
    if (one.findings().hasErrors()) {
      return List.of();
    }
    Run run =
        new Run(
            one.source(), request, papers, graded, printed, manuals, room.choices(variants), names);
    Arrangements arrangements = new Arrangements();
    try (OutputFolder.Draft draft = folder.draft()) {
      List<Manifest.Entry> entries =
          room.make(
              Products.wanted(request).stream()
                  .flatMap(product -> product.jobs(run).stream())
                  .toList(),
              draft,
              arrangements);
      arrangements.tell(printed, papers, told());
      if (one.findings().hasErrors()) {
        return List.of();
      }
      List<String> missing =
          request.extras().stream().flatMap(extra -> extra.missing(one.source()).stream()).toList();
      missing.forEach(what -> listener.omitted(one.folder(), what));
      omitted.addAll(missing);
      Findings told = one.told();
      ToldBefore said = new ToldBefore(told.sorted(), omitted);
      draft
          .publish(
              entries,
              old -> isReplaced(old, entries, names),
              told.leftOut() == 0 ? hash.get() : Optional.empty(),
              said)
          .forEach((file, kept) -> listener.setAside(one.folder(), file, kept));
      Path target = request.output().resolve(pattern);
      return entries.stream().map(entry -> target.resolve(entry.name())).sorted().toList();
    }
  }

  /** Opens folders of files. */
  @FunctionalInterface
  interface Output {
    OutputFolder of(String pattern, String edition);
  }

  private Map<Variant, Manuals> manuals(Workroom room, List<EvaluatedPattern> patterns)
      throws IOException {
    Map<Variant, Manuals> manuals =
        room.manuals(patterns, request.extras().contains(LargePrint.EXTRA));
    if (!request.extras().contains(Products.WALK)) {
      return manuals;
    }
    Map<Variant, Manuals> walked = new LinkedHashMap<>();
    manuals.forEach((variant, made) -> walked.put(variant, made.walked()));
    return walked;
  }

  /** Whether a file from before goes away: one that this run would have made anew. */
  private boolean isReplaced(Manifest.Entry old, List<Manifest.Entry> made, FileNames names) {
    List<String> sizes = request.sizes();
    boolean everything =
        sizes.isEmpty() && request.papers().isEmpty() && request.choices().isEmpty();
    return names.isOfThisEdition(old)
        && (sizes.isEmpty() || sizes.contains(old.size()))
        && (request.papers().isEmpty()
            || request.papers().stream().anyMatch(paper -> paper.id().equals(old.paper())))
        && (everything || made.stream().anyMatch(entry -> entry.choices().equals(old.choices())));
  }

  private Arrangements.Listener told() {
    return new Arrangements.Listener() {
      @Override
      public void arranged(String size, Paper paper, PlanQuality quality) {
        listener.arranged(one.folder(), size, paper.id(), quality);
      }

      @Override
      public void omitted(String what) {
        omitted.add(what);
        listener.omitted(one.folder(), what);
      }
    };
  }

  /** Files for one maker's printer never take the place of those for all. */
  private String measuredSuffix() {
    return papers.stream()
        .filter(Paper::isCorrected)
        .findFirst()
        .map(
            paper ->
                String.format(
                    Locale.ROOT,
                    ".measured-%.1fx%.1f",
                    paper.correction().across(),
                    paper.correction().down()))
        .orElse("");
  }
}
