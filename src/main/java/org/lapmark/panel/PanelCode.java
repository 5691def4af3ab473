package org.lapmark.panel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with a panel; the English stands beside it in {@code findings.properties}. */
public enum PanelCode implements FindingCode {
  /** An outline whose end doesn't meet its start. */
  OUTLINE_OPEN,
  /** An outline that crosses or touches itself. */
  OUTLINE_CROSSES_ITSELF,
  /** An outline that encloses nothing. */
  OUTLINE_WITHOUT_AREA,
  /** A rectangle with a side that isn't above 0. */
  RECTANGLE_WITHOUT_SIZE,
  /** A corner too far from the outline. */
  CORNER_OFF_OUTLINE,
  /** Two corners at one place. */
  CORNERS_TOGETHER,
  /** An edge between corners of which one doesn't exist. */
  EDGE_CORNER_UNKNOWN,
  /**
   * An edge whose two corners are stated in the wrong order, so that it goes the long way round.
   */
  EDGE_CORNERS_SWAPPED,
  /** Two stated edges that are the same stretch. */
  EDGE_STATED_TWICE,
  /** One name for two edges or chains. */
  EDGE_NAME_TAKEN,
  /** An edge that the panel doesn't have. */
  PANEL_EDGE_UNKNOWN,
  /** A chain whose edges don't follow one another clockwise. */
  CHAIN_BROKEN,
  /** A notch before its edge's start or past its end. */
  NOTCH_OFF_EDGE,
  /** A notch that is neither single nor double. */
  NOTCH_COUNT,
  /** A notch beside which its edge has no cutting line. */
  NOTCH_WITHOUT_CUTTING_LINE,
  /** An allowance below 0. */
  EDGE_ALLOWANCE_NEGATIVE,
  /** An edge that has no cutting line, since its neighbours' allowances cover it. */
  ALLOWANCE_COVERS_EDGE,
  /** An allowance that closes a ring around a hole. */
  ALLOWANCE_CLOSES_RING,
  /** A cutting line that crosses itself, which is never drawn. */
  CUTTING_LINE_CROSSES_ITSELF,
  /** A corner that the panel doesn't have is to be cut in some way. */
  CORNER_KIND_NOWHERE,
  /**
   * A corner is to be cut square to an edge, or an edge turned back there, that doesn't end at it.
   */
  CORNER_KIND_OF_OTHER_EDGE,
  /** A corner can't be cut in the way stated. */
  CORNER_KIND_UNDRAWN,
  /** An outline with too many tight turns for a line beside it. */
  OUTLINE_TOO_INTRICATE,
  /** Nothing is left of a panel at a distance inside it. */
  INSET_NOTHING_LEFT,
  /** A panel falls into parts at a distance inside it. */
  INSET_FALLS_APART,
  /** A fold between places of which one doesn't exist. */
  FOLD_PLACE_UNKNOWN,
  /** A fold that begins where it ends. */
  FOLD_WITHOUT_LENGTH,
  /** A fold whose two halves don't lie on each other. */
  FOLD_HALVES_DIFFER,
  /** A mark that lies in one half only of a piece cut on the fold. */
  FOLD_MARK_ALONE,
  /** Notches of a set too close to each other to be cut. */
  NOTCH_GAP,
  /** A dart or pleat that reaches beyond its edge. */
  INTAKE_OFF_EDGE,
  /** A drawn dart or pleat that doesn't begin on the outline. */
  INTAKE_OFF_OUTLINE,
  /** A drawn dart whose legs stand on two edges. */
  INTAKE_ON_TWO_EDGES,
  /** Two darts or pleats that take up the same stretch of an edge. */
  INTAKES_OVERLAP,
  /** A notch in the middle of what a dart or pleat takes up. */
  NOTCH_IN_INTAKE,
  /** A drawn dart whose legs can't be sewn to each other, since they aren't equally long. */
  DART_LEGS_DIFFER,
  /** A dart whose allowance can't be shaped so that it lies inside the seam when pressed. */
  DART_CAP,
  /** A dart whose legs cross those of another, or the lines of a pleat. */
  DARTS_CROSS,
  /** A mark that isn't on the panel. */
  MARK_OUTSIDE,
  /** A slash line that doesn't lead from one place of the outline to another. */
  SLASH_NOT_ACROSS,
  /** Two slash lines that cross. */
  SLASHES_CROSS,
  /** A slash line that opens at a corner. */
  SLASH_AT_CORNER,
  /** A hinged slash that opens by more than its length. */
  SLASH_TOO_WIDE,
  /** A part that is overlapped by more than it is wide. */
  SLASH_OVERLAPS_PART,
  /** An edge that bends to one side and back across an opening. */
  SLASH_BENDS_BACK(Severity.WARNING),
  /** An opening that no smooth line crosses. */
  SLASH_NOT_SMOOTH,
  /** An overlap that turns an edge inside out. */
  SLASH_TURNS_BACK,
  /** Slashes that fold a panel over itself. */
  SLASH_FOLDS,
  /** An edge that a panel doesn't have, from which another panel is to be derived. */
  DERIVED_EDGE_UNKNOWN,
  /** An edge whose line inside the panel doesn't meet those of its neighbours. */
  INSET_EDGE_MISSES,
  /** An outline that would meet itself when moved outwards. */
  OUTSET_MEETS_ITSELF,
  /** An edge that others cover when they are moved outwards. */
  OUTSET_COVERS_EDGE,
  /** An edge or chain of which something else has taken the middle. */
  EDGE_IN_PARTS,
  /** Marks that don't follow to a derived panel, of which nothing is said. */
  MARKS_NOT_STATED(Severity.NOTE),
  /** A mark that doesn't lie on the derived panel. */
  MARK_LEFT_OUT(Severity.NOTE),
  /** A dart or pleat that a derived panel can't have, so that its edge stays longer. */
  INTAKE_LEFT_OUT(Severity.WARNING),
  /** A fold edge that isn't straight. */
  UNFOLD_NOT_STRAIGHT,
  /** A half panel that lies on both sides of its fold. */
  UNFOLD_CROSSES_FOLD,
  /** An edge that is to stay apart at the fold and doesn't end there. */
  UNFOLD_NOT_AT_FOLD,
  /** A new edge whose name is taken. */
  DERIVED_EDGE_TAKEN(Severity.WARNING),
  /** An edge that isn't square to the fold that it goes over. */
  UNFOLD_CORNER(Severity.WARNING),
  /** A style line that a panel doesn't have. */
  STYLE_LINE_UNKNOWN,
  /** A line that doesn't cross the panel that it is to split. */
  SPLIT_MISSES,
  /** A line that ends inside the panel that it is to split. */
  SPLIT_STOPS_SHORT,
  /** A line that goes into the panel more than once. */
  SPLIT_CROSSES_AGAIN,
  /** Something by which a part is named and that lies in both parts or in none. */
  SPLIT_KEEPS_BOTH,
  /** Edges of different lengths that are to be merged. */
  MERGE_LENGTHS_DIFFER,
  /** Edges of different shapes that are to be merged. */
  MERGE_SHAPES_DIFFER,
  /** An edge that is to be merged and goes all the way round. */
  MERGE_ALL_ROUND,
  /** A band wider than the panel has room for. */
  BAND_TOO_WIDE,
  /** A band along edges that go all the way round. */
  BAND_ALL_ROUND;

  private final Severity severity;

  PanelCode() {
    this(Severity.ERROR);
  }

  PanelCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case PANEL_EDGE_UNKNOWN, DERIVED_EDGE_UNKNOWN -> List.of("edge", "panel", "edge");
      case EDGE_CORNER_UNKNOWN -> List.of("corner", "panel", "corner");
      default -> List.of();
    };
  }

  /** The exception that carries this code, with arguments given as name, value, name, value. */
  public PanelException exception(Object... namesAndValues) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      arguments.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return new PanelException(this, arguments);
  }
}
