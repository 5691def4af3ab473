package org.lapmark.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.document.Document;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.SizesDocument;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.svg.CutFile;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Severity;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.packing.Effort;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;
import org.lapmark.publish.output.Manifest;
import org.lapmark.publish.output.OutputLock;
import org.lapmark.publish.product.Desk;
import org.lapmark.publish.product.GradeReports;
import org.lapmark.publish.product.LargePrint;
import org.lapmark.publish.product.NestedTiles;
import org.lapmark.publish.product.Products;
import org.lapmark.publish.request.Presentation;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;
import org.lapmark.source.Masthead;
import org.lapmark.source.PatternSource;
import org.lapmark.source.SizeTable;

class PipelineTest {
  private enum Code implements FindingCode {
    ODD(Severity.WARNING),
    WRONG(Severity.ERROR);

    private final Severity severity;

    Code(Severity severity) {
      this.severity = severity;
    }

    @Override
    public String id() {
      return name().toLowerCase(Locale.ROOT);
    }

    @Override
    public Severity severity() {
      return severity;
    }
  }

  @TempDir Path home;
  private Path output;

  /** Stages whose documents say what they are made of. */
  private static class SayingStages implements Stages {
    private final BiConsumer<String, Findings> grading;

    SayingStages(BiConsumer<String, Findings> grading) {
      this.grading = grading;
    }

    @Override
    public PatternSource read(Path folder, Findings findings) throws IOException {
      return source(folder.getFileName().toString(), List.of("S", "M", "L"));
    }

    @Override
    public EvaluatedPattern grade(PatternSource source, Variant variant, Findings findings) {
      grading.accept(source.folder() + " " + variant.size(), findings);
      return new EvaluatedPattern(source, variant, Map.of(), Map.of(), List.of(), List.of(), null);
    }

    SheetPlan plan(Paper paper) {
      Tile tile = new Tile("A1", 0, 0, null, null, List.of(), "");
      return new SheetPlan(paper, 1, 1, List.of(), List.of(tile));
    }

    @Override
    public Desk desk(Locale language, boolean blankPages, Effort effort) {
      Thread owner = Thread.currentThread();
      return new SayingDesk() {
        @Override
        public SheetPlan plan(EvaluatedPattern pattern, Paper paper) {
          assertEquals(owner, Thread.currentThread());
          return SayingStages.this.plan(paper);
        }

        @Override
        String said(Document document) {
          assertEquals(owner, Thread.currentThread());
          if (document instanceof CompleteDocument made) {
            return made.manual().pattern().variant().size() + " " + made.plan().paper().id();
          } else if (document instanceof InstructionsDocument made) {
            return made.manual().look() + " " + made.manual().pattern().variant().size();
          } else if (document instanceof SizesDocument made) {
            return sizes(made.manuals().stream().map(Manual::pattern).toList())
                + " "
                + made.paper().id();
          } else if (document instanceof TilesDocument made) {
            return "tiles " + made.pattern().variant().size();
          } else if (document instanceof Companion made) {
            return sizes(made.patterns());
          }
          return document instanceof CutFile made ? made.piece().name() : "report";
        }

        private String sizes(List<EvaluatedPattern> patterns) {
          return String.join(" ", patterns.stream().map(one -> one.variant().size()).toList());
        }
      };
    }

    static PatternSource source(String folder, List<String> sizes) {
      return source(folder, sizes, "1");
    }

    static PatternSource source(String folder, List<String> sizes, String edition) {
      SourceText one =
          SourceText.verbatim(new SourceFile("pattern.yaml", edition), 0, edition.length());
      Masthead masthead =
          new Masthead(
              one,
              one,
              null,
              Locale.UK,
              null,
              null,
              PrintForm.DEFAULT,
              one,
              LocalDate.of(2026, 1, 1),
              null);
      return new PatternSource(
          folder,
          masthead,
          new SizeTable(sizes, List.of()),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of());
    }
  }

  @BeforeEach
  void places() {
    output = home.resolve("out");
  }

