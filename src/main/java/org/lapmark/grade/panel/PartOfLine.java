package org.lapmark.grade.panel;

import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.measure.Formula;

/**
 * Where a part of a line begins and ends.
 *
 * @param from millimetres from the line's beginning
 * @param to millimetres from the line's beginning
 */
public record PartOfLine(double from, double to) {
  /**
   * The stated part of a line.
   *
   * @param first where it begins, or null for the line's beginning
   * @param last where it ends, or null for its end
   * @param text the line as written
   * @throws FindingException when it doesn't lie on the line
   */
  public static PartOfLine of(
      PatternScope scope, Formula first, Formula last, double whole, SourceText text) {
    double from = first == null ? 0 : scope.along(first, whole);
    double to = last == null ? whole : scope.along(last, whole);
    if (!(from >= -Path.JOIN_TOLERANCE
        && from < to - Path.JOIN_TOLERANCE
        && to <= whole + Path.JOIN_TOLERANCE)) {
      Formula at = first == null ? last : first;
      throw new FindingException(
          Finding.of(
              GradeCode.SEAM_PART_OFF_EDGE,
              at.text().position(),
              "from",
              Rounded.hundredth(from),
              "to",
              Rounded.hundredth(to),
              "edge",
              text.text(),
              "length",
              Rounded.hundredth(whole),
              "size",
              scope.size()));
    }
    return new PartOfLine(Math.max(0, from), Math.min(whole, to));
  }
}
