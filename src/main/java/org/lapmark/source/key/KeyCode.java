package org.lapmark.source.key;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with keys and their values, whatever they stand for. */
public enum KeyCode implements FindingCode {
  /** A key that isn't known there. */
  KEY_UNKNOWN,
  /** A key that has to be there isn't. */
  KEY_MISSING,
  /** A key stands twice in one map. */
  KEY_DUPLICATE,
  /** A key has no value. */
  VALUE_EMPTY,
  /** A list or map stands where text is expected. */
  VALUE_NOT_TEXT,
  /** A file that has to say something, and is empty. */
  FILE_SAYS_NOTHING,
  /** A name that is too long for figures, tables and labels. */
  NAME_LONG(Severity.WARNING),
  /** Something else stands where a list is expected. */
  VALUE_NOT_LIST,
  /** Not a whole number in the range that makes sense there. */
  NUMBER_WRONG,
  /** Neither true nor false. */
  TRUTH_WRONG,
  /** Not a name that formulas can use. */
  NAME_WRONG,
  /** A word that isn't one of those for a way to cut or to fold. */
  MARK_WORD_UNKNOWN,
  /** A list that has to have something in it. */
  LIST_EMPTY,
  /** More entries than are read. */
  TOO_MANY_ENTRIES,
  /** A passage of a text is never closed. */
  PASSAGE_UNCLOSED,
  /** A passage that doesn't say in which variants it is there. */
  PASSAGE_WITHOUT_CONDITION,
  /** A passage and a block, one in the other, have fences of one length. */
  PASSAGE_FENCE_SHORT,
  /** A text for readers with more characters than are read. */
  LABEL_TOO_LONG,
  /** A number beyond all cloth. */
  NUMBER_TOO_LARGE,
  /** A step without front matter. */
  STEP_FRONT_MATTER_MISSING,
  /** A step whose front matter isn't closed. */
  STEP_FRONT_MATTER_OPEN;

  private final Severity severity;

  KeyCode() {
    this(Severity.ERROR);
  }

  KeyCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