  @Test
  void writesEverySizeOnEveryPaper() throws IOException {
    Outcome outcome = publish(request(List.of(), List.of()), pattern("tote")).get(0);
    assertEquals(31, outcome.result().written().size());
    assertEquals(30, pdfs("tote").size());
    assertEquals("S M L", Files.readString(output.resolve("tote").resolve("tote-1.html")));
    assertEquals(
        "M letter", Files.readString(output.resolve("tote").resolve("tote-1-M-letter.pdf")));
    assertEquals(
        "S M L letter",
        Files.readString(
            output.resolve("tote").resolve("tote-1-all-sizes-letter-instructions.pdf")));
    assertEquals(
        "tiles L", Files.readString(output.resolve("tote").resolve("tote-1-L-shared-tiles.pdf")));
    assertEquals(outcome.result().written().stream().sorted().toList(), outcome.result().written());
  }

  @Test
  void replacesOnlyTheFilesAskedFor() throws IOException {
    publish(request(List.of(), List.of()), pattern("tote"));
    Path other = output.resolve("tote").resolve("tote-1-L-letter.pdf");
    List<Path> before = pdfs("tote");
    Outcome outcome = publish(request(List.of("M"), List.of(Paper.A4)), pattern("tote")).get(0);
    assertEquals(
        List.of("tote-1-M-a4-instructions.pdf", "tote-1-M-a4-tiles.pdf", "tote-1-M-a4.pdf"),
        outcome.result().written().stream().map(path -> path.getFileName().toString()).toList());
    assertEquals(before, pdfs("tote"));
    assertEquals("L letter", Files.readString(other));
  }

  @Test
  void putsOtherUnitsAndRegionsIntoFoldersOfTheirOwn() throws IOException {
    publish(request(List.of("M"), List.of(Paper.A4)), pattern("tote"));
    Presentation american =
        new Presentation(Optional.of(Locale.US), Optional.of(PrintForm.Units.INCHES_FIRST));
    publish(new Request(List.of("M"), List.of(Paper.A4), output).in(american), pattern("tote"));
    assertTrue(Files.exists(output.resolve("tote").resolve("tote-1-M-a4.pdf")));
    assertTrue(
        Files.exists(
            output
                .resolve("tote.en-US.inches-first")
                .resolve("tote.en-US.inches-first-1-M-a4.pdf")));
    Presentation french = new Presentation(Optional.of(Locale.FRENCH), Optional.empty());
    Path tote = pattern("tote");
    assertThrows(
        RefusedException.class,
        () -> publish(new Request(List.of(), List.of(), output).in(french), tote));
  }

  @Test
  void makesLargePrintOnlyWhenAsked() throws IOException {
    Request large = new Request(List.of("M"), List.of(Paper.A4), output).with(LargePrint.EXTRA);
    publish(large, pattern("tote"));
    Path file = output.resolve("tote").resolve("tote-1-M-a4-large-print.pdf");
    assertEquals("LARGE_PRINT M", Files.readString(file));
    publish(request(List.of("M"), List.of(Paper.A4)), pattern("tote"));
    assertFalse(Files.exists(file));
    assertEquals(
        "STANDARD M",
        Files.readString(output.resolve("tote").resolve("tote-1-M-a4-instructions.pdf")));
  }

  @Test
  void keepsTheCompanionWhileNotEverySizeIsMade() throws IOException {
    publish(request(List.of(), List.of()), pattern("tote"));
    Outcome some = publish(request(List.of("M"), List.of()), pattern("tote")).get(0);
    assertTrue(
        some.result().written().stream().noneMatch(path -> path.toString().endsWith("html")));
    Path companion = output.resolve("tote").resolve("tote-1.html");
    assertEquals("S M L", Files.readString(companion));
    Files.writeString(companion, "somebody’s notes");
    Outcome all = publish(request(List.of(), List.of()), pattern("tote")).get(0);
    assertEquals(Optional.empty(), all.failure());
    assertEquals("S M L", Files.readString(companion));
    assertEquals(
        "somebody’s notes", Files.readString(companion.resolveSibling("tote-1.changed-1.html")));
  }

  @Test
  void keepsTheInstructionsOfAllSizesWhileNotEverySizeIsMade() throws IOException {
    publish(request(List.of(), List.of(Paper.A4)), pattern("tote"));
    Path file = output.resolve("tote").resolve("tote-1-all-sizes-a4-instructions.pdf");
    Outcome some = publish(request(List.of("S", "L"), List.of()), pattern("tote")).get(0);
    assertEquals(18, some.result().written().size());
    assertTrue(
        some.result().written().stream().noneMatch(path -> path.toString().contains("all-sizes")));
    assertEquals("S M L a4", Files.readString(file));
  }

