package org.lapmark.grade;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Findings;
import org.lapmark.measure.Variant;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.SeamSource;
import org.lapmark.source.SeamSource.Member;

/** Walks the seams of one variant. */
final class SeamWalker {
  private final PatternScope scope;
  private final Variant variant;
  private final Findings findings;

  SeamWalker(PatternScope scope, Variant variant, Findings findings) {
    this.scope = scope;
    this.variant = variant;
    this.findings = findings;
  }

  /**
   * Measures the sides of a seam and reports those that don't agree.
   *
   * @param source the seam as stated
   * @return the seam with its lengths
   * @throws org.lapmark.finding.FindingException when a side can't be measured
   */
  WalkedSeam walk(SeamSource source) {
    List<WalkedSeam.Side> sides = new ArrayList<>();
    for (SeamSource.Side side : source.sides()) {
      double length = 0;
      List<String> members = new ArrayList<>();
      for (Member member : side.members()) {
        length += length(member);
        members.add(member.text().text());
      }
      sides.add(new WalkedSeam.Side(members, length));
    }
    double ease = source.ease() == null ? 0 : scope.length(source.ease());
    double tolerance =
        source.tolerance() == null
            ? WalkedSeam.DEFAULT_TOLERANCE
            : scope.length(source.tolerance());
    WalkedSeam seam = new WalkedSeam(source.name().text(), sides, ease, tolerance);
    report(source, seam);
    return seam;
  }

  private double length(Member member) {
    String text = member.text().text();
    int dot = text.indexOf('.');
    if (dot > 0 && scope.hasPanel(text.substring(0, dot))) {
      return scope.edge(member.text()).length();
    }
    return scope.length(member.formula());
  }

  private void report(SeamSource source, WalkedSeam seam) {
    for (int side = 1; side < seam.sides().size(); side++) {
      double deviation = seam.deviation(side);
      if (Math.abs(deviation) > seam.tolerance()) {
        findings.add(
            Finding.of(
                GradeCode.SEAM_LENGTHS_DIFFER,
                source.name().position(),
                "size",
                variant.size(),
                "side",
                side + 1,
                "length",
                Rounded.hundredth(seam.sides().get(side).length()),
                "first",
                Rounded.hundredth(seam.sides().get(0).length()),
                "difference",
                Rounded.hundredth(Math.abs(deviation)),
                "tolerance",
                Rounded.hundredth(seam.tolerance())));
      }
    }
  }
}
