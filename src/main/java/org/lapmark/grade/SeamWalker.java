package org.lapmark.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.finding.Finding;
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
import org.lapmark.seam.Clipping;
import org.lapmark.seam.Joint;
import org.lapmark.seam.NotchMatching;
import org.lapmark.seam.SeamMark;
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
  private final SwapCheck swaps;

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
    this.swaps = new SwapCheck(pieces);
  }

  /**
   * Walks a seam and reports what doesn't meet.
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
    WalkedSeam seam =
        new WalkedSeam(
            source.name().text(),
            source.closed(),
            sides,
            tolerance,
            source.matchNotches(),
            joints.joints(source));
    for (int side = 0; side < sides.size(); side++) {
      lengths(source, seam, side);
      assembler.caught().contradictions(source, side).forEach(findings::add);
      started(source, sides.get(side), side);
    }
    for (int side = 1; side < sides.size(); side++) {
      notches(source, seam, side);
      swapped(source, seam, side);
    }
    allowances(source, seam);
    corners(source, seam);
    seam.unmarkedCorners().forEach(clip -> unmarked(source, clip));
    return seam;
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

  private void lengths(SeamSource source, WalkedSeam seam, int side) {
    double deviation = seam.deviation(side);
    SeamSide walked = seam.sides().get(side);
    if (Math.abs(deviation) > seam.tolerance()) {
      double ease = seam.sides().get(0).ease() - walked.ease();
      report(
          GradeCode.SEAM_LENGTHS_DIFFER,
          source,
          "side",
          side + 1,
          "length",
          Rounded.hundredth(walked.length()),
          "first",
          Rounded.hundredth(seam.sides().get(0).length()),
          "eased",
          ease == 0 ? "no" : ease > 0 ? "first" : "side",
          "ease",
          Rounded.hundredth(Math.abs(ease)),
          "difference",
          Rounded.hundredth(Math.abs(deviation)),
          "tolerance",
          Rounded.hundredth(seam.tolerance()));
    }
    for (int layer = 0; layer < walked.basted().size(); layer++) {
      double apart = Math.abs(seam.layerDeviation(side, layer));
      if (apart > seam.tolerance()) {
        report(
            GradeCode.SEAM_LAYERS_DIFFER,
            source,
            "side",
            side + 1,
            "layer",
            String.join(", ", walked.basted().get(layer).members()),
            "length",
            Rounded.hundredth(walked.basted().get(layer).length()),
            "first",
            Rounded.hundredth(walked.length()),
            "difference",
            Rounded.hundredth(apart),
            "tolerance",
            Rounded.hundredth(seam.tolerance()));
      }
    }
  }

  private void notches(SeamSource source, WalkedSeam seam, int side) {
    NotchMatching matching = seam.matching(side);
    // Where a side is too long, its notches miss for that alone.
    boolean agrees = Math.abs(seam.deviation(side)) <= seam.tolerance();
    for (NotchMatching.Pair pair : matching.apart()) {
      boolean near = Math.abs(pair.difference()) <= NotchMatching.COINCIDE;
      if (!near && !agrees) {
        continue;
      }
      report(
          GradeCode.SEAM_NOTCHES_APART,
          source,
          "what",
          near ? "count" : "place",
          "first",
          pair.first().name(),
          "firstAt",
          Rounded.hundredth(pair.first().at()),
          "second",
          pair.second().name(),
          "at",
          Rounded.hundredth(pair.second().at()),
          "side",
          side + 1,
          "difference",
          Rounded.hundredth(Math.abs(pair.difference())));
    }
    if (seam.matchNotches()) {
      matching.first().forEach(mark -> alone(source, mark, 1));
      matching.second().forEach(mark -> alone(source, mark, side + 1));
    }
  }

  private void swapped(SeamSource source, WalkedSeam seam, int side) {
    if (swaps.isSwappable(seam, side)) {
      report(
          GradeCode.SEAM_SIDES_SWAPPED,
          source,
          "first",
          String.join(", ", seam.sides().get(0).members()),
          "second",
          String.join(", ", seam.sides().get(side).members()));
    }
  }

  private void alone(SeamSource source, SeamMark mark, int side) {
    report(
        GradeCode.SEAM_NOTCH_ALONE,
        source,
        "at",
        Rounded.hundredth(mark.at()),
        "side",
        side,
        "line",
        mark.name());
  }

  private void allowances(SeamSource source, WalkedSeam seam) {
    List<Double> allowances = seam.allowances();
    if (allowances.size() > 1) {
      report(
          GradeCode.SEAM_ALLOWANCES_DIFFER,
          source,
          "allowances",
          allowances.stream().map(Rounded::hundredth).collect(Collectors.joining(", ")));
    }
  }

  private void corners(SeamSource source, WalkedSeam seam) {
    for (Joint joint : seam.joints()) {
      if (!joint.isTrue()) {
        report(
            GradeCode.SEAM_CORNER_NOT_TRUE,
            source,
            "before",
            joint.before(),
            "after",
            joint.after(),
            "angle",
            Rounded.hundredth(joint.angle()),
            "deviation",
            joint.angle() < 180 ? "peak" : "dent",
            "off",
            Rounded.hundredth(Math.abs(joint.deviation())));
      }
    }
  }

  private void unmarked(SeamSource source, Clipping clip) {
    report(
        GradeCode.SEAM_CORNER_WITHOUT_NOTCH,
        source,
        "other",
        clip.side() == 0 ? 2 : 1,
        "turn",
        Rounded.hundredth(clip.turn()),
        "at",
        Rounded.hundredth(clip.from()),
        "side",
        clip.side() + 1,
        "line",
        String.join(", ", clip.parts()),
        "seam",
        source.name().text());
  }

  private void report(GradeCode code, SeamSource source, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of("size", scope.size()));
    all.addAll(List.of(arguments));
    findings.add(Finding.of(code, source.name().position(), all.toArray()));
  }
}
