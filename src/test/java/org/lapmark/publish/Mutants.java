package org.lapmark.publish;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.svg.CutFile;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Variants;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.product.Desk;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;

/**
 * Damages whole patterns at random and lets them go through the stages of publishing, as a run for
 * one size on one paper would: what is damaged gives findings, what gives none is published, and
 * nothing costs more than a bounded amount of work. The same number gives the same mutant.
 */
final class Mutants {
  /** What the demos lack: options, translations, stated shapes, marks of every kind. */
  private static final Path RESOURCES = Path.of("src", "test", "resources", "org", "lapmark");

  private static final List<Path> PATTERNS =
      List.of(
          Path.of("content", "towpath-handlebar-bag"),
          Path.of("content", "slipway-rain-hat"),
          RESOURCES.resolve("grade/options"),
          RESOURCES.resolve("check/translation/base"),
          RESOURCES.resolve("document/cutting"),
          RESOURCES.resolve("publish/skirt"),
          RESOURCES.resolve("publish/smock"),
          RESOURCES.resolve("publish/by-size"));

  /** Small patterns of every construction, as many as there are. */
  private static final Path SHELF = RESOURCES.resolve("shelf");

  private static final int SEED = 20261125;
  private static final int FRAMES = 14;

  private final Stages stages;

  /** Of so many that have faults, one is given to whoever publishes it all the same. */
  private static final int REFUSED = 12;

  private final Pipeline pipeline;
  private final Path output;
  private final List<Subject> subjects = new ArrayList<>();
  private final Map<Locale, Desk> desks = new LinkedHashMap<>();
  private final FindingText texts = new FindingText();
  private final ThreadMXBean clock = ManagementFactory.getThreadMXBean();
  private final Map<String, Integer> codes = new TreeMap<>();
  private final List<String> failures = new ArrayList<>();
  private final double mostSeconds;
  private int told;
  private int withFindings;
  private int drawn;
  private int published;

  /** What setting the words of the latest took: documents cost as much as they have pages. */
  private long setting;

  private double all;
  private double longest;

  /** Whether what was checked last is published without a wish: else its faults may be its own. */
  private boolean usual;

  private String longestOf = "none";

  /** A pattern to be damaged. */
  private record Subject(Path folder, Map<Path, byte[]> files, Mutator mutator) {}

  /**
   * Mutants of demos, shelf and further patterns.
   *
   * @param home an empty folder
   * @param mostSeconds the processor time that checking one may take
   */
  Mutants(Path home, double mostSeconds) throws IOException {
    this.stages = new RealStages(TemplateFolder.bundled(), Optional.empty());
    this.pipeline = new Pipeline(stages, 1, stage -> {});
    this.output = home.resolve("published");
    this.mostSeconds = mostSeconds;
    List<Path> patterns = new ArrayList<>(PATTERNS);
    if (Files.isDirectory(SHELF)) {
      try (Stream<Path> shelf = Files.list(SHELF)) {
        shelf.filter(Files::isDirectory).sorted().forEach(patterns::add);
      }
    }
    for (Path pattern : patterns) {
      subjects.add(subject(home, pattern));
    }
  }

