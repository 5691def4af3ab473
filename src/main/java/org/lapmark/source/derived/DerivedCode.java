package org.lapmark.source.derived;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with derivations, whatever they make of the panels that they start from. */
public enum DerivedCode implements FindingCode {
  /** A panel that is to be smaller or larger than another, and doesn't say by how much. */
  DISTANCE_MISSING,
  /** A construction of linings that isn't known. */
  CONSTRUCTION_WRONG,
  /** A panel that is to be smaller or larger than another by less than nothing. */
  INSET_NEGATIVE;

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }
}
