package org.lapmark.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Value;
import org.lapmark.measure.print.FinestSteps;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintForm.Units;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.PatternSource;

/**
 * Goes through a pattern in one variant for what its quantities are printed for, so that each is
 * printed to the finest step that any of its uses asks for.
 */
final class Precision {
  private final EvaluatedPattern pattern;
  private final FinestSteps.Gathering steps = new FinestSteps.Gathering();

  private Precision(EvaluatedPattern pattern) {
    this.pattern = pattern;
  }

  /** The same pattern, whose form knows what its quantities are printed for. */
  static EvaluatedPattern of(EvaluatedPattern pattern) {
    PatternSource source = pattern.source();
    PrintForm form =
        source.masthead().form().with(new Precision(pattern).gathered(source.masthead().form()));
    return new EvaluatedPattern(
        source.under(source.masthead().printing(form)),
        pattern.values(),
        pattern.scope(),
        pattern.reasons());
  }

  private FinestSteps gathered(PrintForm form) {
    for (Piece piece : pattern.pieces()) {
      piece
          .statedSize()
          .ifPresent(
              size -> {
                ruler(size.width());
                ruler(size.height());
                size.places().forEach(this::ruler);
              });
      piece.shape().stated().edges().values().stream()
          .filter(allowance -> !allowance.fold())
          .flatMap(allowance -> Stream.of(allowance.start(), allowance.end()))
          .filter(width -> width > 0)
          .forEach(steps::printed);
    }
    List<TemplateText> texts = new ArrayList<>(AuthorTexts.of(pattern.source()));
    // Markdown is read further up; its placeholders can be found in it as it is written.
    List<SourceText> bodies = new ArrayList<>();
    pattern.source().steps().forEach(step -> bodies.add(step.body()));
    pattern.source().notes().forEach(note -> bodies.add(note.body()));
    bodies.forEach(body -> texts.add(TemplateText.parse(body, new Findings())));
    for (TemplateText text : texts) {
      for (TemplateText.Part part : text.parts()) {
        if (part instanceof TemplateText.Placeholder placeholder) {
          pattern
              .value(placeholder.formula(), new Findings())
              .ifPresent(value -> steps.placeholder(placeholder, value, form));
        }
      }
    }
    steps.tellApart(form);
    PrintForm soFar = form.with(steps.all());
    pattern.pieces().forEach(piece -> piece.statedSize().ifPresent(size -> apart(size, soFar)));
    return steps.all();
  }

  /**
   * Tells the places of a piece's marks from each other and from its sides. Nobody writes them, so
   * nobody can ask for a finer step: they are left to millimetres where inches don't do.
   */
  private void apart(StatedSize size, PrintForm form) {
    List<Double> before = new ArrayList<>(List.of(size.width(), size.height()));
    for (double place : size.places()) {
      for (double other : before) {
        if (PrintForm.differ(place, other)) {
          if (alike(place, other, form.with(Units.INCHES))) {
            steps.metricAlone(place);
          }
          if (alike(place, other, form.with(Units.METRIC))) {
            steps.metric(place, form.metricStep() / 10);
            steps.metric(other, form.metricStep() / 10);
          }
        }
      }
      before.add(place);
    }
  }

  private static boolean alike(double one, double other, PrintForm form) {
    return form.print(Value.Quantity.length(one)).equals(form.print(Value.Quantity.length(other)));
  }

  private void ruler(double millimetres) {
    steps.inches(millimetres, PrintForm.RULER);
  }
}
