package org.lapmark.publish;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.document.setting.PageSetting;
import org.lapmark.document.template.TemplateEngine;
import org.lapmark.document.template.Templates;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.packing.Effort;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.product.Desk;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;
import org.lapmark.wording.Wording;

/**
 * A publication of which every page's HTML was kept.
 *
 * @param books the documents with pages of text
 * @param passes how often HTML was set for them
 * @param styles the look of drawings
 */
public record RecordedPublication(List<Book> books, int passes, StyleSheet styles) {
  /**
   * A document.
   *
   * @param html what was set last
   * @param language its language tag
   * @param inserted how many pages were put behind the first
   * @param file the document's bytes
   */
  public record Book(String html, String language, int inserted, byte[] file) {}

  private record Pass(String html, String language, int inserted) {}

  /** Publishes a folder and keeps what was set. */
  public static RecordedPublication of(Path folder, Request request) throws IOException {
    Templates templates = TemplateFolder.bundled();
    RecordingStages stages =
        new RecordingStages(templates, new RealStages(templates, Optional.empty()));
    new Pipeline(stages, 1, stage -> {}).publish(List.of(folder), request, new Listener() {});
    if (stages.books.isEmpty()) {
      throw new IllegalStateException("nothing was set");
    }
    return new RecordedPublication(
        List.copyOf(stages.books),
        stages.passes,
        new DocumentWriter(templates).styles(Look.STANDARD));
  }

  private static final class RecordingStages implements Stages {
    private final Templates templates;
    private final Stages real;
    private final List<Book> books = Collections.synchronizedList(new ArrayList<>());
    private int passes;

    RecordingStages(Templates templates, Stages real) {
      this.templates = templates;
      this.real = real;
    }

    @Override
    public PatternSource read(Path folder, Findings findings) throws IOException {
      return real.read(folder, findings);
    }

    @Override
    public EvaluatedPattern grade(PatternSource source, Variant variant, Findings findings) {
      return real.grade(source, variant, findings);
    }

    @Override
    public Desk desk(Locale language, boolean blankPages, Effort effort) {
      DocumentWriter writer = new DocumentWriter(templates);
      RecordingSetting setting = new RecordingSetting(writer.engine(), templates);
      setting.into(writer);
      return new RecordingDesk(real.desk(language, blankPages, effort), writer, setting, this);
    }
  }

  /** Keeps the HTML of every pass. */
  private static final class RecordingSetting extends PageSetting {
    private final TemplateEngine engine;
    private final List<Pass> passes = new ArrayList<>();

    RecordingSetting(TemplateEngine engine, Templates templates) {
      super(engine, templates);
      this.engine = engine;
    }

    /** A writer has no way of its own to be given another setting. */
    void into(DocumentWriter writer) {
      try {
        Field setting = DocumentWriter.class.getDeclaredField("setting");
        setting.setAccessible(true);
        setting.set(writer, this);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }

    @Override
    public void set(
        PdfBook book,
        String template,
        Map<String, Object> model,
        Wording wording,
        Map<String, Drawing> drawings,
        int pagesInserted)
        throws IOException {
      passes.add(
          new Pass(
              engine.fill(template, model, wording),
              book.language().toLanguageTag(),
              pagesInserted));
      super.set(book, template, model, wording, drawings, pagesInserted);
    }
  }

  private record RecordingDesk(
      Desk real, DocumentWriter writer, RecordingSetting setting, RecordingStages stages)
      implements Desk {
    @Override
    public SheetPlan plan(EvaluatedPattern pattern, Paper paper) {
      return real.plan(pattern, paper);
    }

    @Override
    public NestedPlan nested(List<EvaluatedPattern> patterns, Paper paper) {
      return real.nested(patterns, paper);
    }

    @Override
    public Manual manual(EvaluatedPattern pattern, Findings findings) {
      return real.manual(pattern, findings);
    }

    @Override
    public Manual enlarged(Manual manual, Findings findings) {
      return real.enlarged(manual, findings);
    }

    @Override
    public SheetPlanner planner(Look look) {
      return real.planner(look);
    }

    @Override
    public byte[] write(Document document, Findings findings) {
      setting.passes.clear();
      byte[] file = writer.write(document, findings);
      if (!setting.passes.isEmpty()) {
        Pass last = setting.passes.get(setting.passes.size() - 1);
        stages.books.add(new Book(last.html(), last.language(), last.inserted(), file));
        synchronized (stages) {
          stages.passes += setting.passes.size();
        }
      }
      return file;
    }
  }
}
