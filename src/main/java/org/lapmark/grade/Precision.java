package org.lapmark.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.FinestSteps;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.AuthorTexts;
import org.lapmark.source.PatternSource;

/**
 * Goes through a pattern in one variant for what its quantities are printed for, so that each is
 * printed to the finest step that any of its uses asks for.
 */
final class Precision {
  private final GradedPattern pattern;
  private final FinestSteps.Gathering steps = new FinestSteps.Gathering();

  private Precision(GradedPattern pattern) {
    this.pattern = pattern;
  }

  /** The same pattern, whose form knows what its quantities are printed for. */
  static GradedPattern of(GradedPattern pattern) {
    PatternSource source = pattern.source();
    PrintForm form =
        source.masthead().form().with(new Precision(pattern).gathered(source.masthead().form()));
    return new GradedPattern(
        source.under(source.masthead().printing(form)),
        pattern.variant(),
        pattern.measures(),
        pattern.panels(),
        pattern.pieces(),
        pattern.seams(),
        pattern.scope(),
        pattern.refusals());
  }

  private FinestSteps gathered(PrintForm form) {
    for (Piece piece : pattern.pieces()) {
      piece.statedSize().ifPresent(this::ruled);
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
    return steps.all();
  }

  private void ruled(StatedSize size) {
    ruler(size.width());
    ruler(size.height());
    for (RuledMark mark : size.marks()) {
      if (mark instanceof RuledMark.Notches notches) {
        for (RuledMark.Notch notch : notches.notches()) {
          ruler(notch.at());
          notch.set().offsets().forEach(offset -> ruler(notch.at() + offset));
        }
      } else if (mark instanceof RuledMark.Parallel line) {
        ruler(line.at());
        ruler(line.from());
        ruler(line.to());
      } else if (mark instanceof RuledMark.Through line) {
        line.through().forEach(this::ruler);
      } else if (mark instanceof RuledMark.Points points) {
        points.spots().forEach(this::ruler);
      }
    }
  }

  private void ruler(RuledMark.Spot spot) {
    ruler(spot.across());
    ruler(spot.down());
  }

  private void ruler(double millimetres) {
    steps.inches(millimetres, PrintForm.RULER);
  }
}
