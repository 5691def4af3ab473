package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.Mark;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

class OptionsTest {
  private static final Path PATTERN =
      Path.of("src", "test", "resources", "org", "lapmark", "grade", "options");

  private static final DocumentLimits REACH =
      new DocumentLimits(List.of(), List.of(), text -> List.of());

  private final Findings findings = new Findings();
  @TempDir Path folder;
  private PatternSource source;
  private Variants variants;

  @BeforeEach
  void read() throws IOException {
    source = PatternReader.read(PATTERN, findings);
    variants = new Variants(source, findings);
  }

  private EvaluatedPattern grade(String size, Map<String, String> choices) {
    EvaluatedPattern pattern = Grader.grade(source, variants.of(size, choices), findings);
    Rules.inVariant(new Evaluated(pattern, REACH, CareWords.NONE), findings);
    assertEquals(List.of(), findings.sorted());
    return pattern;
  }

  @Test
  void combinesWhatIsNotForbidden() {
    List<String> described = variants.all().stream().map(variants::described).toList();
    assertEquals(
        List.of(
            "S",
            "S, closure flap",
            "S with trim",
            "M",
            "M without cord",
            "M, closure flap",
            "M, closure flap, without cord",
            "M with trim",
            "M with trim, without cord"),
        described);
    assertEquals(List.of(), findings.sorted());
  }

  @Test
  void aDefaultMayDependOnTheSize() {
    assertEquals(
        Map.of("trim", "no", "closure", "slide", "cord", "no"), variants.standard("S").choices());
    assertEquals("yes", variants.standard("M").choices().get("cord"));
    assertEquals(Map.of("cord", "no"), variants.unusual(variants.of("M", Map.of("cord", "no"))));
  }

  @Test
  void saysWhyACombinationIsForbidden() {
    assertEquals(
        Optional.of("No cord in size S."),
        variants.forbidden(variants.of("S", Map.of("cord", "yes"))));
    assertEquals(Optional.empty(), variants.forbidden(variants.of("M", Map.of("cord", "yes"))));
  }

  @Test
  void hasWhatTheVariantHasAndNothingElse() {
    EvaluatedPattern plain = grade("M", Map.of());
    assertEquals(List.of(1), plain.pieces().stream().map(Piece::number).toList());
    assertEquals(List.of("main"), ids(plain));
    assertEquals(
        List.of("zip", "tie"),
        plain.source().hardware().stream().map(thing -> thing.id().text()).toList());
    assertEquals(List.of("trim_width", "round"), measures(plain));
    assertEquals(List.of("front"), List.copyOf(plain.panels().keySet()));
    assertEquals(List.of(), plain.seams());
    assertEquals(1, plain.source().finished().size());
    assertEquals(List.of("cut"), steps(plain));
    assertEquals("Cut everything.", plain.source().steps().get(0).body().text().strip());
    assertEquals(
        List.of("main", "zip_foot"),
        plain.source().steps().get(0).uses().stream().map(SourceText::text).toList());
    assertEquals("A roll.", plain.source().notes().get(0).body().text().strip());
    assertEquals(1, notches(plain));
    Piece front = plain.pieces().get(0);
    assertEquals(1, front.cuts().size());
    assertEquals(120 + 20, front.statedSize().orElseThrow().width(), 1e-9);
    assertEquals(130 + 10, front.statedSize().orElseThrow().height(), 1e-9);
  }

  @Test
  void hasMoreWhereMoreIsChosen() {
    EvaluatedPattern trimmed = grade("M", Map.of("trim", "yes", "cord", "no"));
    assertEquals(List.of(1, 3), trimmed.pieces().stream().map(Piece::number).toList());
    assertEquals(List.of("main", "binding"), ids(trimmed));
    assertEquals(List.of("cut", "trim"), steps(trimmed));
    assertEquals(2, trimmed.pieces().get(0).cuts().size());
    assertEquals(2, notches(trimmed));
    assertEquals(1, trimmed.seams().size());
    assertTrue(trimmed.source().steps().get(0).body().text().contains("{trim_width}"));
    assertEquals(120 + 24, trimmed.pieces().get(0).statedSize().orElseThrow().width(), 1e-9);

    EvaluatedPattern flap = grade("S", Map.of("closure", "flap"));
    assertEquals(List.of("trim_width", "round", "pocket"), measures(flap));
    assertEquals(2, flap.source().finished().size());
    assertEquals(List.of(), flap.source().hardware());
    assertTrue(flap.source().notes().get(0).body().text().contains("It has a flap."));
    // An edge allowance of another variant leaves the general one.
    assertEquals(150 + 20, flap.pieces().get(0).statedSize().orElseThrow().height(), 1e-9);
  }

