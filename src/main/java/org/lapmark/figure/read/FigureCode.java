package org.lapmark.figure.read;

import java.util.List;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with a figure. */
public enum FigureCode implements FindingCode {
  /** The block has more characters than are read. */
  FIGURE_TOO_LARGE,
  /** A key that isn't known there. */
  FIGURE_KEY_UNKNOWN,
  /** Something that isn't a map stands where the figure should be. */
  FIGURE_NOT_KEYS,
  /** A key stands twice in one map. */
  FIGURE_KEY_TWICE,
  /** A key that has to be there isn't. */
  FIGURE_KEY_MISSING,
  /** Several keys stand together of which one excludes the others. */
  FIGURE_KEYS_TOGETHER,
  /** A key isn't looked at as another one is there. */
  FIGURE_KEY_IDLE,
  /** A name without a letter. */
  FIGURE_NAME_EMPTY,
  /** Something of another kind stands where text, a list or a map is needed. */
  FIGURE_VALUE_KIND,
  /** A word that isn't one of those that can stand there. */
  FIGURE_WORD_UNKNOWN,
  /** Not exactly one kind of picture is stated. */
  FIGURE_KIND,
  /** More frames than fit beside each other, or more things than a figure can show. */
  FIGURE_TOO_MANY,
  /** No piece has the number. */
  FIGURE_PIECE_UNKNOWN,
  /** No panel has the name. */
  FIGURE_PANEL_UNKNOWN,
  /** The panel has no such edge. */
  FIGURE_EDGE_UNKNOWN,
  /** No material has the id. */
  FIGURE_MATERIAL_UNKNOWN,
  /** The piece isn't cut from that material. */
  FIGURE_NOT_CUT_FROM,
  /** No hardware has the id. */
  FIGURE_HARDWARE_UNKNOWN,
  /** What is drawn needs a property that its material or hardware doesn't state. */
  FIGURE_PROPERTY_MISSING,
  /** No unit has the name. */
  FIGURE_UNIT_UNKNOWN,
  /** A unit is made of itself, or of units within units within units. */
  FIGURE_UNIT_WITHIN,
  /** An edge has fewer notches. */
  FIGURE_NOTCH_UNKNOWN,
  /** A piece that is to lie on another one lies beside it. */
  FIGURE_BESIDE_PIECE,
  /** Two edges that don't meet at a corner, and between which none is cut out. */
  FIGURE_CORNER_APART,
  /** It is stated how long a line across a notched-out corner is. */
  FIGURE_ACROSS_IDLE,
  /** No corner of the panel has the name. */
  FIGURE_CORNER_UNKNOWN,
  /** No seam has the name. */
  FIGURE_SEAM_UNKNOWN,
  /** No side of the seam has an edge of the panel. */
  FIGURE_SEAM_ELSEWHERE,
  /** A seam is said to start where it doesn't. */
  FIGURE_AROUND_START,
  /** What is shown round a piece belongs to no piece and has no name for readers. */
  FIGURE_AROUND_NAMELESS,
  /** No trim has the name. */
  FIGURE_TRIM_UNKNOWN,
  /** No seam has the trim beside the panel. */
  FIGURE_TRIM_ELSEWHERE,
  /** Something that isn't there in every version is shown where it may be missing. */
  FIGURE_ABSENT,
  /** No attachment has the name. */
  FIGURE_ATTACHMENT_UNKNOWN,
  /** Something is attached to another panel than that of the piece on which it is to be shown. */
  FIGURE_ATTACHED_ELSEWHERE,
  /** No mark of the panel has the name. */
  FIGURE_MARK_UNKNOWN,
  /** A trim isn't sewn along an edge of the piece on which it is to be shown. */
  FIGURE_TRIM_ASIDE,
  /** A length is stated of something that isn't sold by the length. */
  FIGURE_LENGTH_IDLE,
  /** Something has no way through it. */
  FIGURE_NOTHING_THROUGH,
  /** A strap is wider than what it is to go through. */
  FIGURE_THROUGH_NARROW,
  /** What a strap turns back round lies at its end, which isn't drawn. */
  FIGURE_STRAP_END_LEFT_OUT,
  /** A strap's end comes back to something that it didn't pass. */
  FIGURE_BACK_TO_UNPASSED,
  /** More of something that is sold by the length lies beside a piece than on it. */
  FIGURE_LENGTH_BESIDE,
  /** A trim of a material, which has no form. */
  FIGURE_TRIM_OF_CLOTH,
  /** A zip is longer than the edge that it is laid on. */
  FIGURE_ZIP_TOO_LONG,
  /** A distance leads off the thing it is measured on. */
  FIGURE_DISTANCE_BEYOND,
  /** A share is more than the whole. */
  FIGURE_SHARE_BEYOND,
  /** What has to stretch from one place to another is stated from its end to its beginning. */
  FIGURE_STRETCH_BACKWARDS,
  /** What has to stretch from one place to another doesn't. */
  FIGURE_STRETCH_EMPTY,
  /** A line to fold at that the panel doesn't have. */
  FIGURE_LINE_UNKNOWN,
  /** A fold that leaves nothing before or beyond it. */
  FIGURE_FOLD_IMPOSSIBLE,
  /** A gap lies outside what is sewn, or in another. */
  FIGURE_GAP_OUTSIDE,
  /** Places along edges that don't follow one another. */
  FIGURE_EXTENT_OF_SEVERAL,
  /** Something that only a piece can show is stated of a zip. */
  FIGURE_NEEDS_PIECE,
  /** Curves alone are clipped of an edge that has none. */
  FIGURE_CLIPS_STRAIGHT,
  /** Rows of stitches are stated of the first hoop, above which nothing lies. */
  FIGURE_ROWS_ABOVE,
  /** Hoops are stated from the bottom up. */
  FIGURE_HOOPS_UPWARDS,
  /** Something is stated of a part that isn't drawn. */
  FIGURE_LEFT_OUT,
  /** Something of a section stands where no layer lies. */
  FIGURE_OFF_LAYERS,
  /** A seam or an edge says already what is stated beside it. */
  FIGURE_OPERATION_GIVEN,
  /** Something stands beside an operation that is written out in braces. */
  FIGURE_OPERATION_BESIDE,
  /** Nothing is cut from a panel whose material an operation shows. */
  FIGURE_OPERATION_UNCUT,
  /** An operation along an edge names none. */
  FIGURE_OPERATION_NO_EDGE,
  /** An operation at a corner or a dart names none. */
  FIGURE_OPERATION_UNKNOWN,
  /** What an operation is about doesn't say what the operation needs. */
  FIGURE_OPERATION_LACKS,
  /** An edge is straight, or bends the other way. */
  FIGURE_OPERATION_CURVE,
  /** A corner that is turned is too blunt or too sharp, or points inward. */
  FIGURE_OPERATION_ANGLE,
  /** An allowance is narrower than an operation needs. */
  FIGURE_ALLOWANCE_NARROW,
  /** A line can't be drawn at its distance. */
  FIGURE_LINE_IMPOSSIBLE,
  /** A dimension stands where its two ends lie on each other. */
  FIGURE_DIMENSION_FLAT,
  /** Dimensions that differ are printed alike. */
  FIGURE_DIMENSIONS_ALIKE,
  /** A label has more letters than a figure can show. */
  FIGURE_LABEL_TOO_LONG,
  /** No arrangement of the labels keeps them apart. */
  FIGURE_CROWDED;

