package org.lapmark.check.rule;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What the rules over an evaluated pattern can find. */
public enum CheckCode implements FindingCode {
  /** A hazard that there is no caution for. */
  HAZARD_UNKNOWN(Severity.ERROR),
  /** A tool that no step names: documents leave it out, and its cautions with it. */
  TOOL_UNUSED(Severity.WARNING),
  /** A material that no piece is cut from: documents leave it out. */
  MATERIAL_UNUSED(Severity.WARNING),
  /** A panel that no piece, panel, formula or text uses. */
  PANEL_UNUSED(Severity.WARNING),
  /** Something assembled that no figure shows. */
  UNIT_UNUSED(Severity.WARNING),
  /** The name of a value, or a formula, where its value was meant to be printed. */
  VALUE_UNBRACED(Severity.WARNING),
  /** A table whose longest words need more room than a page has. */
  TABLE_TOO_WIDE(Severity.WARNING),
  /** A text has characters that the embedded fonts lack; in documents a box stands for them. */
  TEXT_GLYPH_MISSING(Severity.ERROR),
  /** A label or a date has characters that the embedded fonts lack. */
  LABEL_GLYPH_MISSING(Severity.ERROR),
  /** A picture that isn't in the folder for pictures. */
  ART_MISSING(Severity.ERROR),
  /** A language in which the templates don't have all their words. */
  WORDS_MISSING(Severity.WARNING),
  /** A text without a translation. */
  TRANSLATION_MISSING(Severity.WARNING),
  /** A translation of something that the original no longer has, or has in another wording. */
  TRANSLATION_OUTDATED(Severity.ERROR),
  /** A text that has two translations. */
  TRANSLATION_TWICE(Severity.ERROR),
  /** A translation that prints other values than its original. */
  TRANSLATION_PLACEHOLDERS(Severity.ERROR),
  /** An edge that grows and shrinks from size to size, while the size table's measures don't. */
  SIZE_ORDER_BROKEN(Severity.WARNING),
  /** A finished measurement below zero. */
  FINISHED_NEGATIVE(Severity.ERROR),
  /** A length, area or number of things below zero in a text. */
  PRINTED_NEGATIVE(Severity.WARNING),
  /** A property of a material or of hardware, or a stitch, that is less than it can be. */
  PROPERTY_NEGATIVE(Severity.ERROR),
  /** A number of what is sewn by the length, and comes in no lengths of its own. */
  QUANTITY_WITHOUT_UNIT(Severity.WARNING),
  /** Something fusible is for cloth that must not be ironed. */
  FUSIBLE_ON_NO_IRON(Severity.ERROR),
  /** A material is fusible, and must not be ironed. */
  FUSIBLE_WITHOUT_IRON(Severity.ERROR),
  /** A material is called fusible, and nothing states that it is. */
  FUSIBLE_UNSTATED(Severity.WARNING),
  /** A step irons cloth that must not be ironed. */
  STEP_IRONS(Severity.WARNING),
  /** Two different lengths that one step, row or piece prints alike. */
  PRINTED_ALIKE(Severity.WARNING),
  /** A finished measurement that different sizes print alike. */
  SIZES_PRINTED_ALIKE(Severity.WARNING),
  /** A depth to clip that is printed as more than it is. */
  DEPTH_ROUNDED_UP(Severity.WARNING),
  /** Two pieces of one variant that bear the same name. */
  PIECE_NAME_AGAIN(Severity.WARNING),
  /** A lining, interfacing or stiffener that is larger than what it belongs to. */
  LAYER_LARGER(Severity.WARNING);

  private final Severity severity;

  CheckCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
