package org.lapmark.check.rule;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be missing of the care that a maker is owed. */
public enum CareCode implements FindingCode {
  /** A name that sounds like something hazardous of which no kind is stated. */
  KIND_MISSING,
  /** An article that sounds as if its use called for a caution that isn't stated. */
  USE_HAZARD_MISSING,
  /** A load limit without the caution that explains it. */
  LOAD_CAUTION_MISSING,
  /** A caution about loads without a limit. */
  LOAD_LIMIT_MISSING,
  /** An article for children, or sizes that sound like ages, with no ages stated. */
  AGES_MISSING,
  /** A cord or a tie at a child's neck or hood. */
  CHILD_NECK_CORD(Severity.ERROR),
  /** A cord or a tie, nobody says where, on a child's article that has a neck or a hood. */
  CHILD_CORD_PLACE,
  /** A step whose words need heat, a blade or a machine that it doesn't name. */
  STEP_TOOL_MISSING;

  private final Severity severity;

  CareCode() {
    this(Severity.WARNING);
  }

  CareCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