  @Override
  public Severity severity() {
    return switch (this) {
      case FIGURE_ZIP_TOO_LONG,
          FIGURE_KEY_IDLE,
          FIGURE_LENGTH_IDLE,
          FIGURE_LENGTH_BESIDE,
          FIGURE_ACROSS_IDLE,
          FIGURE_CLIPS_STRAIGHT,
          FIGURE_ROWS_ABOVE,
          FIGURE_HOOPS_UPWARDS,
          FIGURE_DIMENSIONS_ALIKE ->
          Severity.WARNING;
      default -> Severity.ERROR;
    };
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case FIGURE_PIECE_UNKNOWN -> List.of("piece", "number");
      case FIGURE_PANEL_UNKNOWN,
          FIGURE_MATERIAL_UNKNOWN,
          FIGURE_HARDWARE_UNKNOWN,
          FIGURE_TRIM_UNKNOWN,
          FIGURE_UNIT_UNKNOWN,
          FIGURE_MARK_UNKNOWN,
          FIGURE_ATTACHMENT_UNKNOWN ->
          List.of("name", "name");
      case FIGURE_ABSENT, FIGURE_ATTACHED_ELSEWHERE, FIGURE_NOT_CUT_FROM ->
          List.of("shown", "name", "place");
      case FIGURE_SEAM_UNKNOWN -> List.of("seam", "name");
      case FIGURE_EDGE_UNKNOWN -> List.of("edge", "panel", "name");
      default -> List.of();
    };
  }

  @Override
  public boolean yields() {
    return this == FIGURE_ABSENT;
  }
}
