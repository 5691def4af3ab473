package org.lapmark.text.markdown;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.StepSource;
import org.lapmark.source.key.Passages;
import org.lapmark.text.Inline;
import org.lapmark.text.Letters;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;
import org.lapmark.text.TextCode;

/** Reads the files of steps and groups them by stage. */
public final class StepsReader {
  private StepsReader() {}

  /**
   * Parses steps.
   *
   * @param sources the steps' files in their order
   * @param targets the pieces and pages that they can refer to; the steps are known from the files
   * @param findings where problems go
   * @return the steps
   */
  public static Steps read(List<StepSource> sources, Targets targets, Findings findings) {
    Targets all = targets.withSteps(sources.stream().map(step -> step.id().text()).toList());
    List<Steps.Stage> stages = new ArrayList<>();
    List<Steps.Step> running = new ArrayList<>();
    Set<String> begun = new LinkedHashSet<>();
    String stage = null;
    List<Inline> name = List.of();
    int number = 0;
    for (StepSource source : sources) {
      String written = source.stage().text().strip();
      if (!written.equals(stage)) {
        if (stage != null) {
          stages.add(new Steps.Stage(name, running));
          running = new ArrayList<>();
        }
        if (!begun.add(written)) {
          findings.add(
              TextCode.STAGE_AGAIN, source.stage().position(), "stage", Letters.brief(written));
        }
        stage = written;
        name = Manuscript.line(TemplateText.parse(source.stage(), findings));
      }
      List<Inline> title = Manuscript.line(TemplateText.parse(source.title(), findings));
      Manuscript body = ManuscriptReader.read(source.body(), all, findings);
      if (source.body().text().isBlank()) {
        SourceText whole =
            SourceText.verbatim(source.body().file(), 0, source.body().file().content().length());
        boolean passages = !Passages.conditions(whole).isEmpty();
        // What else is wrong may be why a passage isn't there.
        if (!passages || !findings.hasErrors()) {
          findings.add(
              TextCode.STEP_EMPTY, source.title().position(), "passages", passages ? "yes" : "no");
        }
      }
      running.add(
          new Steps.Step(++number, source.id().text(), title, body, source.id().position()));
    }
    if (stage != null) {
      stages.add(new Steps.Stage(name, running));
    }
    return new Steps(stages);
  }
}
