package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.document.companion.CompanionUnits;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.PrintedText;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm.Units;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.read.PatternReader;
import org.w3c.dom.Element;

/**
 * Reads what is published, as a maker does who has one ruler, and holds the lengths that stand
 * together against each other: where one unit tells two lengths apart the other does, and no depth
 * to clip is as deep as an allowance.
 */
class PublishedLengthsTest {
  static List<Path> patterns() throws IOException {
    List<Path> all = new ArrayList<>();
    for (Path folder :
        List.of(Path.of("content"), Path.of("src/test/resources/org/lapmark/shelf"))) {
      try (Stream<Path> folders = Files.list(folder)) {
        all.addAll(folders.filter(Files::isDirectory).sorted().toList());
      }
    }
    return all;
  }

  /** Every text of every step with its figures' words, in every variant and both orders. */
  @ParameterizedTest
  @MethodSource("patterns")
  void noStepPrintsTwoLengthsAlike(Path folder) throws IOException {
    PatternSource source = PatternReader.read(folder, new Findings());
    int read = 0;
    for (Units units : List.of(Units.METRIC_FIRST, Units.INCHES_FIRST)) {
      PatternSource printed =
          source.under(source.masthead().printing(source.masthead().form().with(units)));
      for (Variant variant : new Variants(printed, new Findings()).all()) {
        EvaluatedPattern pattern = Grader.grade(printed, variant, new Findings());
        for (StepSource step : pattern.source().steps()) {
          StringBuilder text = new StringBuilder();
          for (TemplateText.Part part : TemplateText.parse(step.body(), new Findings()).parts()) {
            TemplateText one = new TemplateText(step.body(), List.of(part));
            PrintedText.of(one, pattern, new Findings()).ifPresent(all -> text.append(all.text()));
          }
          String where = folder + " " + variant + " " + units + " " + step.id().text();
          read += LengthsRead.held(where, text.toString());
        }
      }
    }
    assertTrue(read > 0);
  }

  /** The companion as a browser shows it: steps, tables and labels, in every variant and order. */
  @ParameterizedTest
  @MethodSource("patterns")
  void noPlaceOfTheCompanionPrintsTwoLengthsAlike(Path folder) throws IOException {
    PatternSource source = PatternReader.read(folder, new Findings());
    int read = 0;
    for (Units units : List.of(Units.METRIC_FIRST, Units.INCHES_FIRST)) {
      PatternSource printed =
          source.under(source.masthead().printing(source.masthead().form().with(units)));
      Map<String, List<EvaluatedPattern>> byChoices = new LinkedHashMap<>();
      for (Variant variant : new Variants(printed, new Findings()).all()) {
        byChoices
            .computeIfAbsent(variant.choices().toString(), choices -> new ArrayList<>())
            .add(Grader.grade(printed, variant, new Findings()));
      }
      for (Map.Entry<String, List<EvaluatedPattern>> sizes : byChoices.entrySet()) {
        read += held(folder + " " + units + " " + sizes.getKey(), sizes.getValue());
      }
    }
    assertTrue(read > 0);
  }

  /** Holds every place of a companion; how many lengths there were. */
  private static int held(String where, List<EvaluatedPattern> sizes) {
    int read = 0;
    for (Element element : Companions.elements(Companions.parse(Companions.page(sizes)))) {
      boolean place =
          element.getTagName().equals("tr")
              || element.getTagName().equals("article")
              || element.getTagName().equals("figcaption");
      for (int size = 0; place && size < sizes.size(); size++) {
        String what = where + " " + element.getTagName() + " " + size;
        read += LengthsRead.held(what, Companions.shown(element, size, CompanionUnits.BOTH));
      }
    }
    return read;
  }
}