  @Test
  void dropsFilesOfSizesThatAreNoMore() throws IOException {
    publish(request(List.of(), List.of()), pattern("tote"));
    Stages fewer =
        new SayingStages((what, findings) -> {}) {
          @Override
          public PatternSource read(Path folder, Findings findings) {
            return source("tote", List.of("M"));
          }
        };
    new Pipeline(fewer, 2, step -> {})
        .publish(List.of(pattern("tote")), request(List.of(), List.of(Paper.A4)), quiet());
    assertEquals(3 + 18 + 2, pdfs("tote").size());
    new Pipeline(fewer, 2, step -> {})
        .publish(List.of(pattern("tote")), request(List.of(), List.of()), quiet());
    assertEquals(9, pdfs("tote").size());
  }

  private void publishEdition(String edition, List<String> sizes, Request request)
      throws IOException {
    Stages stages =
        new SayingStages((what, findings) -> {}) {
          @Override
          public PatternSource read(Path folder, Findings findings) {
            return source("tote", sizes, edition);
          }
        };
    List<Outcome> outcomes =
        new Pipeline(stages, 2, step -> {}).publish(List.of(pattern("tote")), request, quiet());
    if (outcomes.get(0).failure().isPresent()) {
      throw (IOException) outcomes.get(0).failure().get();
    }
  }

  @Test
  void keepsTheFilesOfOtherEditions() throws IOException {
    publishEdition("1", List.of("S", "M"), request(List.of(), List.of()));
    List<Path> first = pdfs("tote");
    publishEdition("2", List.of("S", "M"), request(List.of(), List.of()));
    List<Path> both = pdfs("tote");
    assertTrue(both.containsAll(first));
    assertEquals(2 * first.size(), both.size());
    assertTrue(Files.exists(output.resolve("tote/tote-1.html")));
    assertTrue(Files.exists(output.resolve("tote/tote-2.html")));
    // What an edition has no longer goes away with the next run of this edition, and no other.
    publishEdition("2", List.of("M"), request(List.of(), List.of()));
    List<Path> left = pdfs("tote");
    assertTrue(left.containsAll(first));
    assertEquals(first.size() + 9, left.size());
    publishEdition("1", List.of("M"), request(List.of("M"), List.of(Paper.A4)));
    assertEquals(left, pdfs("tote"));
  }

  @Test
  void keepsTheFilesOfEditionsThatWereNotNoted() throws IOException {
    publishEdition("1", List.of("M"), request(List.of(), List.of()));
    List<Path> first = pdfs("tote");
    Path list = output.resolve("tote").resolve(Manifest.NAME);
    String noted = Files.readString(list);
    assertTrue(noted.contains("\t\t1\ttote-1-M-a4.pdf\n"), noted);
    Files.writeString(
        list, noted.replace("lapmark-files 2", "lapmark-files 1").replace("\t\t1\t", "\t"));
    publishEdition("2", List.of("M"), request(List.of(), List.of()));
    assertTrue(pdfs("tote").containsAll(first));
    publishEdition("1", List.of("M", "L"), request(List.of(), List.of()));
    assertTrue(pdfs("tote").containsAll(first));
  }

  @Test
  void neverTakesTheNameOfAnotherEditionsFile() throws IOException {
    publishEdition("1-2", List.of("S"), request(List.of(), List.of(Paper.A4)));
    FileSystemException taken =
        assertThrows(
            FileSystemException.class,
            () -> publishEdition("1", List.of("2-S"), request(List.of(), List.of(Paper.A4))));
    assertTrue(taken.getReason().startsWith("it belongs to edition ‘1-2’"), taken.getReason());
    assertEquals("S a4", Files.readString(output.resolve("tote/tote-1-2-S-a4.pdf")));
  }

  @Test
  void refusesExtrasThatWouldBeLeftOut() throws IOException {
    refusesExtra(request(List.of("M"), List.of()).with(GradeReports.EXTRA), "leave out --size");
    refusesExtra(request(List.of(), List.of(Paper.A0)).with(GradeReports.EXTRA), "add a4");
    refusesExtra(request(List.of(), List.of(Paper.A0)).with(LargePrint.EXTRA), "--large-print");
    refusesExtra(request(List.of(), List.of(Paper.PROJECTOR)).with(Products.WALK), "--with-walk");
    Request all = request(List.of(), List.of());
    refusesExtra(
        new Request(
            all.sizes(),
            all.papers(),
            all.choices(),
            all.output(),
            all.presentation(),
            Set.of(Products.WALK),
            List.of("1")),
        "leave out --piece");
    Request every = request(List.of("L", "M", "S"), List.of(Paper.A4, Paper.A0));
    publish(every.with(GradeReports.EXTRA), pattern("tote"));
    assertTrue(Files.exists(output.resolve("tote/tote-1-all-sizes-a4-grade-report.pdf")));
  }

