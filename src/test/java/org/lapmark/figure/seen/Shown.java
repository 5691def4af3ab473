package org.lapmark.figure.seen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.svg.SvgWriter;
import org.lapmark.figure.DemoFigures;
import org.lapmark.figure.Figure;
import org.lapmark.figure.FigureDrawer;
import org.lapmark.figure.FigureSource;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.NumberWords;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.packing.Effort;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Presentation;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.NoteSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.read.PatternReader;

/** The figures of a pattern folder as they are published. */
final class Shown {
  private static final Path RESOURCES = Path.of("src", "test", "resources", "org", "lapmark");
  private static final Pattern FENCE = Pattern.compile("(?ms)^```figure\\n(.*?)^```$");

  /** How wide and how high a figure is drawn. */
  enum Cut {
    /** In steps on paper. */
    STEPS,
    /** In steps on paper, set down, where that can be. */
    SET_DOWN,
    /** On a screen. */
    SCREEN,
    /** On a small screen, where there is room for it. */
    NARROW
  }

  /**
   * A figure in one variant.
   *
   * @param name where it stands, and in which variant
   * @param source as its author states it
   * @param figure as it is drawn
   * @param svg as it is published
   */
  record One(String name, FigureSource source, Figure figure, String svg) {}

  private final DocumentWriter documents;
  private final SvgWriter svg;
  private final Path folder;

  Shown(Path folder) {
    this.folder = folder;
    try {
      this.documents =
          new DocumentWriter(TemplateFolder.bundled()).another(Publisher.newMemory(), Effort.FULL);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    this.svg = new SvgWriter(documents.styles(), documents.lettering());
  }

  /** Both demos, the shelf, and the specimens. */
  static List<Path> folders() throws IOException {
    List<Path> all = new ArrayList<>();
    for (Path parent :
        List.of(Path.of("content"), RESOURCES.resolve("shelf"), RESOURCES.resolve("specimens"))) {
      try (Stream<Path> folders = Files.list(parent)) {
        folders.filter(Files::isDirectory).sorted().forEach(all::add);
      }
    }
    return all;
  }

  /** All figures in all languages and variants; each that comes out the same only once. */
  List<One> all(List<Cut> cuts) throws IOException {
    Findings findings = new Findings();
    PatternSource source = PatternReader.read(folder, findings);
    Map<Object, One> shown = new LinkedHashMap<>();
    for (Locale language : AuthorTexts.languages(source)) {
      PatternSource worded = new Presentation(Optional.of(language), Optional.empty()).of(source);
      List<Variant> variants = new Variants(worded, new Findings()).all();
      for (Variant variant : variants) {
        EvaluatedPattern pattern = Grader.grade(worded, variant, new Findings());
        for (Cut cut : cuts) {
          for (Map.Entry<String, SourceText> block : blocks(pattern.source()).entrySet()) {
            String name =
                folder.getFileName()
                    + " "
                    + block.getKey()
                    + " "
                    + language
                    + " "
                    + variant
                    + " "
                    + cut;
            draw(name, block.getValue(), pattern, cut)
                .ifPresent(one -> shown.putIfAbsent(one.figure(), one));
          }
        }
      }
    }
    return List.copyOf(shown.values());
  }

  /** The specimen of all operations of the trade, in the bag. */
  static List<One> operations() throws IOException {
    List<One> all = new ArrayList<>();
    PatternSource source = DemoFigures.source();
    EvaluatedPattern pattern = DemoFigures.pattern(source, "M");
    Shown shown = new Shown(Path.of("content", "towpath-handlebar-bag"));
    Path specimen = RESOURCES.resolve("figure").resolve("operation").resolve("specimen.txt");
    for (String line : Files.readAllLines(specimen)) {
      for (Cut cut : Cut.values()) {
        SourceText block = DemoFigures.block("operation: " + line + "\n");
        shown.draw(line + " " + cut, block, pattern, cut).ifPresent(all::add);
      }
    }
    return all;
  }

  private Map<String, SourceText> blocks(PatternSource source) {
    Map<String, SourceText> texts = new LinkedHashMap<>();
    for (StepSource step : source.steps()) {
      texts.put(step.id().text(), step.body());
    }
    for (NoteSource note : source.notes()) {
      texts.put(note.name(), note.body());
    }
    Map<String, SourceText> blocks = new LinkedHashMap<>();
    texts.forEach(
        (name, text) -> {
          Matcher matcher = FENCE.matcher(text.text());
          for (int i = 1; matcher.find(); i++) {
            blocks.put(name + "-" + i, text.part(matcher.start(1), matcher.end(1)));
          }
        });
    return blocks;
  }

  /** A figure; nothing where a small screen has no room for it, or it can't be set down. */
  Optional<One> draw(String name, SourceText block, EvaluatedPattern pattern, Cut cut) {
    Findings findings = new Findings();
    FigureSource stated = FigureSource.parse(block, findings).orElseThrow();
    FigureSource source =
        cut == Cut.NARROW
            ? new FigureSource(
                stated.position(), true, stated.caption(), stated.alternative(), stated.frames())
            : stated;
    FigureDrawer drawer =
        new FigureDrawer(
            documents.wording(pattern.source().masthead().language()),
            documents.styles(),
            documents.lettering(),
            cut == Cut.STEPS || cut == Cut.SET_DOWN
                ? FigureDrawer.HIGHEST_IN_STEPS
                : FigureDrawer.HIGHEST,
            documents.memory(),
            Effort.FULL);
    PrintForm form =
        pattern
            .source()
            .masthead()
            .form()
            .with(NumberWords.of(documents.wording(pattern.source().masthead().language())));
    Optional<Figure> figure =
        (cut == Cut.SET_DOWN ? drawer.settingDown() : drawer).draw(source, pattern, form, findings);
    if (figure.isEmpty() && cut != Cut.NARROW && cut != Cut.SET_DOWN) {
      throw new AssertionError(name + ": " + DemoFigures.said(findings));
    }
    return figure.map(
        one ->
            new One(
                name,
                source,
                one,
                svg.write(one.drawing(), "figure", "A figure", one.alternative())));
  }
}
