package org.lapmark.check.text;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.NoteSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.outside.ArtSource;
import org.lapmark.source.outside.Outside;
import org.lapmark.text.Block;
import org.lapmark.text.Inline;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Printing;
import org.lapmark.text.Steps;
import org.lapmark.text.Targets;
import org.lapmark.text.markdown.ManuscriptReader;

/**
 * Every text of the author's can be read, every cross-reference leads somewhere, and every
 * placeholder can be printed.
 */
public final class TextCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(
          TextCheck::run,
          CheckCode.FINISHED_NEGATIVE,
          CheckCode.PRINTED_NEGATIVE,
          CheckCode.TABLE_TOO_WIDE,
          CheckCode.ART_MISSING);

  private TextCheck() {}

  static void run(Evaluated evaluated, Findings findings) {
    EvaluatedPattern pattern = evaluated.pattern();
    PatternSource source = pattern.source();
    Negatives negatives = new Negatives(pattern, findings);
    for (TemplateText text : AuthorTexts.of(source)) {
      PrintedText.of(text, pattern, findings).ifPresent(negatives::text);
    }
    Steps steps = evaluated.steps(findings);
    Targets all = evaluated.targets().withSteps(steps.all().stream().map(Steps.Step::id).toList());
    List<Inline.Value> values = new ArrayList<>(steps.values());
    List<Manuscript> manuscripts = new ArrayList<>();
    steps.all().forEach(step -> manuscripts.add(step.body()));
    for (NoteSource note : source.notes()) {
      Manuscript manuscript = ManuscriptReader.read(note.body(), all, findings);
      values.addAll(manuscript.values());
      manuscripts.add(manuscript);
    }
    Printing printing = Printing.of(values, List.of(pattern), source.masthead().form(), findings);
    printing.all().forEach(negatives::value);
    TableCheck tables =
        new TableCheck(pattern.variant().size(), printing, evaluated.reach(), findings);
    for (Manuscript manuscript : manuscripts) {
      art(manuscript, source.outside(), findings);
      manuscript.tables().forEach(tables::check);
    }
  }

  private static void art(Manuscript manuscript, Outside outside, Findings findings) {
    for (Block.Art art : manuscript.art()) {
      ArtSource source = outside.art().get(art.path());
      if (source == null || source instanceof ArtSource.Unshown) {
        String nearest = NearestWord.of(art.path(), outside.paths()).orElse("");
        findings.add(
            CheckCode.ART_MISSING,
            art.position(),
            "name",
            art.path(),
            "near",
            nearest.isEmpty() ? "no" : "yes",
            "nearest",
            nearest,
            "known",
            Known.listed(outside.paths()));
      }
    }
  }
}
