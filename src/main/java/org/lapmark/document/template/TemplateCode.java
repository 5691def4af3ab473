package org.lapmark.document.template;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with templates that take the place of the program's own. */
public enum TemplateCode implements FindingCode {
  /** Files that the program needs aren't there. */
  TEMPLATES_LACKING,
  /** A template can't be parsed. */
  TEMPLATE_SYNTAX,
  /** A template asks for a value that there isn't. */
  TEMPLATE_VALUE,
  /** A template can't be filled for another reason. */
  TEMPLATE_FAILED,
  /** A template goes on without end. */
  TEMPLATE_ENDLESS,
  /** A word that the program needs isn't there. */
  WORD_LACKING,
  /** A template asks for a word that isn't there. */
  WORD_UNKNOWN,
  /** A word's message can't be formed. */
  WORD_FORM,
  /** A word's message has a placeholder that gets no value. */
  WORD_ARGUMENT,
  /** A line of a style sheet of drawings can't be understood. */
  STYLE_WRONG,
  /** A style that the program needs isn't there. */
  STYLE_LACKING,
  /** A style is stated in two files. */
  STYLE_TWICE,
  /** Pages aren't well-formed. */
  MARKUP_BROKEN,
  /** Pages can't be set as their style sheet says. */
  PAGES_UNSET;

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }
}
