package org.lapmark.grade;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.panel.DrawnPlaces;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.PanelSource;
import org.lapmark.source.ShapeSource.Derived;
import org.lapmark.source.ThingSource;
import org.lapmark.source.drawing.PanelDrawing;

/**
 * Whether pieces that are cut from cloth with a grain say how it runs. Stated shapes always do; a
 * drawing may lack its grainline, or have one that leaves the panel, so that its ends can't be
 * measured to the selvedge.
 */
final class GrainCheck {
  /** How much of a grainline may lie outside its panel, in millimetres. */
  private static final double OUTSIDE = 0.5;

  private final PatternScope scope;
  private final StatementsByName statements;
  private final List<ThingSource> materials;
  private final Findings findings;
  private final Set<String> told = new TreeSet<>();

  GrainCheck(PatternEvaluator evaluator, List<ThingSource> materials, Findings findings) {
    this.scope = evaluator.scope();
    this.statements = evaluator.statements();
    this.materials = materials;
    this.findings = findings;
  }

  void check(List<Piece> pieces) {
    for (Piece piece : pieces) {
      if (piece.cuts().stream().anyMatch(cut -> hasGrain(cut.material()))) {
        check(piece);
      }
    }
  }

  private void check(Piece piece) {
    Panel panel = piece.shape().panel();
    Optional<Mark.Grainline> grain =
        panel.marks().stream()
            .filter(Mark.Grainline.class::isInstance)
            .map(Mark.Grainline.class::cast)
            .findFirst();
    if (grain.isEmpty()) {
      PanelSource origin = origin(panel.name());
      if (!told.add(origin.name().text())) {
        return;
      }
      drawing(origin)
          .flatMap(drawing -> drawing.place(false))
          .ifPresent(
              place ->
                  findings.add(
                      GradeCode.GRAINLINE_MISSING,
                      place,
                      "panel",
                      origin.name().text(),
                      "piece",
                      Integer.toString(piece.number())));
      return;
    }
    Path line = new Path(List.of(new Line(grain.get().from(), grain.get().to())));
    double outside = new Inside(panel.outline(), 0.05).outside(line);
    if (outside > OUTSIDE) {
      PanelSource own = statements.panel(panel.name());
      Position place =
          drawing(own).flatMap(drawing -> drawing.place(true)).orElse(own.name().position());
      findings.add(
          GradeCode.GRAINLINE_OUTSIDE,
          place,
          "panel",
          panel.name(),
          "outside",
          Rounded.hundredth(outside),
          "size",
          scope.size());
    }
  }

  /** The panel whose drawing another one is derived from, step by step. */
  private PanelSource origin(String name) {
    PanelSource source = statements.panel(name);
    while (source.shape() instanceof Derived derived) {
      source = statements.panel(derived.how().panel().text());
    }
    return source;
  }

  private Optional<PanelDrawing> drawing(PanelSource source) {
    return DrawnPlaces.drawing(source, scope.size());
  }

  private boolean hasGrain(String material) {
    for (ThingSource thing : materials) {
      if (thing.id().text().equals(material)) {
        return !Traits.holds(thing, "no_grain", scope);
      }
    }
    return true;
  }
}