  @Test
  void solvesInEveryVariant() {
    EvaluatedPattern small = grade("S", Map.of("closure", "flap"));
    // 2 x (100 + 150) = 500, and a quarter of its height.
    assertEquals(150, ((Value.Quantity) small.measures().get("round")).amount(), 1e-9);
    assertEquals(37.5, ((Value.Quantity) small.measures().get("pocket")).amount(), 1e-9);
    assertEquals(
        130, ((Value.Quantity) grade("M", Map.of()).measures().get("round")).amount(), 1e-9);
  }

  @Test
  void printsOptionsAndTheSize() {
    EvaluatedPattern pattern = grade("M", Map.of());
    String text = "{closure}, {size}, {trim}";
    TemplateText template =
        TemplateText.parse(
            SourceText.verbatim(new SourceFile("a.md", text), 0, text.length()), findings);
    assertEquals("A zip, M, –", PrintedText.of(template, pattern, findings).orElseThrow().text());
  }

  @Test
  void tellsWhatShowsInSeveralVariantsOnce() {
    List<Variant> all = variants.all();
    List<Findings> found = new ArrayList<>();
    for (Variant variant : all) {
      Findings own = new Findings();
      Position place = source.pieces().get(0).position();
      if (variant.choices().get("trim").equals("yes")) {
        own.add(GradeCode.ALLOWANCE_NEGATIVE, place, "value", "-1", "size", variant.size());
      }
      own.add(
          GradeCode.LENGTH_NOT_POSITIVE,
          place,
          "value",
          variant.size().equals("S") ? "-3" : "-2",
          "size",
          variant.size());
      found.add(own);
    }
    variants.join(found, all);
    List<String> messages = findings.sorted().stream().map(FindingText::message).sorted().toList();
    assertEquals(
        List.of(
            "This allowance comes to -1 mm in size S with trim.",
            "This length comes to -2 mm in size M; it must be above 0.",
            "This length comes to -3 mm in size S; it must be above 0."),
        messages);
  }

  @Test
  void everyChoiceOccursOnPaper() {
    List<Variant> all = variants.all();
    List<Variant> medium = all.stream().filter(one -> one.size().equals("M")).toList();
    List<Variant> some = Variants.everyChoice(medium);
    assertEquals(medium.get(0), some.get(0));
    assertFalse(some.size() == medium.size());
    for (Variant variant : medium) {
      for (Map.Entry<String, String> choice : variant.choices().entrySet()) {
        assertTrue(some.stream().anyMatch(one -> one.choices().entrySet().contains(choice)));
      }
    }
  }

  @Test
  void reportsNoPieceThatSomeVariantHas() {
    Conditions conditions = new Conditions(source);
    for (Variant variant : variants.all()) {
      conditions.see(grade(variant.size(), variant.choices()));
    }
    conditions.report(variants.neverChosen(), variants.isComplete(), findings);
    assertEquals(List.of(), findings.sorted());
  }