  private void refusesExtra(Request request, String message) {
    RefusedException refused =
        assertThrows(RefusedException.class, () -> publish(request, pattern("tote")));
    assertTrue(refused.getMessage().contains(message), refused.getMessage());
    assertTrue(Files.notExists(output));
  }

  @Test
  void saysWhereThereIsNothingToPrint() throws IOException {
    Stages ruled =
        new SayingStages((what, findings) -> {}) {
          @Override
          public PatternSource read(Path folder, Findings findings) {
            return source("tote", List.of("M"));
          }

          @Override
          SheetPlan plan(Paper paper) {
            return new SheetPlan(paper, 1, 1, List.of(), List.of());
          }
        };
    List<String> told = new ArrayList<>();
    Listener listener =
        new Listener() {
          @Override
          public void omitted(Path folder, String what) {
            told.add(what);
          }
        };
    new Pipeline(ruled, 2, step -> {})
        .publish(
            List.of(pattern("tote")),
            request(List.of(), List.of(Paper.A4, Paper.A0)).with(NestedTiles.EXTRA, Products.WALK),
            listener);
    String why = ": there is no piece to print";
    assertEquals(
        List.of(
            "no tiles of M on a4" + why,
            "no tiles of M on a0" + why,
            "no stacked tiles: there is one size, and its tiles are those of all",
            "no walk: the pattern states no seams"),
        told);
    assertEquals(2, pdfs("tote").size());
  }

  @Test
  void keepsFaultyFoldersBackAndPublishesTheOthers() throws IOException {
    Stages stages =
        new SayingStages(
            (what, findings) -> {
              if (what.equals("hat M")) {
                findings.add(Code.WRONG, Position.ofFile("hat/pattern.yaml"));
              }
              if (what.equals("sack M")) {
                throw new FindingException(
                    Finding.of(Code.WRONG, Position.ofFile("sack/pattern.yaml")));
              }
              if (what.equals("cap M")) {
                throw new IllegalStateException("a fault of the program");
              }
            });
    List<Outcome> outcomes =
        new Pipeline(stages, 2, step -> {})
            .publish(
                List.of(pattern("hat"), pattern("sack"), pattern("cap"), pattern("tote")),
                request(List.of(), List.of()),
                quiet());
    assertTrue(outcomes.get(0).result().findings().hasErrors());
    assertTrue(outcomes.get(1).result().findings().hasErrors());
    assertInstanceOf(IllegalStateException.class, outcomes.get(2).failure().orElseThrow());
    assertEquals(31, outcomes.get(3).result().written().size());
    for (String name : List.of("hat", "sack", "cap")) {
      assertFalse(Files.exists(output.resolve(name)));
      assertFalse(Files.exists(output.resolve("." + name + ".new")));
    }
  }

  @Test
  void findingsDoNotDependOnThreads() throws IOException {
    Stages stages =
        new SayingStages(
            (what, findings) -> {
              for (int i = 0; i < 400; i++) {
                findings.add(Code.ODD, Position.ofFile("tote/pattern.yaml"), "what", what + i);
              }
            });
    List<List<Finding>> found = new ArrayList<>();
    for (int threads : new int[] {1, 2, 4, 4}) {
      Outcome outcome =
          new Pipeline(stages, threads, step -> {}).check(List.of(pattern("tote")), quiet()).get(0);
      found.add(outcome.result().findings().sorted());
      assertEquals(3 * 400 - Findings.LIMIT, outcome.result().findings().leftOut());
    }
    assertEquals(Findings.LIMIT, found.get(0).size());
    found.forEach(findings -> assertEquals(found.get(0), findings));
  }

