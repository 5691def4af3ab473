package org.lapmark.finding;

/** How much a finding weighs; ordered from the gravest. */
public enum Severity {
  /** The folder cannot be published as it stands. */
  ERROR,
  /** It can be published, but something is probably not what the author meant. */
  WARNING,
  /** Something the author may want to know. */
  NOTE
}
