package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.lapmark.check.PatternChecks;
import org.lapmark.document.DocumentWriter;
import org.lapmark.document.Templates;
import org.lapmark.finding.Findings;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.print.Paper;
import org.lapmark.print.SheetPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.source.PatternReader;
import org.lapmark.source.PatternSource;

/** The program's own stages. */
record RealStages(Templates templates) implements Stages {
  @Override
  public PatternSource read(Path folder, Findings findings) throws IOException {
    return PatternReader.read(folder, findings);
  }

  @Override
  public GradedPattern grade(PatternSource source, Variant variant, Findings findings) {
    GradedPattern pattern = Grader.grade(source, variant, findings);
    PatternChecks.run(pattern, findings);
    return pattern;
  }

  @Override
  public void across(List<GradedPattern> patterns, Findings findings) {
    PatternChecks.acrossSizes(patterns, findings);
  }

  @Override
  public Desk desk(Locale language) {
    DocumentWriter writer = new DocumentWriter(templates);
    return new WritingDesk(
        writer, new SheetPlanner(writer.wording(language), writer.styles(), writer.lettering()));
  }

  private record WritingDesk(DocumentWriter writer, SheetPlanner planner) implements Desk {
    @Override
    public SheetPlan plan(GradedPattern pattern, Paper paper) {
      return planner.plan(pattern, paper);
    }

    @Override
    public byte[] complete(GradedPattern pattern, SheetPlan plan) {
      return writer.complete(pattern, plan, planner);
    }

    @Override
    public byte[] tiles(GradedPattern pattern, SheetPlan plan) {
      return writer.tiles(pattern, plan, planner);
    }
  }
}
