package org.lapmark.figure;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.memory.Memory;
import org.lapmark.packing.Effort;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.read.PatternReader;
import org.lapmark.wording.Wording;

/** The demo pattern, its figures, and what is needed to draw them. */
public final class DemoFigures {
  private static final Pattern FENCE = Pattern.compile("(?ms)^```figure\\n(.*?)^```$");

  private DemoFigures() {}

  public static PatternSource source() {
    Findings findings = new Findings();
    try {
      PatternSource source =
          PatternReader.read(Path.of("content", "towpath-handlebar-bag"), findings);
      if (findings.hasErrors()) {
        throw new IllegalStateException(said(findings));
      }
      return source;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static EvaluatedPattern pattern(PatternSource source, String size) {
    Findings findings = new Findings();
    EvaluatedPattern pattern = Grader.grade(source, Variant.ofSize(size), findings);
    if (findings.hasErrors()) {
      throw new IllegalStateException(said(findings));
    }
    return pattern;
  }

  /** Every figure's block by step and number. */
  public static Map<String, SourceText> blocks(PatternSource source) {
    Map<String, SourceText> blocks = new LinkedHashMap<>();
    for (StepSource step : source.steps()) {
      Matcher matcher = FENCE.matcher(step.body().text());
      for (int number = 1; matcher.find(); number++) {
        blocks.put(
            step.id().text() + "-" + number, step.body().part(matcher.start(1), matcher.end(1)));
      }
    }
    return blocks;
  }

  public static FigureDrawer drawer() {
    return new FigureDrawer(wording(), styles(), new FontMeasure());
  }

  /** A drawer of figures as high as they may be in steps. */
  public static FigureDrawer stepDrawer() {
    return new FigureDrawer(
        wording(),
        styles(),
        new FontMeasure(),
        FigureDrawer.HIGHEST_IN_STEPS,
        Memory.none(),
        Effort.FULL);
  }

  public static StyleSheet styles() {
    try {
      return StyleSheet.parse(
          Files.readString(Path.of("templates", "figure", "styles.properties")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Wording wording() {
    Properties words = new Properties();
    try (Reader reader =
        new InputStreamReader(
            Files.newInputStream(Path.of("templates", "words", "figure", "en.properties")),
            StandardCharsets.UTF_8)) {
      words.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> messages = new TreeMap<>();
    words.stringPropertyNames().forEach(key -> messages.put(key, words.getProperty(key)));
    return new Wording(Locale.UK, messages);
  }

  public static Staging staging(EvaluatedPattern pattern) {
    return new Staging(pattern, pattern.source().masthead().form(), new Words(wording()));
  }

  /** The only picture of a block. */
  public static Picture picture(String yaml) {
    Findings findings = new Findings();
    FigureSource figure = FigureSource.parse(block(yaml), findings).orElseThrow();
    if (!findings.sorted().isEmpty()) {
      throw new IllegalStateException(said(findings));
    }
    return figure.frames().get(0).picture();
  }

  /** What a picture shows, which is nothing wrong. */
  public static Scene scene(Picture picture, EvaluatedPattern pattern) {
    Staging staging = staging(pattern);
    Scene scene = picture.stage(staging, 1);
    if (!staging.faults().isEmpty()) {
      throw new IllegalStateException(staging.faults().toString());
    }
    return scene;
  }

  /** A picture in its true size. */
  public static Canvas drawn(Picture picture, EvaluatedPattern pattern) {
    Canvas canvas = canvas();
    scene(picture, pattern).draw(canvas, 1);
    return canvas;
  }

  public static Canvas canvas() {
    return new Canvas(styles(), new FontMeasure());
  }

  /** A block that stands alone in a file. */
  public static SourceText block(String yaml) {
    SourceFile file = new SourceFile("steps/figure.md", yaml);
    return SourceText.verbatim(file, 0, yaml.length());
  }

  public static String said(Findings findings) {
    List<String> lines = new ArrayList<>();
    findings
        .sorted()
        .forEach(
            finding ->
                lines.add(
                    finding.position().file()
                        + ":"
                        + finding.position().line()
                        + ":"
                        + finding.position().column()
                        + " "
                        + FindingText.message(finding)
                        + " "
                        + FindingText.hint(finding)));
    return String.join("\n", lines);
  }
}
