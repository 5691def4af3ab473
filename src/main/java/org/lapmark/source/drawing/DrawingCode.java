package org.lapmark.source.drawing;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with the drawing of a panel. */
public enum DrawingCode implements FindingCode {
  /** A drawn dart that isn't two legs. */
  DART_SHAPE,
  /** A drawn dart with a leg that isn't straight. */
  DART_LEG_CURVED(Severity.WARNING),
  /** A drawn notch that isn't at one place of the outline. */
  NOTCH_OFF_OUTLINE,
  /** A drawing that no panel uses. */
  DRAWING_UNUSED(Severity.NOTE),
  /** The file isn't an SVG drawing. */
  SVG_ROOT,
  /** Something that would run or fetch something. */
  SVG_ACTIVE(Severity.WARNING),
  /** Shapes without a role. */
  SVG_IGNORED(Severity.NOTE),
  /** Shapes with a role that aren't drawn, or invisible. */
  SVG_HIDDEN(Severity.NOTE),
  /** A copy of something that isn't there. */
  SVG_COPY_UNKNOWN(Severity.WARNING),
  /** A copy that contains itself. */
  SVG_COPY_CYCLE,
  /** Copies of copies that come to too many elements. */
  SVG_COPIES,
  /** A style or an attribute that would move or shape something, and isn't read. */
  SVG_GEOMETRY_UNREAD,
  /** The drawing doesn't say how large it is. */
  SVG_SCALE_UNKNOWN,
  /** A drawing in pixels, or whose width and height aren't in proportion to its view box. */
  SVG_SIZE(Severity.NOTE),
  /** An attribute that isn't what it should be. */
  ATTRIBUTE_WRONG,
  /** A {@code data-} attribute that overrides nothing. */
  DATA_ATTRIBUTE_UNKNOWN(Severity.WARNING),
  /** A placeholder of a drawing asks for a printed form. */
  PLACEHOLDER_FORM_NOT_HERE,
  /** An id that looks like a role but isn't. */
  ROLE_UNKNOWN(Severity.WARNING),
  /** An id that is a role but for the number of a copy. */
  ROLE_NUMBERED(Severity.NOTE),
  /** A role that is given twice. */
  ROLE_TWICE,
  /** A role on something that isn't read. */
  ROLE_NOT_READ,
  /** No outline. */
  OUTLINE_MISSING,
  /** An outline whose end doesn't meet its start. */
  OUTLINE_NOT_CLOSED,
  /** A shape of several parts. */
  SHAPE_SEVERAL,
  /** An outline whose small gap was closed. */
  OUTLINE_GAP_CLOSED(Severity.NOTE),
  /** A shape without extent. */
  SHAPE_EMPTY,
  /** Path data that can't be parsed. */
  PATH_SYNTAX,
  /** A drawing with too many path segments. */
  PATH_TOO_LONG,
  /** A transform that can't be parsed. */
  TRANSFORM_SYNTAX;

  private final Severity severity;

  DrawingCode() {
    this(Severity.ERROR);
  }

  DrawingCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
