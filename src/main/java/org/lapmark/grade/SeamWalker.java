package org.lapmark.grade;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.geometry.Path;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.panel.SeamAllowances;
import org.lapmark.grade.panel.SeamAssembler;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.SeamSource;

/** Walks the seams of one variant. */
final class SeamWalker {
  private final PatternScope scope;
  private final Findings findings;
  private final SeamAssembler assembler;
  private final JointFinder joints;

  /**
   * Prepares the walk.
   *
   * @param seams all seams: corners are true or not where one seam crosses another
   * @param pieces the pieces, whose allowances are compared
   */
  SeamWalker(
      PatternEvaluator evaluator, List<SeamSource> seams, List<Piece> pieces, Findings findings) {
    this.scope = evaluator.scope();
    this.findings = findings;
    this.assembler =
        new SeamAssembler(
            scope,
            evaluator.shapes(),
            evaluator.fastened(),
            evaluator.marks()::notches,
            SeamAllowances.of(pieces));
    this.joints = new JointFinder(assembler, seams);
  }

  /**
   * Walks a seam.
   *
   * @param source the seam as stated
   * @return the seam as sewn
   * @throws org.lapmark.finding.FindingException when a side can't be measured
   */
  WalkedSeam walk(SeamSource source) {
    if (source.sides().size() < 2) {
      // The reader has said so.
      throw new DemandGraph.Unavailable();
    }
    List<SeamSide> sides = new ArrayList<>();
    for (int i = 0; i < source.sides().size(); i++) {
      sides.add(assembler.side(source, i));
    }
    double tolerance = scope.tolerance(source.tolerance(), findings);
    for (int side = 0; side < sides.size(); side++) {
      assembler.caught().contradictions(source, side).forEach(findings::add);
      started(source, sides.get(side), side);
    }
    return new WalkedSeam(
        source.name().text(),
        source.closed(),
        sides,
        tolerance,
        source.matchNotches(),
        joints.joints(source));
  }

  /** Says of a start before the beginning what it is taken for. */
  private void started(SeamSource source, SeamSide walked, int side) {
    double length = walked.parts().stream().mapToDouble(SeamPart::length).sum();
    double at = assembler.start(source, side, length);
    if (at < -Path.JOIN_TOLERANCE) {
      findings.add(
          GradeCode.SEAM_START_BEFORE,
          source.sides().get(side).start().text().position(),
          "side",
          side + 1,
          "seam",
          source.name().text(),
          "at",
          Rounded.hundredth(at),
          "meant",
          Rounded.hundredth(length + at),
          "back",
          Rounded.hundredth(-at),
          "size",
          scope.size());
    }
  }
}
