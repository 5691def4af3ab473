package org.lapmark.publish;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import org.lapmark.check.Rules;
import org.lapmark.check.rule.AddedWords;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Written;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.DateWords;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.section.Sections;
import org.lapmark.document.template.TemplateCheck;
import org.lapmark.document.template.TemplateFaults;
import org.lapmark.document.template.Templates;
import org.lapmark.drawing.Style;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.memory.Memory;
import org.lapmark.packing.Effort;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.product.Desk;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The program's own stages. */
final class RealStages implements Stages {
  private final Templates templates;
  private final Optional<Path> templateFolder;

  /** Words in tables of steps and notes, as page.css.ftl sets them. */
  private static final Style SMALL_PRINT = new Style(0, List.of(), 0, 0, 10, false, 0);

  /** Reads fonts, while what stages begin with is read elsewhere. */
  private final CompletableFuture<DocumentWriter> words;

  private final Memory memory;
  private final Map<Locale, CareWords> careWords = new ConcurrentHashMap<>();

  RealStages(Templates templates, Optional<Path> templateFolder) {
    this(templates, templateFolder, Publisher.newMemory());
  }

  RealStages(Templates templates, Optional<Path> templateFolder, Memory memory) {
    this.templates = templates;
    this.templateFolder = templateFolder;
    this.memory = memory;
    this.words = CompletableFuture.supplyAsync(() -> new DocumentWriter(templates));
  }

  private DocumentWriter words() {
    try {
      return words.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException problem) {
        throw problem;
      }
      throw e;
    }
  }

  @Override
  public Optional<Path> templateFolder() {
    return templateFolder;
  }

  @Override
  public void checkTemplates(Findings findings) {
    try {
      TemplateCheck.run(templates, TemplateFolder.bundled(), findings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Optional<Finding> templateFault(Throwable failure) {
    return templateFolder.flatMap(unused -> TemplateFaults.of(failure, templates));
  }

  @Override
  public PatternSource read(Path folder, Findings findings) throws IOException {
    PatternSource source = PatternReader.read(folder, findings);
    if (source != null) {
      DocumentWriter words = words();
      AddedWords added =
          new AddedWords(
              words::lackingWords,
              language -> words.wording(language).messages(),
              DateWords::inWords,
              words::missingGlyphs);
      Rules.asWritten(new Written(source, added, careWords(source)), findings);
    }
    return source;
  }

  @Override
  public EvaluatedPattern grade(PatternSource source, Variant variant, Findings findings) {
    EvaluatedPattern pattern = Grader.grade(source, variant, findings);
    DocumentWriter words = words();
    DocumentLimits reach =
        new DocumentLimits(
            Sections.pages(),
            words.hazards(source.masthead().language()),
            words::missingGlyphs,
            words.fusibleWords(source.masthead().language()),
            words.unfusibleWords(source.masthead().language()),
            this::width);
    Rules.inVariant(new Evaluated(pattern, reach, careWords(source)), findings);
    return pattern;
  }

  /** The same for every variant of a pattern, and for all patterns of a language. */
  private CareWords careWords(PatternSource source) {
    return careWords.computeIfAbsent(
        source.masthead().language(), language -> CareWords.of(words().wording(language)));
  }

  /** A measure is for one thread, and variants are graded in parallel. */
  private double width(String word) {
    DocumentWriter writer = words();
    synchronized (writer) {
      return writer.lettering().width(word, SMALL_PRINT);
    }
  }

  @Override
  public void across(List<EvaluatedPattern> patterns, Findings findings) {
    Rules.acrossSizes(patterns, findings);
  }

  @Override
  public Optional<String> common() {
    return ProgramIdentity.running().map(program -> Fingerprint.common(program, templates));
  }

  @Override
  public Desk desk(Locale language, boolean blankPages, Effort effort) {
    DocumentWriter writer = words().another(memory, effort);
    return new WritingDesk(
        writer,
        planner(writer, language, Look.STANDARD, blankPages).with(effort),
        planner(writer, language, Look.LARGE_PRINT, blankPages).with(effort));
  }

  private static SheetPlanner planner(
      DocumentWriter writer, Locale language, Look look, boolean blankPages) {
    SheetPlanner planner =
        new SheetPlanner(writer.wording(language), writer.styles(look), writer.lettering());
    return blankPages ? planner : planner.withoutBlankTiles();
  }

  private record WritingDesk(DocumentWriter writer, SheetPlanner standard, SheetPlanner large)
      implements Desk {
    @Override
    public SheetPlan plan(EvaluatedPattern pattern, Paper paper) {
      return standard.plan(pattern, paper);
    }

    @Override
    public void arrange(EvaluatedPattern pattern, Paper paper) {
      standard.arrange(pattern, paper);
    }

    @Override
    public NestedPlan nested(List<EvaluatedPattern> patterns, Paper paper) {
      return standard.nested(patterns, paper);
    }

    @Override
    public Manual manual(EvaluatedPattern pattern, Findings findings) {
      return writer.manual(pattern, Look.STANDARD, findings);
    }

    @Override
    public Manual enlarged(Manual manual, Findings findings) {
      return writer.manual(manual, Look.LARGE_PRINT, findings);
    }

    @Override
    public SheetPlanner planner(Look look) {
      return look == Look.LARGE_PRINT ? large : standard;
    }

    @Override
    public byte[] write(Document document, Findings findings) {
      return writer.write(document, findings);
    }
  }
}
