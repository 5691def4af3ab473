package org.lapmark.source.outside;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with what a pattern brings from outside. */
public enum OutsideCode implements FindingCode {
  /** A file in the folder for pictures that nothing shows. */
  ART_UNUSED(Severity.NOTE),
  /** A picture of a kind that isn't read. */
  ART_KIND,
  /** A picture whose name says another kind than it is. */
  ART_ENDING(Severity.WARNING),
  /** A picture that ends early, or isn't what it says it is. */
  ART_BROKEN,
  /** A photograph in the colours of printing presses. */
  ART_CMYK,
  /** A picture of too many bytes. */
  ART_TOO_LARGE,
  /** Pictures of too many bytes together. */
  ART_TOO_MUCH,
  /** A photograph of too many pixels. */
  ART_PIXELS,
  /** A photograph of so few pixels that little is to be seen. */
  ART_COARSE(Severity.WARNING),
  /** The cover's picture has no words. */
  /** A line drawing with something that would run or fetch something. */
  LINE_ART_ACTIVE,
  /** Something in a line drawing that isn't shown. */
  LINE_ART_UNREAD(Severity.WARNING),
  /** A number, path or transform that can't be read. */
  LINE_ART_VALUE,
  /** A line drawing without a size, or with nothing on it. */
  LINE_ART_EMPTY,
  /** Lettering that doesn't fit on its drawing. */
  LINE_ART_CUT(Severity.WARNING),
  /** Copies within themselves, or of too much. */
  LINE_ART_COPIES,
  /** A film's address that isn't one. */
  FILM_ADDRESS,
  /** A time that isn't one. */
  FILM_TIME,
  /** A chapter of a step that isn't there. */
  FILM_STEP,
  /** A step that the film shows before an earlier step. */
  FILM_ORDER(Severity.WARNING);

  private final Severity severity;

  OutsideCode() {
    this(Severity.ERROR);
  }

  OutsideCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
