package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.Document;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.SizesDocument;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.svg.CutFile;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.packing.Effort;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.output.FileNames;
import org.lapmark.publish.output.Purpose;
import org.lapmark.publish.product.Desk;
import org.lapmark.publish.product.GradeReports;
import org.lapmark.publish.product.LargePrint;
import org.lapmark.publish.request.Presentation;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** One document is written for each combination that is asked for. */
class ChoicesTest {
  private static final Path PATTERN =
      Path.of("src", "test", "resources", "org", "lapmark", "grade", "options");

  @TempDir Path home;
  private Path folder;
  private final TreeSet<String> graded = new TreeSet<>();
  private final TreeSet<String> planned = new TreeSet<>();
  private BiConsumer<EvaluatedPattern, Findings> manualFindings = (pattern, findings) -> {};

  private final class SayingStages implements Stages {
    @Override
    public PatternSource read(Path ignored, Findings findings) throws IOException {
      return PatternReader.read(folder, findings);
    }

    @Override
    public EvaluatedPattern grade(PatternSource source, Variant variant, Findings findings) {
      synchronized (graded) {
        graded.add(variant.size() + " " + variant.choices());
      }
      return Grader.grade(source, variant, findings);
    }

    @Override
    public Desk desk(Locale language, boolean blankPages, Effort effort) {
      return new SayingDesk() {
        @Override
        public SheetPlan plan(EvaluatedPattern pattern, Paper paper) {
          synchronized (graded) {
            planned.add(pattern.variant().size() + " " + pattern.variant().choices());
          }
          return new SheetPlan(paper, 1, 1, List.of(), List.of());
        }

        @Override
        public Manual manual(EvaluatedPattern pattern, Findings findings) {
          if (pattern.variant().choices().get("closure").equals("flap")) {
            manualFindings.accept(pattern, findings);
          }
          return super.manual(pattern, findings);
        }

        @Override
        String said(Document document) {
          if (document instanceof CompleteDocument made) {
            return made.manual().pattern().variant().toString();
          } else if (document instanceof InstructionsDocument made) {
            return made.manual().look() + " " + made.manual().pattern().variant();
          } else if (document instanceof SizesDocument made) {
            return made.manuals().stream()
                .map(one -> one.pattern().variant().toString())
                .collect(Collectors.joining(", "));
          } else if (document instanceof Companion made) {
            return made.patterns().stream()
                .map(one -> one.variant().size() + " " + one.variant().choices().get("trim"))
                .collect(Collectors.joining(", "));
          }
          return document instanceof CutFile made ? made.piece().name() : "";
        }
      };
    }
  }

