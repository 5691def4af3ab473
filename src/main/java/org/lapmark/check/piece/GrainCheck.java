package org.lapmark.check.piece;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.grade.panel.DrawnPlaces;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.PanelSource;
import org.lapmark.source.drawing.PanelDrawing;

/**
 * Whether pieces that are cut from cloth with a grain say how it runs. Stated shapes always do; a
 * drawing may lack its grainline, or have one that leaves the panel, so that its ends can't be
 * measured to the selvedge.
 */
public final class GrainCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(GrainCheck::run, PieceCode.GRAINLINE_MISSING, PieceCode.GRAINLINE_OUTSIDE);

  /** How much of a grainline may lie outside its panel, in millimetres. */
  private static final double OUTSIDE = 0.5;

  private final Evaluated evaluated;
  private final Findings findings;
  private final Set<String> told = new TreeSet<>();

  private GrainCheck(Evaluated evaluated, Findings findings) {
    this.evaluated = evaluated;
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    GrainCheck check = new GrainCheck(evaluated, findings);
    for (Piece piece : evaluated.pattern().pieces()) {
      if (piece.cuts().stream().anyMatch(cut -> check.hasGrain(cut.material()))) {
        check.check(piece);
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
                      PieceCode.GRAINLINE_MISSING,
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
      PanelSource own = evaluated.statements().panel(panel.name());
      Position place =
          drawing(own).flatMap(drawing -> drawing.place(true)).orElse(own.name().position());
      findings.add(
          PieceCode.GRAINLINE_OUTSIDE,
          place,
          "panel",
          panel.name(),
          "outside",
          Rounded.hundredth(outside),
          "size",
          evaluated.size());
    }
  }

  /** The panel whose drawing another one is derived from, step by step. */
  private PanelSource origin(String name) {
    PanelSource source = evaluated.statements().panel(name);
    while (source.derivation().isPresent()) {
      source = evaluated.statements().panel(source.derivation().get().panel().text());
    }
    return source;
  }

  private Optional<PanelDrawing> drawing(PanelSource source) {
    return DrawnPlaces.drawing(source, evaluated.size());
  }

  private boolean hasGrain(String material) {
    return !evaluated.pattern().is(evaluated.statements().thing(material), "no_grain");
  }
}
