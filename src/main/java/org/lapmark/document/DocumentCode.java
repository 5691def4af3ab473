package org.lapmark.document;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with a text only because of how documents are made. */
public enum DocumentCode implements FindingCode {
  /** A text has a character that the embedded fonts lack; named argument {@code characters}. */
  TEXT_GLYPH_MISSING("text-glyph-missing", Severity.WARNING);

  private final String id;
  private final Severity severity;

  DocumentCode(String id, Severity severity) {
    this.id = id;
    this.severity = severity;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