  @BeforeEach
  void copy() throws IOException {
    folder = home.resolve("content").resolve("roll");
    try (Stream<Path> files = Files.walk(PATTERN)) {
      for (Path file : files.toList()) {
        Path target = folder.resolve(PATTERN.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }

  private Outcome publish(List<String> sizes, Map<String, String> choices) throws IOException {
    SortedMap<String, String> sorted = new TreeMap<>(choices);
    return new Pipeline(new SayingStages(), 2, step -> {})
        .publish(
            List.of(folder),
            new Request(sizes, List.of(Paper.A4), sorted, home.resolve("out")),
            new Listener() {})
        .get(0);
  }

  private static List<String> names(Outcome outcome) {
    assertEquals(List.of(), outcome.result().findings().sorted());
    return outcome.result().written().stream().map(path -> path.getFileName().toString()).toList();
  }

  private List<String> files() throws IOException {
    try (Stream<Path> children = Files.list(home.resolve("out").resolve("roll"))) {
      return children
          .map(path -> path.getFileName().toString())
          .filter(name -> name.endsWith(".pdf"))
          .sorted()
          .toList();
    }
  }

  @Test
  void namesWhatIsNotChosenByDefault() throws IOException {
    assertEquals(
        List.of(
            "roll-1-M-a4-instructions.pdf",
            "roll-1-M-a4.pdf",
            "roll-1-S-a4-instructions.pdf",
            "roll-1-S-a4.pdf",
            "roll-1-sizes-M.html",
            "roll-1-sizes-S.html"),
        names(publish(List.of(), Map.of())));
    assertEquals(
        List.of(
            "roll-1-M--trim-yes-a4-instructions.pdf",
            "roll-1-M--trim-yes-a4.pdf",
            "roll-1-S--trim-yes-a4-instructions.pdf",
            "roll-1-S--trim-yes-a4.pdf"),
        names(publish(List.of(), Map.of("trim", "yes", "closure", "slide"))));
    assertEquals(
        List.of(
            "roll-1-M--closure-flap-cord-no-a4-instructions.pdf",
            "roll-1-M--closure-flap-cord-no-a4.pdf"),
        names(publish(List.of("M"), Map.of("closure", "flap", "cord", "no"))));
    assertEquals(
        List.of(
            "roll-1-M--closure-flap-cord-no-a4-instructions.pdf",
            "roll-1-M--closure-flap-cord-no-a4.pdf",
            "roll-1-M--trim-yes-a4-instructions.pdf",
            "roll-1-M--trim-yes-a4.pdf",
            "roll-1-M-a4-instructions.pdf",
            "roll-1-M-a4.pdf",
            "roll-1-S--trim-yes-a4-instructions.pdf",
            "roll-1-S--trim-yes-a4.pdf",
            "roll-1-S-a4-instructions.pdf",
            "roll-1-S-a4.pdf"),
        files());
  }

  @Test
  void aCompanionIsOfSizesAsByDefaultThatConsistOfTheSame() throws IOException {
    Path companion = home.resolve("out").resolve("roll").resolve("roll-1-sizes-S.html");
    publish(List.of(), Map.of("trim", "yes"));
    assertFalse(Files.exists(companion));
    publish(List.of(), Map.of("trim", "no"));
    assertEquals("S no", Files.readString(companion));
    publish(List.of(), Map.of("trim", "yes"));
    assertEquals("S no", Files.readString(companion));
  }

  @Test
  void choicesAreMadeInAnyPresentationAndInLargePrint() throws IOException {
    SortedMap<String, String> choices = new TreeMap<>(Map.of("trim", "yes"));
    Presentation inches = new Presentation(Optional.empty(), Optional.of(PrintForm.Units.INCHES));
    Outcome outcome =
        new Pipeline(new SayingStages(), 2, step -> {})
            .publish(
                List.of(folder),
                new Request(List.of("M"), List.of(Paper.A4), choices, home.resolve("out"))
                    .in(inches)
                    .with(LargePrint.EXTRA),
                new Listener() {})
            .get(0);
    assertEquals(
        List.of(
            "roll.inches-1-M--trim-yes-a4-instructions.pdf",
            "roll.inches-1-M--trim-yes-a4-large-print.pdf",
            "roll.inches-1-M--trim-yes-a4.pdf"),
        names(outcome));
  }

  private List<String> reports(List<String> sizes, Map<String, String> choices) throws IOException {
    Request request =
        new Request(sizes, List.of(Paper.A4), new TreeMap<>(choices), home.resolve("out"));
    Outcome outcome =
        new Pipeline(new SayingStages(), 2, step -> {})
            .publish(List.of(folder), request.with(GradeReports.EXTRA), new Listener() {})
            .get(0);
    return names(outcome).stream().filter(name -> name.contains("grade-report")).toList();
  }

  @Test
  void aGradeReportIsOfEverySizeWhateverIsChosen() throws IOException {
    assertEquals(List.of("roll-1-all-sizes-a4-grade-report.pdf"), reports(List.of(), Map.of()));
    assertEquals(
        List.of("roll-1-all-sizes--trim-yes-a4-grade-report.pdf"),
        reports(List.of(), Map.of("trim", "yes")));
    assertThrows(RefusedException.class, () -> reports(List.of("M"), Map.of()));
    reports(List.of("S", "M"), Map.of());
    // Both are there, and what a run of one size doesn't make stays.
    assertEquals(2, files().stream().filter(name -> name.endsWith("-grade-report.pdf")).count());
  }

  @Test
  void gradingLooksAtOneVariantASize() {
    List<EvaluatedFolder> walks =
        new Pipeline(new SayingStages(), 2, step -> {})
            .grade(List.of(folder), List.of(), new TreeMap<>(Map.of("trim", "yes")));
    assertEquals(
        List.of("S yes", "M yes"),
        walks.get(0).patterns().stream()
            .map(one -> one.variant().size() + " " + one.variant().choices().get("trim"))
            .toList());
    assertThrows(
        RefusedException.class,
        () ->
            new Pipeline(new SayingStages(), 2, step -> {})
                .grade(List.of(folder), List.of(), new TreeMap<>(Map.of("trim", "maybe"))));
  }

  @Test
  void checkTellsOnceWhatSeveralManualsShow() {
    manualFindings =
        (pattern, findings) ->
            findings.add(
                GradeCode.NAME_ABSENT,
                pattern.source().masthead().title().position(),
                "name",
                "something",
                "size",
                pattern.variant().size());
    Outcome outcome =
        new Pipeline(new SayingStages(), 2, step -> {})
            .check(List.of(folder), new Listener() {})
            .get(0);
    List<Finding> found = outcome.result().findings().sorted();
    assertEquals(1, found.size(), found.toString());
    assertEquals("S, closure flap", found.get(0).arguments().get("size"));
  }

  @Test
  void walkLooksAtEveryCombinationOfTheSizesWanted() {
    List<EvaluatedFolder> walks =
        new Pipeline(new SayingStages(), 2, step -> {}).walk(List.of(folder), List.of("M"));
    assertEquals(6, walks.get(0).patterns().size());
    assertEquals(6, graded.size());
    assertTrue(graded.stream().allMatch(one -> one.startsWith("M ")));
  }

  @Test
  void publishingEverythingDropsOtherChoices() throws IOException {
    publish(List.of(), Map.of("trim", "yes"));
    new Pipeline(new SayingStages(), 2, step -> {})
        .publish(
            List.of(folder),
            new Request(List.of(), List.of(), Collections.emptySortedMap(), home.resolve("out")),
            new Listener() {});
    assertTrue(files().stream().noneMatch(name -> name.contains("--")), files().toString());
  }

  @Test
  void refusesWhatItDoesNotKnowOrCannotMake() {
    assertEquals(
        "‘roll’ has no option ‘trin’; did you mean ‘trim’? (its options: trim, closure, cord)",
        refusal(List.of(), Map.of("trin", "yes")));
    assertEquals(
        "the option ‘closure’ of ‘roll’ has no choice ‘slid’; did you mean ‘slide’? (its choices:"
            + " slide, flap)",
        refusal(List.of(), Map.of("closure", "slid")));
    assertEquals(
        "‘roll’ can't be made in size S with cord: No cord in size S.",
        refusal(List.of(), Map.of("cord", "yes")));
    assertEquals(
        "‘roll’ can't be made in size M with trim, closure flap: A flap would lie on the piping.",
        refusal(List.of("M"), Map.of("closure", "flap", "trim", "yes")));
  }

  private String refusal(List<String> sizes, Map<String, String> choices) {
    return assertThrows(RefusedException.class, () -> publish(sizes, choices)).getMessage();
  }

  @Test
  void checkLooksAtEveryCombination() {
    Outcome outcome =
        new Pipeline(new SayingStages(), 2, step -> {})
            .check(List.of(folder), new Listener() {})
            .get(0);
    assertEquals(List.of(), outcome.result().findings().sorted());
    assertEquals(9, graded.size());
    assertTrue(graded.containsAll(planned));
    for (String choice : List.of("trim=yes", "trim=no", "closure=flap", "cord=no")) {
      assertTrue(planned.stream().anyMatch(one -> one.contains(choice)), choice);
    }
    assertTrue(planned.size() < graded.size());
  }

  @Test
  void checkTellsAboutAConditionThatNeverHolds() throws IOException {
    Path pattern = folder.resolve("pattern.yaml");
    Files.writeString(
        pattern,
        Files.readString(pattern)
            .replace(
                "    panel: pocket\n    when: closure = flap",
                "    panel: pocket\n    when: closure = flap and trim"));
    Outcome outcome =
        new Pipeline(new SayingStages(), 2, step -> {})
            .check(List.of(folder), new Listener() {})
            .get(0);
    List<Finding> found = outcome.result().findings().sorted();
    assertEquals(1, found.size());
    assertEquals("when-never", found.get(0).code().id());
  }

  @Test
  void longChoicesKeepFileNamesShort() {
    FileNames names = FileNames.of("roll", "1", List.of("M"));
    String one = "a".repeat(100) + "-yes";
    String other = "a".repeat(101) + "-yes";
    assertTrue(names.of(Purpose.ofSize("M", one).on(Paper.A4), ".pdf").length() < 90);
    assertTrue(
        !names
            .of(Purpose.ofSize("M", one).on(Paper.A4), ".pdf")
            .equals(names.of(Purpose.ofSize("M", other).on(Paper.A4), ".pdf")));
  }
}
