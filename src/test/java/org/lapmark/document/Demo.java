package org.lapmark.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.lapmark.document.book.CompleteDocument;
import org.lapmark.document.book.InstructionsDocument;
import org.lapmark.document.book.Plates;
import org.lapmark.document.book.SizesDocument;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;

/** The demo pattern's documents in one size. */
record Demo(DocumentWriter writer, SheetPlanner planner, Manual manual, Look look) {
  static Demo of(String size, Look look) {
    DocumentWriter writer = new DocumentWriter(Specimen.templates());
    Findings findings = new Findings();
    try {
      PatternSource source =
          PatternReader.read(Path.of("content", "towpath-handlebar-bag"), findings);
      Locale language = source.masthead().language();
      GradedPattern pattern = Grader.grade(source, Variant.ofSize(size), findings);
      Manual manual = writer.manual(pattern, look, findings);
      if (!findings.sorted().isEmpty()) {
        throw new IllegalStateException(findings.sorted().toString());
      }
      SheetPlanner planner =
          new SheetPlanner(writer.wording(language), writer.styles(look), writer.lettering());
      return new Demo(writer, planner, manual, look);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  SheetPlan plan(Paper paper) {
    return planner.plan(manual.pattern(), paper);
  }

  byte[] complete(Paper paper) {
    return writer.write(
        new CompleteDocument(manual, plan(paper), Plates.of(planner)), new Findings());
  }

  byte[] instructions(Paper paper) {
    return writer.write(
        new InstructionsDocument(manual, plan(paper), Plates.of(planner)), new Findings());
  }

  /** The instructions of several sizes in one document. */
  static byte[] allSizes(List<Demo> demos, Paper paper) {
    DocumentWriter writer = demos.get(0).writer();
    Findings findings = new Findings();
    byte[] file =
        writer.write(new SizesDocument(demos.stream().map(Demo::manual).toList(), paper), findings);
    if (!findings.sorted().isEmpty()) {
      throw new IllegalStateException(findings.sorted().toString());
    }
    return file;
  }
}
