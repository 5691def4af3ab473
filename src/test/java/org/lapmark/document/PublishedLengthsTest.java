package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Printed;
import org.lapmark.grade.Variants;
import org.lapmark.measure.PrintForm.Units;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Variant;
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
  private static final String INCH = "(?:\\d+ )?\\d+/\\d+ in|\\d+ in";
  private static final String METRIC = "\\d+(?:\\.\\d+)? (?:mm|cm|m)\\b";
  private static final Pattern BOTH =
      Pattern.compile(
          "(?<mf>"
              + METRIC
              + ") \\((?<is>"
              + INCH
              + ")\\)|(?<if>"
              + INCH
              + ") \\((?<ms>"
              + METRIC
              + ")\\)");

  /** What one sentence says of clipping or snipping. */
  private static final Pattern DEEP =
      Pattern.compile(
          "(?:[Cc]lip|[Ss]nip)[^.:]*?(?<all>"
              + BOTH.pattern().replaceAll("\\?<\\w+>", "?:")
              + ") deep");

  /** In millimetres; what is nearer is the same to anybody with a ruler. */
  private static final double ALIKE = 1;

  private record Read(double metric, double inches, String text) {}

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
        GradedPattern pattern = Grader.grade(printed, variant, new Findings());
        for (StepSource step : pattern.source().steps()) {
          StringBuilder text = new StringBuilder();
          for (TemplateText.Part part : TemplateText.parse(step.body(), new Findings()).parts()) {
            TemplateText one = new TemplateText(step.body(), List.of(part));
            Printed.of(one, pattern, new Findings()).ifPresent(all -> text.append(all.text()));
          }
          String where = folder + " " + variant + " " + units + " " + step.id().text();
          read += held(where, text.toString());
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
      Map<String, List<GradedPattern>> byChoices = new LinkedHashMap<>();
      for (Variant variant : new Variants(printed, new Findings()).all()) {
        byChoices
            .computeIfAbsent(variant.choices().toString(), choices -> new ArrayList<>())
            .add(Grader.grade(printed, variant, new Findings()));
      }
      for (Map.Entry<String, List<GradedPattern>> sizes : byChoices.entrySet()) {
        read += held(folder + " " + units + " " + sizes.getKey(), sizes.getValue());
      }
    }
    assertTrue(read > 0);
  }

  /** Holds every place of a companion; how many lengths there were. */
  private static int held(String where, List<GradedPattern> sizes) {
    int read = 0;
    for (Element element : Companions.elements(Companions.parse(Companions.page(sizes)))) {
      boolean place =
          element.getTagName().equals("tr")
              || element.getTagName().equals("article")
              || element.getTagName().equals("figcaption");
      for (int size = 0; place && size < sizes.size(); size++) {
        String what = where + " " + element.getTagName() + " " + size;
        read += held(what, Companions.shown(element, size, CompanionUnits.BOTH));
      }
    }
    return read;
  }

  /** Holds one place; how many lengths there were. */
  private static int held(String where, String written) {
    String text = Companions.spaced(written).replaceAll("[½¼¾⅛⅜⅝⅞]", "∎");
    assertEquals(-1, text.indexOf('∎'), where + ": another form of fractions in " + text);
    Map<String, Read> all = new LinkedHashMap<>();
    Matcher matcher = BOTH.matcher(text);
    while (matcher.find()) {
      Read one = read(matcher);
      all.put(one.text(), one);
    }
    List<Read> lengths = List.copyOf(all.values());
    for (Read one : lengths) {
      // An author's pair may be apart by 10 % or 1 mm; what is computed isn't by more than 6 %.
      assertEquals(one.metric(), one.inches(), Math.max(2.1, 0.12 * one.metric()), where);
      for (Read other : lengths) {
        double apart = Math.abs(one.metric() - other.metric());
        boolean differ = apart > Math.min(ALIKE, 0.06 * Math.min(one.metric(), other.metric()));
        assertTrue(
            !differ || one.inches() != other.inches(),
            () -> where + ": " + one + " and " + other + " in " + text);
      }
    }
    Matcher deep = DEEP.matcher(text);
    Pattern from =
        Pattern.compile("(?:" + BOTH.pattern() + ") (?:from the edge|from both|all round)");
    while (deep.find()) {
      Matcher depth = BOTH.matcher(deep.group("all"));
      Matcher seam = from.matcher(text);
      while (depth.find() && seam.find()) {
        Read cut = read(depth);
        Read sewn = read(seam);
        assertTrue(
            cut.inches() < sewn.inches() && cut.metric() < sewn.metric(),
            () -> where + ": " + cut + " deep, sewn " + sewn);
      }
    }
    return lengths.size();
  }

  private static Read read(Matcher matcher) {
    boolean metricFirst = matcher.group("mf") != null;
    String metric = metricFirst ? matcher.group("mf") : matcher.group("ms");
    String inches = metricFirst ? matcher.group("is") : matcher.group("if");
    return new Read(metric(metric), inches(inches), metric + " / " + inches);
  }

  private static double metric(String text) {
    String[] parts = text.split(" ");
    double unit = parts[1].equals("mm") ? 1 : parts[1].equals("cm") ? 10 : 1000;
    return Double.parseDouble(parts[0]) * unit;
  }

  private static double inches(String text) {
    double sum = 0;
    for (String part : text.replace(" in", "").split(" ")) {
      int slash = part.indexOf('/');
      sum +=
          slash < 0
              ? Double.parseDouble(part)
              : Double.parseDouble(part.substring(0, slash))
                  / Double.parseDouble(part.substring(slash + 1));
    }
    return sum * 25.4;
  }
}
