package org.lapmark.text;

import java.util.List;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with an author's text. */
public enum TextCode implements FindingCode {
  /** More characters than {@link Manuscript#MAX_LENGTH}. */
  TEXT_TOO_LONG(Severity.ERROR),
  /** Lists, quotations or emphasis nested deeper than {@link Manuscript#MAX_DEPTH}. */
  TEXT_TOO_DEEP(Severity.ERROR),
  /** Characters that can't be printed. */
  TEXT_STRANGE_CHARACTER(Severity.WARNING),
  /** HTML, which is shown as text. */
  TEXT_HTML(Severity.WARNING),
  /** Markup of other kinds of Markdown, which is shown as it is written. */
  MARKUP_UNREAD(Severity.WARNING),
  /** A heading deeper than {@link Manuscript#MAX_HEADING}. */
  HEADING_TOO_DEEP(Severity.WARNING),
  /** An address that a document can't lead to. */
  LINK_ADDRESS(Severity.ERROR),
  /** A reference to something that doesn't exist. */
  REFERENCE_UNKNOWN(Severity.ERROR),
  /** A reference to what isn't in every version, from where it may not be. */
  REFERENCE_ABSENT(Severity.ERROR),
  /** A picture that isn't in the folder for pictures. */
  ART_PATH(Severity.ERROR),
  /** A picture without words for those who can't see it. */
  ART_WITHOUT_WORDS(Severity.ERROR),
  /** A picture between words. */
  ART_IN_LINE(Severity.ERROR),
  /** A fenced block of an unknown kind. */
  BLOCK_UNKNOWN(Severity.ERROR),
  /** A fenced block without its closing fence. */
  BLOCK_UNCLOSED(Severity.ERROR),
  /** A block inside another has a fence as long as that one's. */
  BLOCK_FENCE_SHORT(Severity.ERROR),
  /** A box with nothing in it. */
  BLOCK_EMPTY(Severity.WARNING),
  /** Words behind a fenced block's kind that mean nothing. */
  BLOCK_EXTRA_WORDS(Severity.ERROR),
  /** A tip or warning within another. */
  BOX_IN_BOX(Severity.ERROR),
  /** A footnote's mark without a footnote. */
  FOOTNOTE_UNKNOWN(Severity.ERROR),
  /** A footnote without a mark. */
  FOOTNOTE_UNUSED(Severity.WARNING),
  /** A footnote's mark within a footnote. */
  FOOTNOTE_IN_FOOTNOTE(Severity.ERROR),
  /** A table's row with more cells than there are columns. */
  TABLE_ROW_LONG(Severity.ERROR),
  /** A step that says nothing. */
  STEP_EMPTY(Severity.WARNING),
  /** A stage that comes again after another. */
  STAGE_AGAIN(Severity.WARNING);

  private final Severity severity;

  TextCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case REFERENCE_UNKNOWN -> List.of("target", "kind", "target");
      default -> List.of();
    };
  }
}
