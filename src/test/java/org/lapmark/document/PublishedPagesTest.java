package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.book.SizesDocument;
import org.lapmark.document.book.TilesDocument;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Variants;
import org.lapmark.measure.PrintForm.Units;
import org.lapmark.measure.Variant;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/**
 * Reads the pages that are printed, place by place: instructions of one size and of all, with the
 * lettering of figures and layouts, and labels on tiles. Of each pattern the first variant is read
 * with metric first and the last with inches first; {@code -Dlapmark.lengths=all} reads every
 * variant in both orders, and the documents of all sizes.
 */
class PublishedPagesTest {
  private static final boolean ALL = "all".equals(System.getProperty("lapmark.lengths"));

  private static DocumentWriter writer;

  @BeforeAll
  static void templates() {
    writer = new DocumentWriter(Specimen.templates());
  }

  static List<Path> patterns() throws IOException {
    return PublishedLengthsTest.patterns();
  }

  @ParameterizedTest
  @MethodSource("patterns")
  void noPlaceOfAPagePrintsTwoLengthsAlike(Path folder) throws IOException {
    PatternSource source = PatternReader.read(folder, new Findings());
    List<String> names = source.sizes().sizes().stream().map(Pattern::quote).toList();
    Map<String, Integer> read = new TreeMap<>();
    for (Units units : List.of(Units.METRIC_FIRST, Units.INCHES_FIRST)) {
      PatternSource printed =
          source.under(source.masthead().printing(source.masthead().form().with(units)));
      SheetPlanner planner =
          new SheetPlanner(
              writer.wording(source.masthead().language()), writer.styles(), writer.lettering());
      Map<String, List<Manual>> byChoices = new LinkedHashMap<>();
      List<Variant> all = new Variants(printed, new Findings()).all();
      int one = units == Units.METRIC_FIRST ? 0 : all.size() - 1;
      for (Variant variant : ALL ? all : List.of(all.get(one))) {
        List<Manual> sizes =
            byChoices.computeIfAbsent(variant.choices().toString(), none -> new ArrayList<>());
        GradedPattern pattern = Grader.grade(printed, variant, new Findings());
        Manual manual = writer.manual(pattern, Look.STANDARD, new Findings());
        sizes.add(manual);
        SheetPlan plan = planner.plan(pattern, Paper.A4);
        String where = folder.getFileName() + " " + variant + " " + units;
        hold(
            where,
            writer.write(
                new InstructionsDocument(manual, plan, Plates.of(planner)), new Findings()),
            names,
            read);
        if (!plan.tiles().isEmpty()) {
          hold(
              where + " tiles",
              writer.write(new TilesDocument(pattern, plan, Plates.of(planner)), new Findings()),
              names,
              read);
        }
      }
      for (Map.Entry<String, List<Manual>> choice : byChoices.entrySet()) {
        if (choice.getValue().size() > 1) {
          String where = folder.getFileName() + " " + units + " " + choice.getKey();
          hold(
              where,
              writer.write(new SizesDocument(choice.getValue(), Paper.A4), new Findings()),
              names,
              read);
        }
      }
    }
    for (String tag : List.of("TR", "Figure", "step")) {
      assertTrue(read.getOrDefault(tag, 0) > 0, folder + " has no length in any " + tag);
    }
  }

  private static void hold(String where, byte[] file, List<String> sizes, Map<String, Integer> read)
      throws IOException {
    for (PlacesOfPages.Place place : PlacesOfPages.of(file)) {
      // Where marks of all sizes are listed, each size's line is read by whoever sews that size.
      for (String text : place.text().split("\\s(?=(?:" + String.join("|", sizes) + "): )")) {
        int lengths = LengthsRead.held(where + " " + place.name(), text);
        read.merge(place.name().split(" ")[0], lengths, Integer::sum);
      }
    }
  }
}
