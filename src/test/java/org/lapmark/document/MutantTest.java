package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.check.CareChecks;
import org.lapmark.check.CareWords;
import org.lapmark.check.PatternChecks;
import org.lapmark.check.Reach;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternReader;
import org.lapmark.source.PatternSource;
import org.lapmark.wording.Wording;

/**
 * Patterns damaged at random are read, evaluated, checked and drawn: they give findings, never a
 * failure, and never cost more than a bounded amount of work.
 *
 * <p>{@code -Dmutants=10000} makes more of them, {@code -Dmutant=4711} one again.
 */
class MutantTest {
  private static final int MUTANTS = Integer.getInteger("mutants", 150);
  private static final int ONE = Integer.getInteger("mutant", -1);
  private static final int SEED = 20261125;

  /** Processor time, which other programs don't lengthen; a sound pattern takes a tenth of one. */
  private static final double MOST_SECONDS = 20;

  private static final int MOST_FAILURES = 20;
  private static final Path RESOURCES = Path.of("src", "test", "resources", "org", "lapmark");

  /** The demo, and patterns with what the demo lacks: options, translations, stated shapes. */
  private static final List<Path> PATTERNS =
      List.of(
          Path.of("content", "towpath-handlebar-bag"),
          RESOURCES.resolve("grade/options"),
          RESOURCES.resolve("check/translation/base"),
          RESOURCES.resolve("document/cutting"));

  @TempDir Path home;

  private final FindingText texts = new FindingText();
  private final Map<String, Integer> codes = new TreeMap<>();
  private final DocumentWriter writer = new DocumentWriter(Specimen.templates());
  private final StyleSheet styles = writer.styles();
  private final LetteringMeasure lettering = writer.lettering();
  private final Map<Locale, Wording> wordings = new LinkedHashMap<>();
  private int drawn;

  /** A pattern to be damaged. */
  private record Subject(Path folder, Map<Path, byte[]> files, Mutator mutator) {}

  private Subject subject(Path pattern) throws IOException {
    Path folder = Files.createDirectory(home.resolve(pattern.getFileName() + "-damaged"));
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

  @Test
  void damagedPatternsGiveFindings() throws IOException {
    List<Subject> subjects = new ArrayList<>();
    for (Path pattern : PATTERNS) {
      subjects.add(subject(pattern));
    }
    List<String> failures = new ArrayList<>();
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    double longest = 0;
    double all = 0;
    int withFindings = 0;
    int first = Math.max(0, ONE);
    int end = ONE < 0 ? MUTANTS : ONE + 1;
    for (int i = first; i < end && failures.size() < MOST_FAILURES; i++) {
      Random random = new Random(SEED + 7919L * i);
      // Half of them are the demo.
      Subject subject = subjects.get(random.nextBoolean() ? 0 : random.nextInt(subjects.size()));
      Path file = anyFile(subject, random);
      byte[] mutant = subject.mutator().mutant(subject.files().get(file), random);
      Files.write(file, mutant);
      long before = clock.getCurrentThreadCpuTime();
      try {
        withFindings += findings(subject.folder(), random) ? 1 : 0;
      } catch (Exception | StackOverflowError | OutOfMemoryError | AssertionError e) {
        failures.add(told(i, file, e));
      }
      double seconds = (clock.getCurrentThreadCpuTime() - before) / 1e9;
      all += seconds;
      longest = Math.max(longest, seconds);
      if (seconds > MOST_SECONDS) {
        failures.add("mutant " + i + " of " + file + " took " + seconds + " s");
      }
      if (ONE >= 0) {
        Files.write(Path.of("build-output", "mutant-" + file.getFileName()), mutant);
      }
      Files.write(file, subject.files().get(file));
    }
    if (MUTANTS > 1000) {
      System.out.printf(
          Locale.ROOT,
          "%d mutants, %d with findings of %d codes, %d drawn; %.0f s of processor time, at most"
              + " %.2f s for one%n",
          end - first,
          withFindings,
          codes.size(),
          drawn,
          all,
          longest);
    }
    assertEquals("", String.join("\n", failures));
    assertTrue(ONE >= 0 || withFindings > MUTANTS / 4, "hardly any damage was noticed");
    assertTrue(ONE >= 0 || drawn > MUTANTS / 100, "hardly any was sound enough to be drawn");
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

  private boolean findings(Path folder, Random random) throws IOException {
    Findings findings = new Findings();
    try {
      work(folder, random, findings);
    } catch (FindingException e) {
      findings.add(e.finding());
    }
    List<Finding> sorted = findings.sorted();
    for (Finding finding : sorted) {
      assertFalse(texts.messageOf(finding).isBlank());
      assertFalse(texts.hintOf(finding).isBlank());
      codes.merge(finding.code().id(), 1, Integer::sum);
    }
    return !sorted.isEmpty();
  }

  private void work(Path folder, Random random, Findings findings) throws IOException {
    PatternSource source = PatternReader.read(folder, findings);
    if (source == null) {
      return;
    }
    PatternChecks.run(source, writer::lackingWords, findings);
    Locale language = source.masthead().language();
    Wording wording = wordings.computeIfAbsent(language, writer::wording);
    CareChecks.run(source, CareWords.of(wording), findings);
    Reach reach = new Reach(Manual.PAGES, Hazards.known(wording), writer::missingGlyphs);
    if (source.sizes() == null || source.sizes().sizes().isEmpty()) {
      return;
    }
    List<Variant> variants = new Variants(source, findings).all();
    if (variants.isEmpty()) {
      return;
    }
    Variant variant = variants.get(random.nextInt(variants.size()));
    GradedPattern pattern = Grader.grade(source, variant, findings);
    PatternChecks.run(pattern, reach, findings);
    CareChecks.run(pattern, CareWords.of(wording), findings);
    boolean drawing = random.nextInt(4) == 0;
    if (!findings.hasErrors() && drawing) {
      drawn++;
      new ManualMaker(pattern, wording, styles, lettering, findings).make(Look.STANDARD, List.of());
    }
  }

  private static String told(int index, Path file, Throwable failure) {
    StringWriter trace = new StringWriter();
    failure.printStackTrace(new PrintWriter(trace));
    List<String> lines = trace.toString().lines().limit(12).toList();
    return "mutant " + index + " of " + file + ": " + String.join("\n", lines);
  }
}
