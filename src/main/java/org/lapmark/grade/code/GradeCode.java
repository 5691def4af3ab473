package org.lapmark.grade.code;

import java.util.List;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can turn out wrong when a pattern is evaluated in a variant. */
public enum GradeCode implements FindingCode {
  /** A name that nothing in the pattern has. */
  NAME_UNKNOWN,
  /** A property that its material or hardware doesn't state. */
  PROPERTY_UNKNOWN,
  /** A panel that isn't stated. */
  REFERENCE_PANEL_UNKNOWN,
  /** An edge or chain that its panel doesn't have. */
  REFERENCE_EDGE_UNKNOWN,
  /** A corner that its panel doesn't have. */
  REFERENCE_CORNER_UNKNOWN,
  /** An edge whose corners lead the long way round, over all other edges. */
  EDGE_LONG_WAY(Severity.WARNING),
  /** A panel where an edge is needed, or the other way round. */
  REFERENCE_KIND,
  /** Values that are defined by each other. */
  VALUE_CYCLE,
  /** A value at the end of too long a row of values, each computed from the next. */
  VALUE_TOO_DEEP,
  /** A value that isn't a length where one is needed. */
  NOT_A_LENGTH,
  /** A plain number along a line that is no share of it, as where a unit is missing. */
  SHARE_BEYOND,
  /** A length that must be above zero and isn't. */
  LENGTH_NOT_POSITIVE,
  /** A length beyond what is drawn. */
  LENGTH_TOO_LARGE,
  /** A value that isn't the angle or plain number that a stated shape needs. */
  SHAPE_VALUE_KIND,
  /** A number with which a stated shape can't be drawn. */
  SHAPE_OUT_OF_RANGE,
  /** A placeholder of a drawing that gives no number. */
  NOT_A_NUMBER,
  /** An allowance below zero. */
  ALLOWANCE_NEGATIVE,
  /** An allowance so narrow that nobody can cut it. */
  ALLOWANCE_TOO_NARROW,
  /** An allowance wider than any that is sewn or turned in. */
  ALLOWANCE_TOO_WIDE,
  /** A line that is too short, or rounder than a half circle. */
  STYLE_LINE_BOW,
  /** A line that begins or ends beyond its edge. */
  STYLE_LINE_BEYOND_EDGE,
  /** Two overlapping stretches that say different allowances of what they share. */
  ALLOWANCES_CONTRADICT,
  /** A dart or a pleat in an edge on a fold. */
  FOLD_WITH_INTAKE,
  /** An edge nearly square to a fold, so that the opened piece has a slight corner there. */
  FOLD_CORNER(Severity.WARNING),
  /** An edge on a fold that isn't straight. */
  FOLD_NOT_STRAIGHT,
  /** An edge on a fold beyond which the panel goes on. */
  FOLD_CROSSED,
  /** More edges on a fold than cloth has folds. */
  FOLDS_TOO_MANY,
  /** A number of pieces that isn't whole, or below zero. */
  CUT_COUNT,
  /** A piece that would need more paper than anybody joins. */
  PIECE_TOO_LARGE,
  /** A piece of next to no width. */
  PIECE_TOO_SMALL,
  /** More pieces reversed than cut. */
  CUT_REVERSED,
  /** A notch beyond its edge. */
  NOTCH_BEYOND_EDGE,
  /** A tolerance below zero. */
  SEAM_TOLERANCE_NEGATIVE,
  /** A panel where one of its edges is to be named. */
  SEAM_PANEL_ALONE,
  /** A part of an edge that doesn't lie on it. */
  SEAM_PART_OFF_EDGE,
  /** A ring that starts beyond its side. */
  SEAM_START_BEYOND,
  /** A ring that starts before its side begins. */
  SEAM_START_BEFORE(Severity.WARNING),
  /** Something is caught in a seam beyond its ends. */
  SEAM_TAB_OUTSIDE,
  /** Something is caught in a seam, and nothing says where. */
  SEAM_TAB_UNPLACED,
  /** Something is caught in a seam elsewhere than its attachment says. */
  SEAM_TAB_ELSEWHERE(Severity.WARNING),
  /** Notches are to come from a seam that the edge isn't part of. */
  NOTCH_EDGE_NOT_IN_SEAM,
  /** A slash line that is to end beyond an edge. */
  SLASH_END_OFF_EDGE,
  /** More notches than an edge can need. */
  NOTCHES_TOO_MANY,
  /** A distance between notches that is longer than their edge. */
  NOTCHES_NONE(Severity.WARNING),
  /** Something that the variant doesn't have. */
  NAME_ABSENT,
  /** An option where options aren't decided yet. */
  OPTION_UNDECIDED,
  /** What is chosen by default can't be made. */
  DEFAULT_FORBIDDEN,
  /** Nothing can be made in a size. */
  ALL_FORBIDDEN,
  /** Too many combinations to look at each. */
  VARIANTS_IN_PAIRS(Severity.NOTE),
  /** A choice that can't be made in any size, whatever else is chosen. */
  CHOICE_NEVER(Severity.WARNING),
  /** A condition that no variant fulfils. */
  WHEN_NEVER(Severity.WARNING),
  /** A condition that every variant fulfils. */
  WHEN_ALWAYS(Severity.NOTE),
  /** A thing that no variant has in which the step stands that uses it. */
  USE_NEVER(Severity.WARNING),
  /** A piece that isn't cut in any variant. */
  PIECE_NEVER_CUT(Severity.WARNING),
  /** Bounds between which there is nothing. */
  SOLVE_RANGE,
  /** A tolerance that the condition's sides can't keep. */
  SOLVE_TOLERANCE,
  /** No value between the bounds makes the condition true. */
  SOLVE_NO_SOLUTION,
  /** A number of marks in a row that isn't one. */
  MARK_COUNT,
  /** Several values make the condition true. */
  SOLVE_SEVERAL(Severity.WARNING),
  /** A piece that is to do without paper and can't. */
  PIECE_NEEDS_PAPER(Severity.WARNING),
  /** A ruled piece with more marks than notches, which are told by measurements. */
  PIECE_RULED_WITH_MARKS(Severity.NOTE),
  /** A drawing scaled by one of its measures, and in proportion by the other. */
  SCALED_IN_PROPORTION(Severity.NOTE),
  /** How wide something shows is asked, and nothing says so. */
  TRIM_WIDTH_UNKNOWN,
  /** A trim of whose edges nothing is left between its ends. */
  TRIM_WITHOUT_ROOM,
  /** A length of a trim that can't be below zero, and is. */
  TRIM_LENGTH_NEGATIVE,
  /** A mark that the panel doesn't have. */
  ATTACHMENT_MARK_UNKNOWN,
  /** Something wider than the line at which it is attached, or that hangs over its end. */
  ATTACHMENT_BEYOND,
  /** Something that is attached beside its panel. */
  ATTACHMENT_OUTSIDE;

  private final Severity severity;

  GradeCode() {
    this(Severity.ERROR);
  }

  GradeCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case NAME_UNKNOWN -> List.of("name", "name");
      case LENGTH_NOT_POSITIVE, ALLOWANCE_NEGATIVE, ALLOWANCE_TOO_NARROW ->
          List.of("below", "cause");
      case REFERENCE_PANEL_UNKNOWN -> List.of("name", "panel");
      case PROPERTY_UNKNOWN -> List.of("property", "thing", "property");
      case REFERENCE_EDGE_UNKNOWN -> List.of("edge", "panel", "edge");
      case REFERENCE_CORNER_UNKNOWN -> List.of("corner", "panel", "corner");
      default -> List.of();
    };
  }
}
