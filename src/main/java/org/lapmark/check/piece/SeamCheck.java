package org.lapmark.check.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.seam.Clipping;
import org.lapmark.seam.Joint;
import org.lapmark.seam.NotchMatching;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.SeamSource;

/**
 * What is sewn to each other meets: lengths, notches, allowances, and the edges that go on over the
 * seam.
 */
public final class SeamCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(
          SeamCheck::run,
          PieceCode.SEAM_LENGTHS_DIFFER,
          PieceCode.SEAM_LAYERS_DIFFER,
          PieceCode.SEAM_NOTCHES_APART,
          PieceCode.SEAM_NOTCH_ALONE,
          PieceCode.SEAM_SIDES_SWAPPED,
          PieceCode.SEAM_ALLOWANCES_DIFFER,
          PieceCode.SEAM_CORNER_NOT_TRUE,
          PieceCode.SEAM_CORNER_WITHOUT_NOTCH);

  private final Evaluated evaluated;
  private final Findings findings;
  private final SwappedSides swaps;

  private SeamCheck(Evaluated evaluated, Findings findings) {
    this.evaluated = evaluated;
    this.findings = findings;
    this.swaps = new SwappedSides(evaluated.pattern().pieces());
  }

  static void run(Evaluated evaluated, Findings findings) {
    SeamCheck check = new SeamCheck(evaluated, findings);
    for (WalkedSeam seam : evaluated.pattern().seams()) {
      check.check(evaluated.statements().seam(seam.name()), seam);
    }
  }

  private void check(SeamSource source, WalkedSeam seam) {
    for (int side = 0; side < seam.sides().size(); side++) {
      lengths(source, seam, side);
    }
    for (int side = 1; side < seam.sides().size(); side++) {
      notches(source, seam, side);
      swapped(source, seam, side);
    }
    allowances(source, seam);
    corners(source, seam);
    seam.unmarkedCorners().forEach(clip -> unmarked(source, clip));
  }

  private void lengths(SeamSource source, WalkedSeam seam, int side) {
    double deviation = seam.deviation(side);
    SeamSide walked = seam.sides().get(side);
    if (Math.abs(deviation) > seam.tolerance()) {
      double ease = seam.sides().get(0).ease() - walked.ease();
      report(
          PieceCode.SEAM_LENGTHS_DIFFER,
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
            PieceCode.SEAM_LAYERS_DIFFER,
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
          PieceCode.SEAM_NOTCHES_APART,
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
          PieceCode.SEAM_SIDES_SWAPPED,
          source,
          "first",
          String.join(", ", seam.sides().get(0).members()),
          "second",
          String.join(", ", seam.sides().get(side).members()));
    }
  }

  private void alone(SeamSource source, SeamMark mark, int side) {
    report(
        PieceCode.SEAM_NOTCH_ALONE,
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
          PieceCode.SEAM_ALLOWANCES_DIFFER,
          source,
          "allowances",
          allowances.stream().map(Rounded::hundredth).collect(Collectors.joining(", ")));
    }
  }

  private void corners(SeamSource source, WalkedSeam seam) {
    for (Joint joint : seam.joints()) {
      if (!joint.isTrue()) {
        report(
            PieceCode.SEAM_CORNER_NOT_TRUE,
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
        PieceCode.SEAM_CORNER_WITHOUT_NOTCH,
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

  private void report(PieceCode code, SeamSource source, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of("size", evaluated.size()));
    all.addAll(List.of(arguments));
    findings.add(code, source.name().position(), all.toArray());
  }
}
