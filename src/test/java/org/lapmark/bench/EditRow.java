package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.manual.Look;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/**
 * What an edit costs in a warm process whose writer and memory stay: no edit was made before. A
 * number of the size table is followed by what the variant draws (pieces, tiles, layouts and
 * figures); a word of a step by what is made of the step. Nothing smaller than a whole manual and a
 * whole companion can be asked for, so that these are what is measured.
 */
record EditRow() implements Row {
  private static final Path PATTERN = Path.of("content", "towpath-handlebar-bag");
  private static final String SHOWN = "M";
  private static final List<String> SIZES = List.of("S", "M", "L");

  private static final int WARMED = 20;
  private static final int COUNTED = 11;

  /** What a part of the work took in every edit that counts, in milliseconds of wall time. */
  private record Watch(Map<String, List<Double>> parts) {
    <T> T part(String name, boolean counts, Part<T> work) throws IOException {
      long begun = System.nanoTime();
      T result = work.made();
      double took = (System.nanoTime() - begun) / 1e6;
      if (counts) {
        parts.computeIfAbsent(name, unused -> new ArrayList<>()).add(took);
      }
      return result;
    }

    double median(String name) {
      return Processor.median(parts.get(name).stream().mapToDouble(ms -> ms).toArray());
    }

    Measured line(String what, double most) {
      double all = parts.keySet().stream().mapToDouble(this::median).sum();
      String each =
          parts.keySet().stream()
              .map(name -> String.format(Locale.ROOT, "%s %.0f", name, median(name)))
              .collect(Collectors.joining(", "));
      return Measured.atMost(
          what, String.format(Locale.ROOT, "%.0f ms (%s)", all, each), all, most, " ms");
    }
  }

  @FunctionalInterface
  private interface Part<T> {
    T made() throws IOException;
  }

  @Override
  public String name() {
    return "warm edits";
  }

  @Override
  public List<Measured> measure() throws IOException {
    try (Scratch scratch = new Scratch()) {
      Path folder = scratch.copy(PATTERN);
      DocumentWriter writer =
          new DocumentWriter(TemplateFolder.bundled(), Publisher.newMemory(), Effort.FULL);
      return List.of(number(folder, writer), word(folder, writer));
    }
  }

  private static Measured number(Path folder, DocumentWriter writer) throws IOException {
    Path table = folder.resolve("sizes.csv");
    String before = Files.readString(table);
    Watch watch = new Watch(new LinkedHashMap<>());
    for (int i = 0; i < WARMED + COUNTED; i++) {
      replace(table, before, "bag_height,mm,120,140,", "bag_height,mm,120," + (139 - i) + ",");
      boolean counts = i >= WARMED;
      Findings findings = new Findings();
      PatternSource source =
          watch.part("reading", counts, () -> PatternReader.read(folder, findings));
      EvaluatedPattern pattern = watch.part("pieces", counts, () -> grade(source, SHOWN, findings));
      SheetPlanner planner =
          new SheetPlanner(
              writer.wording(source.masthead().language()), writer.styles(), writer.lettering());
      watch.part("tiles", counts, () -> planner.plan(pattern, Paper.A4));
      watch.part("layouts", counts, () -> writer.cloths(pattern, findings));
      // The layouts are remembered.
      watch.part(
          "texts and figures", counts, () -> writer.manual(pattern, Look.STANDARD, findings));
    }
    Files.writeString(table, before);
    return watch.line("warm edit, a number in sizes.csv", 150);
  }

  private static Measured word(Path folder, DocumentWriter writer) throws IOException {
    Path step = folder.resolve("steps").resolve("010-cut.md");
    String before = Files.readString(step);
    Watch watch = new Watch(new LinkedHashMap<>());
    for (int i = 0; i < WARMED + COUNTED; i++) {
      replace(step, before, " and no deeper", " and no deeper" + (i + 1));
      boolean counts = i >= WARMED;
      Findings findings = new Findings();
      PatternSource source =
          watch.part("reading", counts, () -> PatternReader.read(folder, findings));
      List<EvaluatedPattern> patterns =
          watch.part(
              "pieces of all sizes",
              counts,
              () -> {
                List<EvaluatedPattern> all = new ArrayList<>();
                SIZES.forEach(size -> all.add(grade(source, size, findings)));
                return all;
              });
      watch.part(
          "whole manual",
          counts,
          () -> writer.manual(patterns.get(SIZES.indexOf(SHOWN)), Look.STANDARD, findings));
      watch.part("whole companion", counts, () -> writer.write(new Companion(patterns), findings));
    }
    Files.writeString(step, before);
    return watch.line("warm edit, a word in a step", 50);
  }

  private static EvaluatedPattern grade(PatternSource source, String size, Findings findings) {
    return Grader.grade(source, Variant.ofSize(size), findings);
  }

  private static void replace(Path file, String before, String part, String other)
      throws IOException {
    String after = before.replace(part, other);
    if (after.equals(before)) {
      throw new IllegalStateException(file + " lacks " + part);
    }
    Files.writeString(file, after);
  }
}
