package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with what the files of a pattern folder state. */
public enum SourceCode implements FindingCode {
  /** The folder has no {@code pattern.yaml}. */
  PATTERN_MISSING,
  /** The folder has no {@code sizes.csv}. */
  SIZES_MISSING,
  /** A text that stands where nothing is read, or has another ending. */
  FILE_UNREAD,
  /** A folder whose name is nearly that of one that is read. */
  FOLDER_UNREAD,
  /** Two options, or two choices of one, that makers can't tell apart. */
  OPTION_LABEL_AGAIN(Severity.WARNING),
  /** The format's version isn't one that this program reads. */
  FORMAT_UNSUPPORTED,
  /** Not a date. */
  DATE_WRONG,
  /** Not a language tag. */
  LANGUAGE_WRONG,
  /** Not one of the words for units. */
  UNITS_WRONG,
  /** Not one of the ways of joining pages. */
  JOINS_WRONG,
  /** Not a rounding step. */
  ROUNDING_WRONG,
  /** A name that already means something else. */
  NAME_TAKEN,
  /** A panel without an outline. */
  PANEL_WITHOUT_SHAPE,
  /** A panel whose outline is stated in two ways. */
  PANEL_SHAPE_TWICE,
  /** A scaling of something that isn't scaled. */
  SCALE_MISPLACED,
  /** A scaling by an edge's length and by a width or height. */
  SCALE_TWO_WAYS,
  /** Stretching in one direction where both are stated, or neither. */
  STRETCH_MISPLACED,
  /** A shape whose numbers are too few, or too many. */
  SHAPE_STATEMENT,
  /** A drawing for a size that the size table doesn't have. */
  SIZE_UNKNOWN,
  /** A size without a drawing of its own. */
  SIZE_DRAWING_MISSING,
  /** A size's drawing with placeholders. */
  SIZE_DRAWING_COMPUTED,
  /** Drawings for different sizes with different corners, or in another order. */
  SIZE_DRAWINGS_CORNERS,
  /** Drawings for different sizes with different marks. */
  SIZE_DRAWINGS_MARKS(Severity.WARNING),
  /** An edge that isn't stated by two corners. */
  EDGE_CORNERS,
  /** A fold that isn't stated by two places. */
  FOLD_ENDS,
  /** A seam with fewer than two sides. */
  SEAM_SIDES,
  /** A part of a side that is neither an edge nor a length nor something caught. */
  SEAM_PART_WRONG,
  /** A starting place in a seam that isn't a ring. */
  SEAM_START_MISPLACED,
  /** A seam that isn't stated. */
  SEAM_UNKNOWN,
  /** A notch whose place is stated in no way, or in several. */
  NOTCH_PLACE,
  /** A notch that is both a set and counted. */
  NOTCH_SET_TWICE,
  /** A drawn mark that the drawing doesn't have. */
  MARK_NOT_DRAWN,
  /** A mark that is drawn, and one that is stated with a place of its own under the same name. */
  MARK_DRAWN_AND_STATED(Severity.WARNING),
  /** A word that says no end of a slash line. */
  HINGE_UNKNOWN,
  /** A slash line that isn't drawn and whose ends aren't stated. */
  SLASH_UNKNOWN,
  /** A slash line that is drawn and never opened. */
  SLASH_IDLE(Severity.WARNING),
  /** A piece number is used twice. */
  PIECE_NUMBER_DUPLICATE,
  /** Two steps have the same id. */
  STEP_ID_DUPLICATE,
  /** A texture that figures don't have. */
  TEXTURE_UNKNOWN,
  /** A form that figures can't draw is stated of hardware. */
  FORM_UNKNOWN,
  /** A file of the notes folder whose name says nothing. */
  NOTE_UNKNOWN,
  /** A thing that a step uses and the pattern doesn't have. */
  USE_UNKNOWN,
  /** A kind of tool, material or hardware that isn't known. */
  KIND_UNKNOWN,
  /** No hazards, and no reason why. */
  HAZARDS_UNREASONED,
  /** A reason for no hazards where nothing says that there are none. */
  REASON_IDLE(Severity.WARNING),
  /** Ages that can't be understood. */
  AGES_WRONG,
  /** Ages of a size that the size table doesn't have. */
  AGES_SIZE_UNKNOWN,
  /** A place of the body that isn't known. */
  PLACE_UNKNOWN,
  /** A place of something that isn't there. */
  WORN_UNKNOWN,
  /** A material that isn't stated. */
  MATERIAL_UNKNOWN,
  /** A panel that isn't stated. */
  PANEL_UNKNOWN,
  /** An edge or chain that the panel doesn't have. */
  EDGE_UNKNOWN,
  /** A corner that the drawing doesn't have. */
  CORNER_UNKNOWN,
  /** A choice that its option doesn't have. */
  CHOICE_UNKNOWN,
  /** An option with fewer than two choices. */
  OPTION_CHOICES,
  /** An option that nothing depends on. */
  OPTION_IDLE(Severity.WARNING),
  /** A measure that doesn't say what it is, or says it twice. */
  MEASURE_VALUE,
  /** A bound or a tolerance of something that isn't solved for. */
  SOLVE_MISSING,
  /** A measure is solved for without saying between what. */
  SOLVE_BOUNDS,
  /** A condition to be solved that isn't an equation. */
  SOLVE_CONDITION,
  /** Braces in a text that no value is put into. */
  LABEL_PLACEHOLDER(Severity.WARNING),
  /** A corner of a piece that isn't cut in one known way. */
  CORNER_KIND,
  /** An edge with neither an allowance nor one at its start and one at its end, or with both. */
  EDGE_ALLOWANCE,
  /** Where a slash line ends is stated in no way, or in two. */
  SLASH_END,
  /** What a trim is sewn along isn't named with its panel. */
  TRIM_LINE,
  /** What is attached, or where, isn't stated in one of the ways. */
  ATTACHMENT_STATEMENT,
  /** A side that cloth doesn't have. */
  ATTACHMENT_SIDE,
  /** A material or hardware that isn't stated. */
  THING_UNKNOWN,
  /** A piece that isn't stated. */
  PIECE_UNKNOWN,
  /** An attachment that isn't stated. */
  HOLDER_UNKNOWN,
  /** Attachments that hold each other, and none is attached to a panel. */
  HELD_IN_A_CIRCLE;

  private final Severity severity;

  SourceCode() {
    this(Severity.ERROR);
  }

  SourceCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case MATERIAL_UNKNOWN, PANEL_UNKNOWN, USE_UNKNOWN, THING_UNKNOWN, HOLDER_UNKNOWN ->
          List.of("name", "name");
      case PIECE_UNKNOWN -> List.of("piece", "name");
      case SEAM_UNKNOWN -> List.of("seam", "name");
      case EDGE_UNKNOWN -> List.of("edge", "panel", "name");
      case CORNER_UNKNOWN -> List.of("corner", "panel", "name");
      default -> List.of();
    };
  }
}
