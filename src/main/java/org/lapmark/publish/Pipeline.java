package org.lapmark.publish;

import com.ibm.icu.text.Normalizer2;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Nearest;
import org.lapmark.grade.Conditions;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.print.Paper;
import org.lapmark.print.PlanQuality;
import org.lapmark.print.SheetPlan;
import org.lapmark.publish.Publisher.Listener;
import org.lapmark.publish.Publisher.Outcome;
import org.lapmark.publish.Publisher.Result;
import org.lapmark.publish.output.Checkpoint;
import org.lapmark.publish.output.FileNames;
import org.lapmark.publish.output.Manifest;
import org.lapmark.publish.output.OutputFolder;
import org.lapmark.publish.output.OutputLock;
import org.lapmark.publish.output.Receiver;
import org.lapmark.publish.request.ChosenPieces;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.ExtrasWanted;
import org.lapmark.publish.request.Presentation;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.PatternSource;

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
    List<Path> patterns = distinct(folders);
    refuseOverlap(patterns, request.output());
    TemplateTrial trial = new TemplateTrial(stages);
    if (!trial.passes()) {
      return trial.told(listener);
    }
    Map<Path, Opened> opened = new LinkedHashMap<>();
    for (Path folder : patterns) {
      opened.put(folder, open(folder).presented(request.presentation()));
    }
    List<Paper> papers = request.papers().isEmpty() ? Publisher.PAPERS : request.papers();
    opened.values().forEach(one -> refuseUnknownSizes(one, request.sizes()));
    opened.values().forEach(one -> refuseChoices(one, request));
    ExtrasWanted.refuseUnfit(request, papers);
    opened.values().forEach(one -> refuseReportOfSome(one, request));
    opened.values().forEach(one -> chosenPieces(one, request));
    List<Outcome> outcomes = new ArrayList<>();
    ExecutorService pool = pool();
    try (OutputLock lock = OutputLock.take(request.output())) {
      for (Opened one : opened.values()) {
        outcomes.add(
            attempt(
                one,
                trial,
                listener,
                () -> {
                  List<Variant> variants = variants(one, request);
                  listener.begun(one.folder, variants.size(), papers.size());
                  return write(one, variants, papers, request, pool, lock, listener);
                }));
      }
    } finally {
      end(pool);
    }
    outcomes.addAll(trial.told(listener));
    return outcomes;
  }

  List<Outcome> check(List<Path> folders, Listener listener) {
    TemplateTrial trial = new TemplateTrial(stages);
    if (!trial.passes()) {
      return trial.told(listener);
    }
    List<Outcome> outcomes = new ArrayList<>();
    ExecutorService pool = pool();
    try {
      for (Path folder : distinct(folders)) {
        Opened one = open(folder);
        outcomes.add(
            attempt(
                one,
                trial,
                listener,
                () -> {
                  Variants known = new Variants(one.source, one.findings);
                  List<Variant> variants = known.all();
                  int sizes = (int) variants.stream().map(Variant::size).distinct().count();
                  listener.begun(folder, sizes, Publisher.PAPERS.size());
                  Conditions conditions = new Conditions(one.source);
                  List<GradedPattern> graded = gradeAll(one, variants, conditions, pool);
                  conditions.report(known.neverChosen(), known.isComplete(), one.findings);
                  if (!one.findings.hasErrors()) {
                    makeUp(one, graded, trial.isOn(), pool);
                  }
                  return List.of();
                }));
      }
    } finally {
      end(pool);
    }
    outcomes.addAll(trial.told(listener));
    return outcomes;
  }

  /** Makes one document of each kind: only then templates of the user's own show what they do. */
  private static DeskWork documentsOfEachKind(List<GradedPattern> graded, List<Manuals> manuals) {
    return (desk, findings) -> {
      Map<String, Integer> bySize = new LinkedHashMap<>();
      for (int i = 0; i < graded.size(); i++) {
        bySize.putIfAbsent(graded.get(i).variant().size(), i);
      }
      List<GradedPattern> sizes = bySize.values().stream().map(graded::get).toList();
      List<Integer> alike = Makeup.groups(sizes).get(0);
      Manual manual = manuals.get(0).standard;
      SheetPlan plan = desk.plan(manual.pattern(), Paper.A4);
      Findings told = new Findings(); // All of it has been found already.
      desk.complete(manual.withWalk(), plan);
      desk.instructions(desk.enlarged(manual, told), plan);
      desk.gradeReport(sizes, Paper.A4);
      desk.companion(alike.stream().map(sizes::get).toList(), told);
      if (alike.size() > 1 && manuals.size() == graded.size()) {
        List<Integer> first = List.copyOf(bySize.values());
        desk.allSizes(
            alike.stream().map(at -> manuals.get(first.get(at)).standard).toList(), Paper.A4, told);
      }
      return List.of();
    };
  }

  /**
   * Makes what a run without wishes publishes and keeps nothing of it, so that what can't be
   * published is found. Of what differs by paper alone, words are set on the first paper and pieces
   * arranged on all; of what isn't as by default, words are set in the first size that has it.
   */
  private void makeUp(
      Opened one, List<GradedPattern> graded, boolean everyKind, ExecutorService pool)
      throws IOException {
    ThreadLocal<Stages.Desk> desks = desks(one, true);
    List<Manuals> manuals = manuals(one, graded, false, desks, pool);
    if (one.findings.hasErrors()) {
      return;
    }
    FileNames names = FileNames.of(one.folder.getFileName().toString(), one.source);
    Variants known = new Variants(one.source, one.findings);
    List<GradedPattern> usual = new ArrayList<>();
    List<Manuals> ofUsual = new ArrayList<>();
    Set<Variant> set = new LinkedHashSet<>();
    Map<Variant, String> chosen = new LinkedHashMap<>();
    for (int i = 0; i < graded.size(); i++) {
      String choices = FileNames.choices(known.unusual(graded.get(i).variant()));
      if (choices.isEmpty()) {
        usual.add(graded.get(i));
        ofUsual.add(manuals.get(i));
      }
      if (choices.isEmpty() || !chosen.containsValue(choices)) {
        set.add(graded.get(i).variant());
      }
      chosen.put(graded.get(i).variant(), choices);
    }
    Receiver nobody =
        (name, size, paper, kind, choices, content) ->
            new Manifest.Entry(name, "", size, paper, kind, choices, "");
    Paper first = Publisher.PAPERS.get(0);
    Request request = new Request(List.of(), List.of(), Path.of("")); // Nothing is written.
    List<DeskWork> beside =
        new ArrayList<>(
            forEverySize(one, usual, ofUsual, List.of(first), request, names, chosen, nobody));
    graded.forEach(each -> beside.add(cutFiles(each, names, chosen.get(each.variant()), nobody)));
    if (everyKind && !manuals.isEmpty()) {
      beside.add(documentsOfEachKind(graded, manuals));
    }
    onEveryPaper(
        one,
        manuals,
        Publisher.PAPERS,
        desks,
        pool,
        (desk, made, paper) -> {
          SheetPlan plan = desk.plan(made.standard.pattern(), paper);
          if (paper == first && set.contains(made.standard.pattern().variant())) {
            desk.instructions(made.standard, plan);
            if (!plan.tiles().isEmpty()) {
              desk.tiles(made.standard.pattern(), plan);
            }
          }
          return List.of();
        },
        beside);
  }

  List<Publisher.Walk> walk(List<Path> folders, List<String> sizes) {
    return evaluate(folders, sizes, one -> {}, one -> everyVariant(one, sizes));
  }

  List<Publisher.Walk> grade(
      List<Path> folders, List<String> sizes, SortedMap<String, String> choices) {
    Request request = new Request(sizes, List.of(), choices, Path.of("")); // Nothing is written.
    return evaluate(
        folders, sizes, one -> refuseChoices(one, request), one -> variants(one, request));
  }

  private List<Publisher.Walk> evaluate(
      List<Path> folders,
      List<String> sizes,
      Consumer<Opened> refusal,
      Function<Opened, List<Variant>> variants) {
    Map<Path, Opened> opened = new LinkedHashMap<>();
    for (Path folder : distinct(folders)) {
      opened.put(folder, open(folder));
    }
    opened.values().forEach(one -> refuseUnknownSizes(one, sizes));
    opened.values().forEach(refusal);
    List<Publisher.Walk> walks = new ArrayList<>();
    ExecutorService pool = pool();
    try {
      for (Opened one : opened.values()) {
        List<GradedPattern> graded = new ArrayList<>();
        Outcome outcome =
            attempt(
                one,
                new TemplateTrial(stages),
                new Listener() {},
                () -> {
                  graded.addAll(grade(one, variants.apply(one), pool));
                  return List.of();
                });
        walks.add(new Publisher.Walk(outcome, graded));
      }
    } finally {
      end(pool);
    }
    return walks;
  }

  /** A folder as read, and everything found in it so far. */
  private record Opened(
      Path folder, PatternSource source, Findings findings, Optional<Throwable> failure) {
    /** In the language and units wanted; a pattern without text in the language is refused. */
    Opened presented(Presentation presentation) {
      return source == null ? this : new Opened(folder, presentation.of(source), findings, failure);
    }
  }

  private Opened open(Path folder) {
    Findings findings = new Findings();
    PatternSource source = null;
    Throwable failure = null;
    try {
      if (!Files.isDirectory(folder)) {
        throw new java.nio.file.NotDirectoryException(folder.toString());
      }
      source = stages.read(folder, findings);
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (IOException | RuntimeException | StackOverflowError e) {
      failure = e;
    }
    return new Opened(folder, source, findings, Optional.ofNullable(failure));
  }

  private Outcome attempt(
      Opened one, TemplateTrial trial, Listener listener, Callable<List<Path>> work) {
    List<Path> written = List.of();
    Throwable failure = one.failure.orElse(null);
    if (failure == null && one.source != null) {
      try {
        written = work.call();
      } catch (FindingException e) {
        one.findings.add(e.finding());
      } catch (RefusedException e) {
        throw e;
      } catch (Failure e) {
        failure = e.getCause();
      } catch (Exception | StackOverflowError | OutOfMemoryError e) {
        failure = e;
      }
    }
    if (trial.takes(failure)) {
      failure = null;
    }
    Outcome outcome =
        new Outcome(one.folder, new Result(written, told(one)), Optional.ofNullable(failure));
    listener.ended(outcome);
    return outcome;
  }

  /** What is wrong in several sizes or places in the same way is told once. */
  private static Findings told(Opened one) {
    return one.source == null || one.source.sizes() == null
        ? one.findings.causes()
        : one.findings.joined("size", one.source.sizes().sizes()).causes();
  }

  private List<Path> write(
      Opened one,
      List<Variant> variants,
      List<Paper> papers,
      Request request,
      ExecutorService pool,
      OutputLock lock,
      Listener listener)
      throws IOException {
    if (one.source.sizes() == null) {
      // The size table can't be read, which has been found.
      return List.of();
    }
    ChosenPieces pieces = chosenPieces(one, request);
    String pattern =
        one.folder.getFileName()
            + request.presentation().suffix()
            + measuredSuffix(papers)
            + pieces.suffix();
    FileNames names = FileNames.of(pattern, one.source);
    OutputFolder output = new OutputFolder(lock.folder(), pattern, names.edition(), checkpoint);
    output.repair();
    List<GradedPattern> graded = grade(one, variants, pool);
    if (one.findings.hasErrors() || graded.isEmpty()) {
      return List.of();
    }
    ThreadLocal<Stages.Desk> desks =
        desks(one, !request.extras().contains(Extra.WITHOUT_BLANK_PAGES));
    List<GradedPattern> printed =
        pieces.in(
            one.folder.getFileName().toString(),
            graded,
            what -> listener.omitted(one.folder, what));
    List<Manuals> manuals =
        pieces.isEverything()
            ? manuals(one, graded, request.extras().contains(Extra.LARGE_PRINT), desks, pool)
            : List.of();
    if (one.findings.hasErrors()) {
      return List.of();
    }
    if (request.extras().contains(Extra.WALK)) {
      manuals = manuals.stream().map(Manuals::walked).toList();
    }
    Variants known = new Variants(one.source, one.findings);
    Map<Variant, String> chosen = new LinkedHashMap<>();
    variants.forEach(made -> chosen.put(made, FileNames.choices(known.unusual(made))));
    Arrangements arrangements = new Arrangements();
    try (OutputFolder.Draft draft = output.draft()) {
      List<DeskWork> beside = new ArrayList<>();
      if (request.extras().contains(Extra.NESTED)) {
        beside.addAll(nested(one, printed, papers, names, draft, arrangements));
      }
      if (pieces.isEverything()) {
        beside.addAll(forEverySize(one, graded, manuals, papers, request, names, chosen, draft));
        // Machines that cut need no paper: a run for some papers leaves their files as they are.
        if (request.papers().isEmpty()) {
          graded.forEach(
              each -> beside.add(cutFiles(each, names, chosen.get(each.variant()), draft)));
        }
      } else {
        beside.addAll(tilesAlone(printed, papers, names, chosen, draft, arrangements));
      }
      List<Manifest.Entry> entries =
          onEveryPaper(
              one,
              manuals,
              papers,
              desks,
              pool,
              (desk, made, paper) ->
                  documents(desk, made, paper, names, chosen, draft, arrangements),
              beside);
      arrangements.tell(one.folder, printed, papers, listener);
      if (one.findings.hasErrors()) {
        return List.of();
      }
      tellOmissions(one, request, listener);
      List<String> sizes = request.sizes();
      List<String> made = entries.stream().map(Manifest.Entry::choices).distinct().toList();
      boolean everything =
          sizes.isEmpty() && request.papers().isEmpty() && request.choices().isEmpty();
      List<String> paperIds = request.papers().stream().map(Paper::id).toList();
      draft.publish(
          entries,
          old ->
              names.isOfThisEdition(old)
                  && (sizes.isEmpty() || sizes.contains(old.size()))
                  && (paperIds.isEmpty() || paperIds.contains(old.paper()))
                  && (everything || made.contains(old.choices())));
      Path folder = request.output().resolve(pattern);
      return entries.stream().map(entry -> folder.resolve(entry.name())).sorted().toList();
    }
  }

  /** Extras that a pattern gives nothing for. */
  private static void tellOmissions(Opened one, Request request, Listener listener) {
    if (request.extras().contains(Extra.NESTED) && one.source.sizes().sizes().size() < 2) {
      listener.omitted(
          one.folder, "no stacked tiles: there is one size, and its tiles are those of all");
    }
    if (request.extras().contains(Extra.WALK) && one.source.seams().isEmpty()) {
      listener.omitted(one.folder, "no walk: the pattern states no seams");
    }
  }

  /** How pieces lie on pages, told in a fixed order when all are laid out. */
  private static final class Arrangements {
    private final Map<String, PlanQuality> qualities = new ConcurrentHashMap<>();
    private final Map<String, Boolean> empty = new ConcurrentHashMap<>();

    private static String key(Variant variant, Paper paper) {
      return paper.id() + ' ' + variant;
    }

    void add(Variant variant, SheetPlan plan) {
      if (plan.tiles().isEmpty()) {
        empty.put(key(variant, plan.paper()), true);
      } else if (plan.paper().kind() == Paper.Kind.PAGE) {
        qualities.put(key(variant, plan.paper()), plan.quality());
      }
    }

    void addEmptyStack(Paper paper) {
      empty.put(paper.id(), true);
    }

    void tell(Path folder, List<GradedPattern> patterns, List<Paper> papers, Listener listener) {
      for (GradedPattern pattern : patterns) {
        for (Paper paper : papers) {
          String size = pattern.variant().size();
          PlanQuality quality = qualities.get(key(pattern.variant(), paper));
          if (quality != null) {
            listener.arranged(folder, size, paper.id(), quality);
          } else if (empty.containsKey(key(pattern.variant(), paper))) {
            listener.omitted(folder, nothing(size, paper, pattern.pieces().isEmpty()));
          }
        }
      }
      for (Paper paper : papers) {
        if (empty.containsKey(paper.id())) {
          listener.omitted(folder, nothing("all sizes", paper, false));
        }
      }
    }

    private static String nothing(String sizes, Paper paper, boolean bare) {
      return "no tiles of "
          + sizes
          + " on "
          + paper.id()
          + (bare
              ? ": there is no piece to print"
              : ": each piece is cut by the measurements in the cutting table");
    }
  }

  /** Files for one maker's printer never take the place of those for all. */
  private static String measuredSuffix(List<Paper> papers) {
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

  /** Tiles of chosen pieces; what is read belongs to the whole pattern. */
  private static List<DeskWork> tilesAlone(
      List<GradedPattern> patterns,
      List<Paper> papers,
      FileNames names,
      Map<Variant, String> chosen,
      Receiver draft,
      Arrangements arrangements) {
    List<DeskWork> works = new ArrayList<>();
    for (GradedPattern pattern : patterns) {
      for (Paper paper : papers) {
        String size = pattern.variant().size();
        String choices = chosen.get(pattern.variant());
        works.add(
            (desk, findings) -> {
              SheetPlan plan = desk.plan(pattern, paper);
              arrangements.add(pattern.variant(), plan);
              return plan.tiles().isEmpty()
                  ? List.of()
                  : List.of(
                      draft.write(
                          names.tiles(size, choices, paper),
                          size,
                          paper.id(),
                          Manifest.TILES,
                          choices,
                          desk.tiles(pattern, plan)));
            });
      }
    }
    return works;
  }

  /** Tiles of all sizes stacked; the tiles of one size are those of all, where there is but one. */
  private static List<DeskWork> nested(
      Opened one,
      List<GradedPattern> patterns,
      List<Paper> papers,
      FileNames names,
      Receiver draft,
      Arrangements arrangements) {
    List<DeskWork> works = new ArrayList<>();
    if (patterns.size() < 2 || patterns.size() < one.source.sizes().sizes().size()) {
      return works;
    }
    for (Paper paper : papers) {
      works.add(
          (desk, findings) -> {
            Optional<byte[]> tiles = desk.nested(patterns, paper);
            if (tiles.isEmpty()) {
              arrangements.addEmptyStack(paper);
            }
            return tiles.isEmpty()
                ? List.of()
                : List.of(
                    draft.write(
                        names.allSizesTiles(paper), "", paper.id(), Manifest.NESTED, tiles.get()));
          });
    }
    return works;
  }

  private static List<Manifest.Entry> documents(
      Stages.Desk desk,
      Manuals made,
      Paper paper,
      FileNames names,
      Map<Variant, String> chosen,
      Receiver draft,
      Arrangements arrangements)
      throws IOException {
    GradedPattern pattern = made.standard.pattern();
    String size = pattern.variant().size();
    String choices = chosen.get(pattern.variant());
    SheetPlan plan = desk.plan(pattern, paper);
    List<Manifest.Entry> files = new ArrayList<>();
    arrangements.add(pattern.variant(), plan);
    if (paper.kind() == Paper.Kind.PAGE) {
      texts(desk, made, plan, names, choices, draft, files);
    }
    if (!plan.tiles().isEmpty()) {
      files.add(
          draft.write(
              names.tiles(size, choices, paper),
              size,
              paper.id(),
              Manifest.TILES,
              choices,
              desk.tiles(pattern, plan)));
    }
    return files;
  }

  private static DeskWork cutFiles(
      GradedPattern pattern, FileNames names, String choices, Receiver draft) {
    String size = pattern.variant().size();
    return (desk, findings) -> {
      List<Manifest.Entry> files = new ArrayList<>();
      for (Piece piece : pattern.pieces()) {
        if (!piece.cuts().isEmpty()) {
          files.add(
              draft.write(
                  names.cutFile(size, choices, piece.number(), piece.name()),
                  size,
                  "",
                  Manifest.CUT_FILE,
                  choices,
                  desk.cutFile(pattern, piece)));
        }
      }
      return files;
    };
  }

  /** What is read, on pages that can be read. */
  private static void texts(
      Stages.Desk desk,
      Manuals made,
      SheetPlan plan,
      FileNames names,
      String choices,
      Receiver draft,
      List<Manifest.Entry> files)
      throws IOException {
    Paper paper = plan.paper();
    String size = made.standard.pattern().variant().size();
    files.add(
        draft.write(
            names.instructions(size, choices, paper),
            size,
            paper.id(),
            Manifest.INSTRUCTIONS,
            choices,
            desk.instructions(made.standard, plan)));
    files.add(
        draft.write(
            names.complete(size, choices, paper),
            size,
            paper.id(),
            Manifest.COMPLETE,
            choices,
            desk.complete(made.standard, plan)));
    if (made.large.isPresent()) {
      files.add(
          draft.write(
              names.largePrint(size, choices, paper),
              size,
              paper.id(),
              Manifest.LARGE_PRINT,
              choices,
              desk.instructions(made.large.get(), plan)));
    }
  }

  /** Fonts belong to one thread, so each thread has a desk of its own. */
  private ThreadLocal<Stages.Desk> desks(Opened one, boolean blankPages) {
    Locale language = one.source.masthead().language();
    return ThreadLocal.withInitial(() -> stages.desk(language, blankPages));
  }

  /** What the instructions of one variant say, in each size of type wanted. */
  private record Manuals(Manual standard, Optional<Manual> large) {
    /** With the walk of seams, whose tables are too wide for large print. */
    Manuals walked() {
      return new Manuals(standard.withWalk(), large);
    }
  }

  private List<Manuals> manuals(
      Opened one,
      List<GradedPattern> graded,
      boolean largePrint,
      ThreadLocal<Stages.Desk> desks,
      ExecutorService pool)
      throws IOException {
    List<Findings> found = new ArrayList<>();
    List<Callable<Part<Manuals>>> tasks = new ArrayList<>();
    for (GradedPattern pattern : graded) {
      Findings findings = new Findings();
      found.add(findings);
      tasks.add(
          () -> {
            try {
              Manual standard = desks.get().manual(pattern, findings);
              Optional<Manual> large =
                  largePrint
                      ? Optional.of(desks.get().enlarged(standard, findings))
                      : Optional.empty();
              return new Part<>(new Manuals(standard, large), new Findings());
            } catch (FindingException e) {
              findings.add(e.finding());
              return new Part<>(null, new Findings());
            }
          });
    }
    try {
      return join(one, tasks, pool);
    } finally {
      new Variants(one.source, one.findings)
          .join(found, graded.stream().map(GradedPattern::variant).toList());
    }
  }

  /**
   * Files for every size at once, as by default; a run that doesn't make every size, or makes other
   * choices, keeps those from before. Sizes that don't consist of the same have files of their own.
   */
  private static List<DeskWork> forEverySize(
      Opened one,
      List<GradedPattern> graded,
      List<Manuals> manuals,
      List<Paper> papers,
      Request request,
      FileNames names,
      Map<Variant, String> chosen,
      Receiver draft) {
    int sizes = one.source.sizes().sizes().size();
    List<DeskWork> works =
        new ArrayList<>(
            request.extras().contains(Extra.GRADE_REPORT) && graded.size() == sizes
                ? gradeReports(graded, papers, names, chosen, draft)
                : List.of());
    if (graded.size() < sizes
        || graded.stream().anyMatch(made -> !chosen.get(made.variant()).isEmpty())) {
      return works;
    }
    List<List<Integer>> groups = Makeup.groups(graded);
    for (List<Integer> group : groups) {
      // No sizes are named where a document has them all.
      List<String> named =
          groups.size() == 1
              ? List.of()
              : group.stream().map(at -> graded.get(at).variant().size()).toList();
      List<GradedPattern> patterns = group.stream().map(graded::get).toList();
      works.add(
          (desk, findings) -> {
            byte[] page = desk.companion(patterns, findings);
            // A page with a gap in it is not written.
            return findings.hasErrors()
                ? List.of()
                : List.of(draft.write(names.companion(named), "", "", Manifest.COMPANION, page));
          });
      // The instructions of one size are those of all, where there is but one.
      if (group.size() > 1 && manuals.size() == sizes) {
        List<Manual> all = group.stream().map(at -> manuals.get(at).standard()).toList();
        papers.stream()
            .filter(paper -> paper.kind() == Paper.Kind.PAGE)
            .forEach(paper -> works.add(ofSizes(all, paper, names.sizes(named, paper), draft)));
      }
    }
    return works;
  }

  private static DeskWork ofSizes(List<Manual> manuals, Paper paper, String name, Receiver draft) {
    return (desk, findings) -> {
      byte[] pages = desk.allSizes(manuals, paper, findings);
      return findings.hasErrors()
          ? List.of()
          : List.of(draft.write(name, "", paper.id(), Manifest.ALL_SIZES, pages));
    };
  }

  /** How the sizes grow, whatever is chosen. */
  private static List<DeskWork> gradeReports(
      List<GradedPattern> graded,
      List<Paper> papers,
      FileNames names,
      Map<Variant, String> chosen,
      Receiver draft) {
    String choices =
        graded.stream()
            .map(made -> chosen.get(made.variant()))
            .filter(words -> !words.isEmpty())
            .findFirst()
            .orElse("");
    List<DeskWork> works = new ArrayList<>();
    for (Paper paper : papers) {
      if (paper.kind() == Paper.Kind.PAGE) {
        works.add(
            (desk, findings) ->
                List.of(
                    draft.write(
                        names.gradeReport(choices, paper),
                        "",
                        paper.id(),
                        Manifest.GRADE_REPORT,
                        choices,
                        desk.gradeReport(graded, paper))));
      }
    }
    return works;
  }

  private List<GradedPattern> grade(Opened one, List<Variant> variants, ExecutorService pool)
      throws IOException {
    List<Findings> found = new ArrayList<>();
    List<Callable<Part<GradedPattern>>> tasks = new ArrayList<>();
    for (Variant variant : variants) {
      Findings findings = new Findings();
      found.add(findings);
      tasks.add(
          () -> {
            try {
              return new Part<>(stages.grade(one.source, variant, findings), new Findings());
            } catch (FindingException e) {
              findings.add(e.finding());
              return new Part<>(null, new Findings());
            }
          });
    }
    List<GradedPattern> graded;
    try {
      graded = join(one, tasks, pool);
    } finally {
      new Variants(one.source, one.findings).join(found, variants);
    }
    stages.across(graded, one.findings);
    return graded;
  }

  /**
   * Evaluates all variants, one size after another, and keeps so many that every choice occurs:
   * they stand for the others on paper.
   */
  private List<GradedPattern> gradeAll(
      Opened one, List<Variant> variants, Conditions conditions, ExecutorService pool)
      throws IOException {
    List<GradedPattern> kept = new ArrayList<>();
    Map<String, List<Variant>> bySize = new LinkedHashMap<>();
    variants.forEach(
        variant ->
            bySize.computeIfAbsent(variant.size(), unused -> new ArrayList<>()).add(variant));
    for (List<Variant> ofSize : bySize.values()) {
      List<Variant> some = Variants.everyChoice(ofSize);
      for (GradedPattern pattern : grade(one, ofSize, pool)) {
        conditions.see(pattern);
        if (some.contains(pattern.variant())) {
          kept.add(pattern);
        }
      }
    }
    return kept;
  }

  /** What is done with one variant on one paper. */
  private interface PaperWork {
    List<Manifest.Entry> on(Stages.Desk desk, Manuals manuals, Paper paper) throws IOException;
  }

  /** What is done at a desk. */
  private interface DeskWork {
    List<Manifest.Entry> on(Stages.Desk desk, Findings findings) throws IOException;
  }

  /** Does one work for each pattern on each paper, and beside it what isn't for one paper. */
  private List<Manifest.Entry> onEveryPaper(
      Opened one,
      List<Manuals> all,
      List<Paper> papers,
      ThreadLocal<Stages.Desk> desks,
      ExecutorService pool,
      PaperWork work,
      List<DeskWork> beside)
      throws IOException {
    List<DeskWork> works = new ArrayList<>(beside);
    for (Manuals manuals : all) {
      for (Paper paper : papers) {
        works.add((desk, findings) -> work.on(desk, manuals, paper));
      }
    }
    List<Callable<Part<List<Manifest.Entry>>>> tasks = new ArrayList<>();
    for (DeskWork task : works) {
      tasks.add(
          () -> {
            Findings findings = new Findings();
            try {
              return new Part<>(task.on(desks.get(), findings), findings);
            } catch (FindingException e) {
              findings.add(e.finding());
              return new Part<>(List.of(), findings);
            }
          });
    }
    List<Manifest.Entry> entries = new ArrayList<>();
    join(one, tasks, pool).forEach(entries::addAll);
    return entries;
  }

  /** What a task gives. */
  private record Part<T>(T value, Findings findings) {}

  private static <T> List<T> join(Opened one, List<Callable<Part<T>>> tasks, ExecutorService pool)
      throws IOException {
    List<T> values = new ArrayList<>();
    Throwable failure = null;
    try {
      for (Future<Part<T>> future : pool.invokeAll(tasks)) {
        try {
          Part<T> part = future.get();
          one.findings.addAll(part.findings);
          if (part.value != null) {
            values.add(part.value);
          }
        } catch (ExecutionException e) {
          failure = failure == null ? e.getCause() : failure;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    }
    if (failure instanceof IOException io) {
      throw io;
    }
    if (failure != null) {
      throw new Failure(failure);
    }
    return values;
  }

  /** Carries what a task threw over to the thread that waits for it. */
  private static final class Failure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Failure(Throwable cause) {
      super(null, cause, false, false);
    }
  }

  /** All variants of the sizes wanted, or of every size. */
  private static List<Variant> everyVariant(Opened one, List<String> sizes) {
    return new Variants(one.source, one.findings)
        .all().stream()
            .filter(variant -> sizes.isEmpty() || sizes.contains(variant.size()))
            .toList();
  }

  private static List<Variant> variants(Opened one, Request request) {
    if (one.source.sizes() == null) {
      return List.of();
    }
    List<Variant> variants = new ArrayList<>();
    Variants all = new Variants(one.source, one.findings);
    for (String size : one.source.sizes().sizes()) {
      if (request.sizes().isEmpty() || request.sizes().contains(size)) {
        if (request.choices().isEmpty()) {
          all.checkDefault(size);
        }
        variants.add(all.of(size, request.choices()));
      }
    }
    return variants;
  }

  /** A grade report compares all sizes; a folder whose table can't be read says so itself. */
  private static void refuseReportOfSome(Opened one, Request request) {
    if (request.extras().contains(Extra.GRADE_REPORT)
        && !request.sizes().isEmpty()
        && one.source != null
        && one.source.sizes() != null
        && !request.sizes().containsAll(one.source.sizes().sizes())) {
      throw new RefusedException(
          "a grade report compares every size of ‘"
              + one.folder.getFileName()
              + "’: leave out --size or --with-grade-report");
    }
  }

  private static ChosenPieces chosenPieces(Opened one, Request request) {
    return one.source == null || one.findings.hasErrors()
        ? new ChosenPieces(Collections.emptySortedSet())
        : ChosenPieces.of(one.folder.getFileName().toString(), one.source, request.pieces());
  }

  /** Refuses options and choices that a folder doesn't have, and what is forbidden in it. */
  private static void refuseChoices(Opened one, Request request) {
    // A folder with errors says so itself, and isn't published.
    if (one.source == null || one.findings.hasErrors() || request.choices().isEmpty()) {
      return;
    }
    String folder = one.folder.getFileName().toString();
    OptionsSource options = one.source.options();
    List<String> names = options.options().stream().map(option -> option.name().text()).toList();
    request
        .choices()
        .forEach(
            (name, choice) -> {
              refuseUnless(names, name, "‘" + folder + "’ has no option", "its options");
              List<String> ids = options.option(name).orElseThrow().ids();
              refuseUnless(
                  ids,
                  choice,
                  "the option ‘" + name + "’ of ‘" + folder + "’ has no choice",
                  "its choices");
            });
    Variants variants = new Variants(one.source, new Findings());
    for (Variant variant : variants(one, request)) {
      variants
          .forbidden(variant)
          .ifPresent(
              reason -> {
                throw new RefusedException(
                    "‘"
                        + folder
                        + "’ can't be made in size "
                        + variants.described(variant)
                        + ": "
                        + reason);
              });
    }
  }

  private static void refuseUnless(List<String> known, String word, String problem, String list) {
    if (!known.contains(word)) {
      throw new RefusedException(
          problem
              + " ‘"
              + word
              + "’"
              + Nearest.of(word, known).map(near -> "; did you mean ‘" + near + "’?").orElse("")
              + (known.isEmpty() ? "" : " (" + list + ": " + String.join(", ", known) + ")"));
    }
  }

  private static void refuseUnknownSizes(Opened one, List<String> wanted) {
    // A folder whose size table couldn't be read says so itself.
    if (one.source == null || one.source.sizes() == null || one.source.sizes().sizes().isEmpty()) {
      return;
    }
    List<String> known = one.source.sizes().sizes();
    for (String size : wanted) {
      if (!known.contains(size)) {
        throw new RefusedException(
            "‘"
                + one.folder.getFileName()
                + "’ has no size ‘"
                + size
                + "’"
                + Nearest.of(size, known).map(near -> "; did you mean ‘" + near + "’?").orElse("")
                + " (its sizes: "
                + String.join(", ", known)
                + ")");
      }
    }
  }

  private static List<Path> distinct(List<Path> folders) {
    Map<String, Path> byName = new LinkedHashMap<>();
    for (Path given : new LinkedHashSet<>(folders.stream().map(Pipeline::plain).toList())) {
      Path name = given.getFileName();
      if (name == null) {
        throw new RefusedException("‘" + given + "’ can't be a pattern folder: it has no name");
      }
      if (name.toString().startsWith(".")) {
        throw new RefusedException(
            "‘" + given + "’ can't be a pattern folder: its name must not begin with a dot");
      }
      // File systems that don't tell upper and lower case apart must not merge two patterns.
      String key = Normalizer2.getNFCInstance().normalize(name.toString()).toLowerCase(Locale.ROOT);
      Path other = byName.putIfAbsent(key, given);
      if (other != null) {
        throw new RefusedException(
            "‘" + other + "’ and ‘" + given + "’ would be published under the same name");
      }
    }
    return List.copyOf(byName.values());
  }

  private static Path plain(Path folder) {
    return folder.toAbsolutePath().normalize();
  }

  private static void refuseOverlap(List<Path> patterns, Path output) {
    for (Path pattern : patterns) {
      Path target = real(plain(output).resolve(pattern.getFileName()));
      for (Path folder : patterns) {
        Path source = real(folder);
        if (target.startsWith(source) || source.startsWith(target)) {
          throw new RefusedException(
              "the output ‘"
                  + output
                  + "’ would lie in or over the pattern folder ‘"
                  + folder
                  + "’");
        }
      }
    }
  }

  /** The path with the symbolic links of that part of it that exists followed. */
  private static Path real(Path path) {
    Path existing = path;
    while (existing != null) {
      try {
        return existing.toRealPath().resolve(existing.relativize(path)).normalize();
      } catch (IOException e) {
        existing = existing.getParent();
      }
    }
    return path;
  }

  private ExecutorService pool() {
    return Executors.newFixedThreadPool(threads);
  }

  private static void end(ExecutorService pool) {
    pool.shutdownNow();
    boolean interrupted = false;
    while (true) {
      try {
        if (pool.awaitTermination(1, TimeUnit.MINUTES)) {
          break;
        }
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