  /** The pattern with some lines exchanged and some files added. */
  private void change(Map<String, String> lines, Map<String, String> files) throws IOException {
    try (Stream<Path> all = Files.walk(PATTERN)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        Path target = folder.resolve(PATTERN.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
    Path pattern = folder.resolve("pattern.yaml");
    String text = Files.readString(pattern);
    for (Map.Entry<String, String> line : lines.entrySet()) {
      assertTrue(text.contains(line.getKey()));
      text = text.replace(line.getKey(), line.getValue());
    }
    Files.writeString(pattern, text);
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path target = folder.resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.writeString(target, file.getValue());
    }
    source = PatternReader.read(folder, findings);
    variants = new Variants(source, findings);
    assertEquals(List.of(), findings.sorted());
  }

  @Test
  void aSeamGivesNotchesOnlyWhereItIsSewn() throws IOException {
    change(
        Map.of(
            "      - {edge: top, at: 0.5}\n",
            "      - {edge: top, at: 0.5}\n      - {edge: bottom, from_seam: edge}\n",
            "    when: trim\n    strip:",
            "    when: trim\n    notches: [{edge: left, at: 0.6}]\n    strip:"),
        Map.of());
    assertEquals(1, notches(grade("M", Map.of())));
    assertEquals(3, notches(grade("M", Map.of("trim", "yes"))));
  }

  @Test
  void repeatedNotchesMayDependOnWhatIsSolvedFor() throws IOException {
    change(
        Map.of(
            "      - {edge: top, at: 0.5}\n",
            "      - {edge: top, at: 0.5}\n      - {edge: bottom, every: round / 4}\n"),
        Map.of());
    // At the middle of 120 mm and 32.5 mm to either side of it.
    assertEquals(1 + 3, notches(grade("M", Map.of())));
  }

  @Test
  void aTranslationHasTheSameConditions() throws IOException {
    change(
        Map.of(),
        Map.of(
            "translations/de/texts.yaml",
            """
            texts:
              - {from: A zip, to: Ein Reißverschluss}
              - {from: Closure, to: Verschluss}
              - {from: "Takes {trim_width} more.", to: "Braucht {trim_width} mehr."}
              - {from: A flap would lie on the piping., to: Eine Klappe läge auf der Paspel.}
              - {from: Pocket, to: Tasche}
            """,
            "translations/de/steps/020-trim.md",
            """
            ---
            id: trim
            title: Paspel
            stage: Nähen
            original: "00000000"
            ---
            Paspel annähen.
            """,
            "translations/de/notes/introduction.md",
            """
            ---
            original: "00000000"
            ---
            Eine Rolle.
            ``` when closure = flap
            Sie hat eine Klappe.
            ```
            """));
    source = AuthorTexts.translated(source, source.translations().get(0));
    variants = new Variants(source, findings);
    assertEquals("Verschluss", source.options().option("closure").orElseThrow().label().text());
    assertEquals(
        "Braucht {trim_width} mehr.",
        source.options().option("trim").orElseThrow().text().source().text());
    assertEquals(
        Optional.of("Eine Klappe läge auf der Paspel."),
        variants.forbidden(variants.of("M", Map.of("trim", "yes", "closure", "flap"))));
    EvaluatedPattern plain = grade("M", Map.of());
    assertEquals(1, plain.source().finished().size());
    assertEquals(List.of("cut"), steps(plain));
    assertEquals("Eine Rolle.", plain.source().notes().get(0).body().text().strip());
    String text = "{closure}";
    TemplateText template =
        TemplateText.parse(
            SourceText.verbatim(new SourceFile("a.md", text), 0, text.length()), findings);
    assertEquals(
        "Ein Reißverschluss", PrintedText.of(template, plain, findings).orElseThrow().text());
    EvaluatedPattern flap = grade("S", Map.of("closure", "flap"));
    assertEquals("Tasche", flap.source().finished().get(1).label().source().text());
    assertTrue(flap.source().notes().get(0).body().text().contains("Sie hat eine Klappe."));
    EvaluatedPattern trimmed = grade("M", Map.of("trim", "yes"));
    assertEquals("Paspel", trimmed.source().steps().get(1).title().text());
  }

  private static List<String> ids(EvaluatedPattern pattern) {
    return pattern.source().materials().stream().map(thing -> thing.id().text()).toList();
  }

  private static List<String> measures(EvaluatedPattern pattern) {
    return pattern.measures().keySet().stream()
        .filter(name -> !name.equals("pouch_width"))
        .toList();
  }

  private static List<String> steps(EvaluatedPattern pattern) {
    return pattern.source().steps().stream().map(step -> step.id().text()).toList();
  }

  private static long notches(EvaluatedPattern pattern) {
    return pattern.panels().get("front").marks().stream()
        .filter(mark -> mark instanceof Mark.Notch)
        .count();
  }
}
