package org.lapmark.check;

import java.util.Locale;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with a pattern that could be evaluated. */
public enum CheckCode implements FindingCode {
  /** An edge that grows and shrinks from size to size, while the size table's measures don't. */
  SIZE_ORDER_BROKEN(Severity.WARNING);

  private final Severity severity;

  CheckCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
