package org.lapmark.check.rule;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong in one variant with pieces, seams and hardware that could all be made. */
public enum PieceCode implements FindingCode {
  /** A mounted lining has another allowance than the main cloth that it is sewn with. */
  LINING_ALLOWANCE_DIFFERS(Severity.WARNING),
  /** An allowance of a chain on all of whose edges others count. */
  ALLOWANCE_IDLE(Severity.WARNING),
  /** The sides of a seam don't have the lengths they should. */
  SEAM_LENGTHS_DIFFER,
  /** A layer that is basted to a side doesn't have its length. */
  SEAM_LAYERS_DIFFER,
  /** Notches that nearly meet, and don't. */
  SEAM_NOTCHES_APART(Severity.WARNING),
  /** A notch that has no partner where every notch must have one. */
  SEAM_NOTCH_ALONE(Severity.WARNING),
  /** Edges sewn to each other have different allowances. */
  SEAM_ALLOWANCES_DIFFER(Severity.WARNING),
  /** The edge over two joined pieces doesn't go straight on. */
  SEAM_CORNER_NOT_TRUE(Severity.WARNING),
  /** Notches that can't be told apart. */
  NOTCHES_CLOSE(Severity.WARNING),
  /** Buttonholes with no cloth between them. */
  BUTTONHOLES_CLOSE(Severity.WARNING),
  /** A match point that nothing lies on. */
  MATCH_POINT_ALONE(Severity.WARNING),
  /** Left and right copies that can be sewn to each other's partners. */
  SEAM_SIDES_SWAPPED(Severity.WARNING),
  /** Pieces cut in pairs all the same way round, though each differs from its mirror image. */
  PAIR_NOT_MIRRORED(Severity.WARNING),
  /** A corner for which the side that has to be clipped has no notch. */
  SEAM_CORNER_WITHOUT_NOTCH(Severity.NOTE),
  /** A zip that is longer than what it is sewn into. */
  ZIP_TOO_LONG(Severity.WARNING),
  /** Something is wider or thicker than what it is to pass through. */
  HARDWARE_TOO_NARROW(Severity.WARNING),
  /** What passes through something can't be compared with it. */
  PASSING_UNKNOWN(Severity.WARNING),
  /** A drawn panel without grainline, cut from cloth that has a grain. */
  GRAINLINE_MISSING(Severity.WARNING),
  /** A grainline that leaves its panel. */
  GRAINLINE_OUTSIDE(Severity.WARNING),
  /** A trim that is to show wider than its tape is. */
  TRIM_SHOWS_TOO_WIDE,
  /** The edges on the two sides of a trim don't have one length. */
  TRIM_SIDES_DIFFER,
  /** A trim that is longer or shorter than its edges ask for. */
  TRIM_LENGTH_DIFFERS,
  /** A trim that is sewn twice to what is there once. */
  TRIM_ALONG_AGAIN(Severity.WARNING),
  /** Stitches that don't go through what they are to hold. */
  TRIM_STITCHES_MISS,
  /** A casing lower than what lies in it. */
  CASING_TOO_NARROW;

  private final Severity severity;

  PieceCode() {
    this(Severity.ERROR);
  }

  PieceCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
