package org.lapmark.publish;

import com.ibm.icu.text.Normalizer2;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.lapmark.document.Manual;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Nearest;
import org.lapmark.grade.GradedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.print.Paper;
import org.lapmark.print.PlanQuality;
import org.lapmark.print.SheetPlan;
import org.lapmark.publish.Publisher.Listener;
import org.lapmark.publish.Publisher.Outcome;
import org.lapmark.publish.Publisher.Request;
import org.lapmark.publish.Publisher.Result;
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
    Map<Path, Opened> opened = new LinkedHashMap<>();
    for (Path folder : patterns) {
      opened.put(folder, open(folder).presented(request.presentation()));
    }
    List<Paper> papers = request.papers().isEmpty() ? Publisher.PAPERS : request.papers();
    opened.values().forEach(one -> refuseUnknownSizes(one, request.sizes()));
    List<Outcome> outcomes = new ArrayList<>();
    ExecutorService pool = pool();
    try (OutputLock lock = OutputLock.take(request.output())) {
      for (Opened one : opened.values()) {
        outcomes.add(
            attempt(
                one,
                listener,
                () -> {
                  List<Variant> variants = variants(one, request.sizes());
                  listener.begun(one.folder, variants.size(), papers.size());
                  return write(one, variants, papers, request, pool, lock, listener);
                }));
      }
    } finally {
      end(pool);
    }
    return outcomes;
  }

  List<Outcome> check(List<Path> folders, Listener listener) {
    List<Outcome> outcomes = new ArrayList<>();
    ExecutorService pool = pool();
    try {
      for (Path folder : distinct(folders)) {
        Opened one = open(folder);
        outcomes.add(
            attempt(
                one,
                listener,
                () -> {
                  List<Variant> variants = variants(one, List.of());
                  listener.begun(folder, variants.size(), Publisher.PAPERS.size());
                  List<GradedPattern> graded = grade(one, variants, pool);
                  if (!one.findings.hasErrors()) {
                    ThreadLocal<Stages.Desk> desks = desks(one);
                    onEveryPaper(
                        one,
                        manuals(one, graded, false, desks, pool),
                        Publisher.PAPERS,
                        desks,
                        pool,
                        (desk, manuals, paper) -> {
                          desk.plan(manuals.standard.pattern(), paper);
                          return List.of();
                        },
                        List.of());
                  }
                  return List.of();
                }));
      }
    } finally {
      end(pool);
    }
    return outcomes;
  }

  List<Publisher.Walk> walk(List<Path> folders, List<String> sizes) {
    Map<Path, Opened> opened = new LinkedHashMap<>();
    for (Path folder : distinct(folders)) {
      opened.put(folder, open(folder));
    }
    opened.values().forEach(one -> refuseUnknownSizes(one, sizes));
    List<Publisher.Walk> walks = new ArrayList<>();
    ExecutorService pool = pool();
    try {
      for (Opened one : opened.values()) {
        List<GradedPattern> graded = new ArrayList<>();
        Outcome outcome =
            attempt(
                one,
                new Listener() {},
                () -> {
                  graded.addAll(grade(one, variants(one, sizes), pool));
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

  private Outcome attempt(Opened one, Listener listener, Callable<List<Path>> work) {
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
    Outcome outcome =
        new Outcome(one.folder, new Result(written, told(one)), Optional.ofNullable(failure));
    listener.ended(outcome);
    return outcome;
  }

  /** What is wrong in several sizes in the same way is told once. */
  private static Findings told(Opened one) {
    return one.source == null || one.source.sizes() == null
        ? one.findings
        : one.findings.joined("size", one.source.sizes().sizes());
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
    String pattern =
        one.folder.getFileName() + request.presentation().suffix() + measuredSuffix(papers);
    OutputFolder output = new OutputFolder(lock.folder(), pattern, checkpoint);
    output.repair();
    List<GradedPattern> graded = grade(one, variants, pool);
    if (one.findings.hasErrors() || graded.isEmpty()) {
      return List.of();
    }
    ThreadLocal<Stages.Desk> desks = desks(one);
    List<Manuals> manuals = manuals(one, graded, request.largePrint(), desks, pool);
    if (one.findings.hasErrors()) {
      return List.of();
    }
    FileNames names = FileNames.of(pattern, one.source);
    Map<String, PlanQuality> qualities = new ConcurrentHashMap<>();
    try (OutputFolder.Draft draft = output.draft()) {
      List<Manifest.Entry> entries =
          onEveryPaper(
              one,
              manuals,
              papers,
              desks,
              pool,
              (desk, made, paper) -> documents(desk, made, paper, names, draft, qualities),
              forEverySize(one, graded, manuals, papers, names, draft));
      for (GradedPattern each : graded) {
        for (Paper paper : papers) {
          String size = each.variant().size();
          PlanQuality quality = qualities.get(key(size, paper));
          if (quality != null) {
            listener.arranged(one.folder, size, paper.id(), quality);
          }
        }
      }
      if (one.findings.hasErrors()) {
        return List.of();
      }
      List<String> sizes = request.sizes();
      List<String> paperIds = request.papers().stream().map(Paper::id).toList();
      draft.publish(
          entries,
          old ->
              (sizes.isEmpty() || sizes.contains(old.size()))
                  && (paperIds.isEmpty() || paperIds.contains(old.paper())));
      Path folder = request.output().resolve(pattern);
      return entries.stream().map(entry -> folder.resolve(entry.name())).sorted().toList();
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

  private static String key(String size, Paper paper) {
    return paper.id() + ' ' + size;
  }

  private static List<Manifest.Entry> documents(
      Stages.Desk desk,
      Manuals made,
      Paper paper,
      FileNames names,
      OutputFolder.Draft draft,
      Map<String, PlanQuality> qualities)
      throws IOException {
    GradedPattern pattern = made.standard.pattern();
    String size = pattern.variant().size();
    SheetPlan plan = desk.plan(pattern, paper);
    List<Manifest.Entry> files = new ArrayList<>();
    if (paper.kind() == Paper.Kind.PAGE) {
      qualities.put(key(size, paper), plan.quality());
      texts(desk, made, plan, names, draft, files);
    }
    if (!plan.tiles().isEmpty()) {
      files.add(
          draft.write(
              names.tiles(size, paper),
              size,
              paper.id(),
              Manifest.TILES,
              desk.tiles(pattern, plan)));
    }
    return files;
  }

  /** What is read, on pages that can be read. */
  private static void texts(
      Stages.Desk desk,
      Manuals made,
      SheetPlan plan,
      FileNames names,
      OutputFolder.Draft draft,
      List<Manifest.Entry> files)
      throws IOException {
    Paper paper = plan.paper();
    String size = made.standard.pattern().variant().size();
    files.add(
        draft.write(
            names.instructions(size, paper),
            size,
            paper.id(),
            Manifest.INSTRUCTIONS,
            desk.instructions(made.standard, plan)));
    files.add(
        draft.write(
            names.complete(size, paper),
            size,
            paper.id(),
            Manifest.COMPLETE,
            desk.complete(made.standard, plan)));
    if (made.large.isPresent()) {
      files.add(
          draft.write(
              names.largePrint(size, paper),
              size,
              paper.id(),
              Manifest.LARGE_PRINT,
              desk.instructions(made.large.get(), plan)));
    }
  }

  /** Fonts belong to one thread, so each thread has a desk of its own. */
  private ThreadLocal<Stages.Desk> desks(Opened one) {
    Locale language = one.source.masthead().language();
    return ThreadLocal.withInitial(() -> stages.desk(language));
  }

  /** What the instructions of one variant say, in each size of type wanted. */
  private record Manuals(Manual standard, Optional<Manual> large) {}

  private List<Manuals> manuals(
      Opened one,
      List<GradedPattern> graded,
      boolean largePrint,
      ThreadLocal<Stages.Desk> desks,
      ExecutorService pool)
      throws IOException {
    List<Callable<Part<Manuals>>> tasks = new ArrayList<>();
    for (GradedPattern pattern : graded) {
      tasks.add(
          () -> {
            Findings findings = new Findings();
            try {
              Manual standard = desks.get().manual(pattern, findings);
              Optional<Manual> large =
                  largePrint
                      ? Optional.of(desks.get().enlarged(standard, findings))
                      : Optional.empty();
              return new Part<>(new Manuals(standard, large), findings);
            } catch (FindingException e) {
              findings.add(e.finding());
              return new Part<>(null, findings);
            }
          });
    }
    return join(one, tasks, pool);
  }

  /** Files for every size at once; a run that doesn't make every size keeps those from before. */
  private static List<DeskWork> forEverySize(
      Opened one,
      List<GradedPattern> graded,
      List<Manuals> manuals,
      List<Paper> papers,
      FileNames names,
      OutputFolder.Draft draft) {
    int sizes = one.source.sizes().sizes().size();
    if (graded.size() < sizes) {
      return List.of();
    }
    List<DeskWork> works = new ArrayList<>();
    works.add(
        (desk, findings) -> {
          byte[] page = desk.companion(graded, findings);
          // A page with a gap in it is not written.
          return findings.hasErrors()
              ? List.of()
              : List.of(draft.write(names.companion(), "", "", Manifest.COMPANION, page));
        });
    // The instructions of one size are those of all, where there is but one.
    if (sizes > 1 && manuals.size() == sizes) {
      List<Manual> all = manuals.stream().map(Manuals::standard).toList();
      for (Paper paper : papers) {
        if (paper.kind() != Paper.Kind.PAGE) {
          continue;
        }
        works.add(
            (desk, findings) -> {
              byte[] pages = desk.allSizes(all, paper, findings);
              return findings.hasErrors()
                  ? List.of()
                  : List.of(
                      draft.write(
                          names.allSizes(paper), "", paper.id(), Manifest.ALL_SIZES, pages));
            });
      }
    }
    return works;
  }

  private List<GradedPattern> grade(Opened one, List<Variant> variants, ExecutorService pool)
      throws IOException {
    List<Callable<Part<GradedPattern>>> tasks = new ArrayList<>();
    for (Variant variant : variants) {
      tasks.add(
          () -> {
            Findings findings = new Findings();
            try {
              return new Part<>(stages.grade(one.source, variant, findings), findings);
            } catch (FindingException e) {
              findings.add(e.finding());
              return new Part<>(null, findings);
            }
          });
    }
    return join(one, tasks, pool);
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

  private static List<Variant> variants(Opened one, List<String> sizes) {
    return one.source.sizes() == null
        ? List.of()
        : one.source.sizes().sizes().stream()
            .filter(size -> sizes.isEmpty() || sizes.contains(size))
            .map(Variant::ofSize)
            .toList();
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
      if (name == null || name.toString().startsWith(".")) {
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