  @Test
  void tellsOnceWhatIsWrongInSeveralSizes() throws IOException {
    Stages stages =
        new SayingStages(
            (what, findings) -> {
              String size = List.of(what.split(" ")).get(1);
              Position position = Position.ofFile("tote/pattern.yaml");
              findings.add(Code.ODD, position, "what", "hem", "size", size);
              if (size.equals("M")) {
                findings.add(Code.ODD, position, "what", "strap", "size", size);
              }
            });
    Outcome outcome =
        new Pipeline(stages, 4, step -> {}).check(List.of(pattern("tote")), quiet()).get(0);
    assertEquals(
        List.of("{what=hem, size=S, M, L}", "{what=strap, size=M}"),
        outcome.result().findings().sorted().stream()
            .map(finding -> finding.arguments().toString())
            .toList());
  }

  @Test
  void endsItsThreads() throws Exception {
    Set<Thread> before = Thread.getAllStackTraces().keySet();
    publish(request(List.of(), List.of()), pattern("tote"));
    Set<Thread> after = new LinkedHashSet<>(Thread.getAllStackTraces().keySet());
    after.removeAll(before);
    for (Thread thread : after) {
      if (thread.getName().startsWith("pool-")) {
        // A worker whose pool has ended may still be on its way out.
        thread.join(10_000);
        assertFalse(thread.isAlive(), thread.getName());
      }
    }
  }

  @Test
  void refusesAnUnknownSizeBeforeWritingAnything() throws IOException {
    RefusedException refused =
        assertThrows(
            RefusedException.class,
            () -> publish(request(List.of("XM"), List.of()), pattern("tote")));
    assertTrue(refused.getMessage().contains("did you mean ‘M’?"), refused.getMessage());
    assertTrue(refused.getMessage().contains("S, M, L"), refused.getMessage());
    assertFalse(Files.exists(output));
  }

  @Test
  void refusesToWriteOverASource() throws IOException {
    Path tote = pattern("tote");
    Path link = Files.createSymbolicLink(home.resolve("link"), tote.getParent());
    for (Path bad : List.of(tote, tote.resolve("out"), tote.getParent(), link)) {
      Request request = new Request(List.of(), List.of(), bad);
      assertThrows(RefusedException.class, () -> publish(request, tote), bad.toString());
    }
    Path nested = Files.createDirectories(home.resolve("content/other/tote"));
    Request over = new Request(List.of(), List.of(), home.resolve("content"));
    assertThrows(RefusedException.class, () -> publish(over, nested.resolveSibling("hat"), tote));
    try (Stream<Path> children = Files.list(tote)) {
      assertEquals(0, children.count());
    }
  }

  @Test
  void refusesFoldersOfTheSameName() throws IOException {
    Path one = pattern("tote");
    Path two = Files.createDirectories(home.resolve("other/TOTE"));
    assertThrows(RefusedException.class, () -> publish(request(List.of(), List.of()), one, two));
    assertEquals(1, publish(request(List.of(), List.of()), one, one).size());
  }

  @Test
  void failsWhereTheOutputIsAFile() throws IOException {
    Files.writeString(output, "a file");
    Path tote = pattern("tote");
    assertThrows(FileSystemException.class, () -> publish(request(List.of(), List.of()), tote));
    assertEquals("a file", Files.readString(output));
  }

  @Test
  void keepsASecondPublisherOut() throws IOException {
    Path tote = pattern("tote");
    try (OutputLock lock = OutputLock.take(output)) {
      FileSystemException refused =
          assertThrows(
              FileSystemException.class, () -> publish(request(List.of(), List.of()), tote));
      assertTrue(refused.getReason().contains("another"), refused.getReason());
      assertEquals(output, lock.folder());
    }
    assertEquals(1, publish(request(List.of(), List.of()), tote).size());
  }

  @Test
  void reportsAMissingFolderAsAFailure() throws IOException {
    Outcome outcome = publish(request(List.of(), List.of()), home.resolve("nowhere")).get(0);
    assertInstanceOf(IOException.class, outcome.failure().orElseThrow());
  }

  private List<Outcome> publish(Request request, Path... folders) throws IOException {
    return new Pipeline(new SayingStages((what, findings) -> {}), 2, step -> {})
        .publish(List.of(folders), request, quiet());
  }

  private Request request(List<String> sizes, List<Paper> papers) {
    return new Request(sizes, papers, output);
  }

  private Path pattern(String name) throws IOException {
    return Files.createDirectories(home.resolve("content").resolve(name));
  }

  private List<Path> pdfs(String name) throws IOException {
    try (Stream<Path> children = Files.list(output.resolve(name))) {
      return children.filter(path -> path.toString().endsWith(".pdf")).sorted().toList();
    }
  }

  private static Listener quiet() {
    return new Listener() {};
  }
}
