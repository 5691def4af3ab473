package org.lapmark.panel;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with a panel; the English stands beside it in {@code findings.properties}. */
public enum PanelCode implements FindingCode {
  /** An outline whose end doesn't meet its start. */
  OUTLINE_OPEN("outline-open"),
  /** An outline that crosses or touches itself. */
  OUTLINE_CROSSES_ITSELF("outline-crosses-itself"),
  /** An outline that encloses nothing. */
  OUTLINE_WITHOUT_AREA("outline-without-area"),
  /** A rectangle with a side that isn't above 0. */
  RECTANGLE_WITHOUT_SIZE("rectangle-without-size"),
  /** A corner too far from the outline. */
  CORNER_OFF_OUTLINE("corner-off-outline"),
  /** Two corners at one place. */
  CORNERS_TOGETHER("corners-together"),
  /** An edge between corners of which one doesn't exist. */
  CORNER_UNKNOWN("edge-corner-unknown"),
  /**
   * An edge whose two corners are stated in the wrong order, so that it goes the long way round.
   */
  EDGE_CORNERS_SWAPPED("edge-corners-swapped"),
  /** Two stated edges that are the same stretch. */
  EDGE_STATED_TWICE("edge-stated-twice"),
  /** One name for two edges or chains. */
  EDGE_NAME_TAKEN("edge-name-taken"),
  /** An edge that the panel doesn't have. */
  EDGE_UNKNOWN("panel-edge-unknown"),
  /** A chain whose edges don't follow one another clockwise. */
  CHAIN_BROKEN("chain-broken"),
  /** A notch before its edge's start or past its end. */
  NOTCH_OFF_EDGE("notch-off-edge"),
  /** A notch that is neither single nor double. */
  NOTCH_COUNT("notch-count"),
  /** A notch beside which its edge has no cutting line. */
  NOTCH_WITHOUT_CUTTING_LINE("notch-without-cutting-line"),
  /** An allowance below 0. */
  ALLOWANCE_NEGATIVE("edge-allowance-negative"),
  /** An edge that has no cutting line, since its neighbours' allowances cover it. */
  ALLOWANCE_COVERS_EDGE("allowance-covers-edge"),
  /** An allowance that closes a ring around a hole. */
  ALLOWANCE_CLOSES_RING("allowance-closes-ring"),
  /** A cutting line that crosses itself, which is never drawn. */
  CUTTING_LINE_CROSSES_ITSELF("cutting-line-crosses-itself"),
  /** A corner that the panel doesn't have is to be cut in some way. */
  CORNER_KIND_NOWHERE("corner-kind-nowhere"),
  /**
   * A corner is to be cut square to an edge, or an edge turned back there, that doesn't end at it.
   */
  CORNER_KIND_OF_OTHER_EDGE("corner-kind-of-other-edge"),
  /** A corner can't be cut in the way stated. */
  CORNER_KIND_UNDRAWN("corner-kind-undrawn"),
  /** An outline with too many tight turns for a line beside it. */
  OUTLINE_TOO_INTRICATE("outline-too-intricate"),
  /** Nothing is left of a panel at a distance inside it. */
  INSET_NOTHING_LEFT("inset-nothing-left"),
  /** A panel falls into parts at a distance inside it. */
  INSET_FALLS_APART("inset-falls-apart"),
  /** A fold between places of which one doesn't exist. */
  FOLD_PLACE_UNKNOWN("fold-place-unknown"),
  /** A fold that begins where it ends. */
  FOLD_WITHOUT_LENGTH("fold-without-length"),
  /** A fold whose two halves don't lie on each other. */
  FOLD_HALVES_DIFFER("fold-halves-differ"),
  /** A mark that lies in one half only of a piece cut on the fold. */
  FOLD_MARK_ALONE("fold-mark-alone"),
  /** Notches of a set too close to each other to be cut. */
  NOTCH_GAP("notch-gap"),
  /** A dart or pleat that reaches beyond its edge. */
  INTAKE_OFF_EDGE("intake-off-edge"),
  /** A drawn dart or pleat that doesn't begin on the outline. */
  INTAKE_OFF_OUTLINE("intake-off-outline"),
  /** A drawn dart whose legs stand on two edges. */
  INTAKE_ON_TWO_EDGES("intake-on-two-edges"),
  /** Two darts or pleats that take up the same stretch of an edge. */
  INTAKES_OVERLAP("intakes-overlap"),
  /** A notch in the middle of what a dart or pleat takes up. */
  NOTCH_IN_INTAKE("notch-in-intake"),
  /** A drawn dart whose legs can't be sewn to each other, since they aren't equally long. */
  DART_LEGS_DIFFER("dart-legs-differ"),
  /** A dart whose allowance can't be shaped so that it lies inside the seam when pressed. */
  DART_CAP("dart-cap"),
  /** A dart whose legs cross those of another, or the lines of a pleat. */
  DARTS_CROSS("darts-cross"),
  /** A mark that isn't on the panel. */
  MARK_OUTSIDE("mark-outside"),
  /** A slash line that doesn't lead from one place of the outline to another. */
  SLASH_NOT_ACROSS("slash-not-across"),
  /** Two slash lines that cross. */
  SLASHES_CROSS("slashes-cross"),
  /** A slash line that opens at a corner. */
  SLASH_AT_CORNER("slash-at-corner"),
  /** A hinged slash that opens by more than its length. */
  SLASH_TOO_WIDE("slash-too-wide"),
  /** A part that is overlapped by more than it is wide. */
  SLASH_OVERLAPS_PART("slash-overlaps-part"),
  /** An edge that bends to one side and back across an opening. */
  SLASH_BENDS_BACK("slash-bends-back", Severity.WARNING),
  /** An opening that no smooth line crosses. */
  SLASH_NOT_SMOOTH("slash-not-smooth"),
  /** An overlap that turns an edge inside out. */
  SLASH_TURNS_BACK("slash-turns-back"),
  /** Slashes that fold a panel over itself. */
  SLASH_FOLDS("slash-folds"),
  /** An edge that a panel doesn't have, from which another panel is to be derived. */
  DERIVED_EDGE_UNKNOWN("derived-edge-unknown"),
  /** An edge whose line inside the panel doesn't meet those of its neighbours. */
  INSET_EDGE_MISSES("inset-edge-misses"),
  /** An outline that would meet itself when moved outwards. */
  OUTSET_MEETS_ITSELF("outset-meets-itself"),
  /** An edge that others cover when they are moved outwards. */
  OUTSET_COVERS_EDGE("outset-covers-edge"),
  /** An edge or chain of which something else has taken the middle. */
  EDGE_IN_PARTS("edge-in-parts"),
  /** Marks that don't follow to a derived panel, of which nothing is said. */
  MARKS_NOT_STATED("marks-not-stated", Severity.NOTE),
  /** A mark that doesn't lie on the derived panel. */
  MARK_LEFT_OUT("mark-left-out", Severity.NOTE),
  /** A dart or pleat that a derived panel can't have, so that its edge stays longer. */
  INTAKE_LEFT_OUT("intake-left-out", Severity.WARNING),
  /** A fold edge that isn't straight. */
  UNFOLD_NOT_STRAIGHT("unfold-not-straight"),
  /** A half panel that lies on both sides of its fold. */
  UNFOLD_CROSSES_FOLD("unfold-crosses-fold"),
  /** An edge that is to stay apart at the fold and doesn't end there. */
  UNFOLD_NOT_AT_FOLD("unfold-not-at-fold"),
  /** A new edge whose name is taken. */
  DERIVED_EDGE_TAKEN("derived-edge-taken", Severity.WARNING),
  /** An edge that isn't square to the fold that it goes over. */
  UNFOLD_CORNER("unfold-corner", Severity.WARNING),
  /** A style line that a panel doesn't have. */
  STYLE_LINE_UNKNOWN("style-line-unknown"),
  /** A line that doesn't cross the panel that it is to split. */
  SPLIT_MISSES("split-misses"),
  /** A line that ends inside the panel that it is to split. */
  SPLIT_STOPS_SHORT("split-stops-short"),
  /** A line that goes into the panel more than once. */
  SPLIT_CROSSES_AGAIN("split-crosses-again"),
  /** Something by which a part is named and that lies in both parts or in none. */
  SPLIT_KEEPS_BOTH("split-keeps-both"),
  /** Edges of different lengths that are to be merged. */
  MERGE_LENGTHS_DIFFER("merge-lengths-differ"),
  /** Edges of different shapes that are to be merged. */
  MERGE_SHAPES_DIFFER("merge-shapes-differ"),
  /** An edge that is to be merged and goes all the way round. */
  MERGE_ALL_ROUND("merge-all-round"),
  /** A band wider than the panel has room for. */
  BAND_TOO_WIDE("band-too-wide"),
  /** A band along edges that go all the way round. */
  BAND_ALL_ROUND("band-all-round");

  private final String id;
  private final Severity severity;

  PanelCode(String id) {
    this(id, Severity.ERROR);
  }

  PanelCode(String id, Severity severity) {
    this.id = id;
    this.severity = severity;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  @Override
  public List<String> subject() {
    return switch (this) {
      case EDGE_UNKNOWN, DERIVED_EDGE_UNKNOWN -> List.of("edge", "panel", "edge");
      case CORNER_UNKNOWN -> List.of("corner", "panel", "corner");
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