  private static Subject subject(Path home, Path pattern) throws IOException {
    Path folder =
        Files.createDirectories(
            home.resolve(pattern.toString().replaceAll("[^a-z-]", "-") + "-damaged"));
    Map<Path, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(pattern)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        Path copy = folder.resolve(pattern.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
        files.put(copy, Files.readAllBytes(file));
      }
    }
    return new Subject(folder, files, new Mutator(List.copyOf(files.values())));
  }

  List<String> failures() {
    return failures;
  }

  /** The failures since the last call. */
  List<String> untold() {
    List<String> fresh = List.copyOf(failures.subList(told, failures.size()));
    told = failures.size();
    return fresh;
  }

  int withFindings() {
    return withFindings;
  }

  int drawn() {
    return drawn;
  }

  int published() {
    return published;
  }

  String cost() {
    return String.format(
        Locale.ROOT,
        "%d with findings of %d codes, %d drawn, %d published, %d failed; %.0f s of processor time"
            + " for checks, the longest %.2f s for %s",
        withFindings,
        codes.size(),
        drawn,
        published,
        failures.size(),
        all,
        longest,
        longestOf);
  }

  /**
   * Works on mutants one after another.
   *
   * @param first the number of the first
   * @param count how many
   * @param publish how many of them to publish, where so many can be, spread over all
   * @param told is told of each when it is done
   */
  void run(int first, int count, int publish, IntConsumer told) throws IOException {
    int before = published;
    for (int i = 0; i < count; i++) {
      boolean publishing = (long) (published - before) * count < (long) publish * (i + 1);
      work(first + i, publishing, null);
      told.accept(i + 1);
    }
  }

  /**
   * Makes and works on one mutant.
   *
   * @param number which one
   * @param publishing whether to publish it if it can be
   * @param kept where a copy of the damaged file is left, or null
   */
  void work(int number, boolean publishing, Path kept) throws IOException {
    Random random = new Random(SEED + 7919L * number);
    Subject subject = subjects.get(random.nextInt(subjects.size()));
    Path file = anyFile(subject, random);
    byte[] mutant = subject.mutator().mutant(subject.files().get(file), random);
    Files.write(file, mutant);
    String name = number + " of " + subject.folder().relativize(file) + " in " + subject.folder();
    try {
      work(subject.folder(), random, publishing, name);
    } catch (Exception | StackOverflowError | OutOfMemoryError | AssertionError e) {
      failures.add(told(name, e));
    }
    if (kept != null) {
      Files.write(kept.resolve("mutant-" + file.getFileName()), mutant);
    }
    Files.write(file, subject.files().get(file));
  }

  /** Every kind of file as often as any other. */
  private static Path anyFile(Subject subject, Random random) {
    Map<String, List<Path>> byKind = new TreeMap<>();
    for (Path file : subject.files().keySet()) {
      String name = file.getFileName().toString();
      byKind
          .computeIfAbsent(name.substring(name.lastIndexOf('.')), kind -> new ArrayList<>())
          .add(file);
    }
    List<List<Path>> kinds = List.copyOf(byKind.values());
    List<Path> kind = kinds.get(random.nextInt(kinds.size()));
    return kind.get(random.nextInt(kind.size()));
  }

  private void work(Path folder, Random random, boolean publishing, String name)
      throws IOException {
    Findings findings = new Findings();
    boolean drawing = random.nextInt(4) == 0 || publishing;
    setting = 0;
    long before = clock.getCurrentThreadCpuTime();
    Variant sound = null;
    Paper paper = Papers.USUAL.get(random.nextInt(Papers.USUAL.size()));
    try {
      sound = check(folder, random, drawing, publishing, paper, findings);
    } catch (FindingException e) {
      findings.add(e.finding());
    }
    double seconds = (clock.getCurrentThreadCpuTime() - before - setting) / 1e9;
    all += seconds;
    if (seconds > longest) {
      longest = seconds;
      longestOf = "mutant " + name;
    }
    if (seconds > mostSeconds) {
      failures.add(String.format(Locale.ROOT, "mutant %s took %.2f s", name, seconds));
    }
    if (sound != null && publishing) {
      publish(folder, sound, paper);
    }
    if (findings.hasErrors() && random.nextInt(REFUSED) == 0 && usual) {
      refuse(folder, paper);
    }
    List<Finding> sorted = findings.sorted();
    for (Finding finding : sorted) {
      if (texts.messageOf(finding).isBlank() || texts.hintOf(finding).isBlank()) {
        throw new AssertionError("nothing said of " + finding.code().id());
      }
      codes.merge(finding.code().id(), 1, Integer::sum);
    }
    withFindings += sorted.isEmpty() ? 0 : 1;
  }

  /**
   * What {@code check} does, for one variant on one paper; words are set for what is to be
   * published.
   *
   * @return the variant if it was drawn and nothing is wrong with it, or null
   */
  private Variant check(
      Path folder,
      Random random,
      boolean drawing,
      boolean publishing,
      Paper paper,
      Findings findings)
      throws IOException {
    usual = true;
    PatternSource source = stages.read(folder, findings);
    if (source == null || source.sizes() == null || source.sizes().sizes().isEmpty()) {
      return null;
    }
    Variants known = new Variants(source, findings);
    List<Variant> variants = known.all();
    if (publishing) {
      variants = variants.stream().filter(one -> known.unusual(one).isEmpty()).toList();
    }
    if (variants.isEmpty()) {
      return null;
    }
    Variant variant = variants.get(random.nextInt(variants.size()));
    usual = known.unusual(variant).isEmpty();
    EvaluatedPattern pattern = stages.grade(source, variant, findings);
    stages.across(List.of(pattern), findings);
    if (!drawing || findings.hasErrors()) {
      return null;
    }
    Desk desk =
        desks.computeIfAbsent(
            source.masthead().language(), language -> stages.desk(language, true, Effort.FULL));
    Manual manual = desk.manual(pattern, findings);
    if (findings.hasErrors()) {
      return null;
    }
    SheetPlan plan = desk.plan(pattern, paper);
    drawn++;
    long before = clock.getCurrentThreadCpuTime();
    if (publishing) {
      SheetPlanner planner = desk.planner(Look.STANDARD);
      desk.write(new InstructionsDocument(manual, plan, Plates.of(planner)), findings);
      for (Piece piece : pattern.pieces()) {
        desk.write(new CutFile(pattern, piece, planner), findings);
      }
      desk.write(new Companion(List.of(pattern)), findings);
    }
    setting = clock.getCurrentThreadCpuTime() - before;
    return findings.hasErrors() ? null : variant;
  }

  /** What passes is published. */
  private void publish(Path folder, Variant variant, Paper paper) throws IOException {
    Request request = new Request(List.of(variant.size()), List.of(paper), output);
    Outcome outcome = pipeline.publish(List.of(folder), request, new Listener() {}).get(0);
    if (outcome.failure().isPresent()) {
      throw new AssertionError("passed, but not published", outcome.failure().get());
    }
    if (outcome.result().written().isEmpty()) {
      throw new AssertionError(
          "passed, but not published: "
              + outcome.result().findings().sorted().stream().map(texts::messageOf).toList());
    }
    published++;
  }

  /** What has faults is refused by whoever publishes it, and nothing is written. */
  private void refuse(Path folder, Paper paper) throws IOException {
    Outcome outcome =
        pipeline
            .publish(
                List.of(folder), new Request(List.of(), List.of(paper), output), new Listener() {})
            .get(0);
    if (outcome.failure().isPresent()) {
      throw new AssertionError("checked, but not refused", outcome.failure().get());
    }
    // A fault of one size alone lets the check of another pass, not publishing all.
    if (!outcome.result().findings().hasErrors() || !outcome.result().written().isEmpty()) {
      throw new AssertionError("has faults, and is published");
    }
  }

  private static String told(String name, Throwable failure) {
    StringWriter trace = new StringWriter();
    failure.printStackTrace(new PrintWriter(trace));
    List<String> lines = trace.toString().lines().limit(FRAMES).toList();
    return "mutant " + name + ": " + String.join("\n", lines);
  }
}
