package org.lapmark.panel;

import java.util.LinkedHashMap;
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
  INSET_FALLS_APART("inset-falls-apart");

  private final String id;

  PanelCode(String id) {
    this.id = id;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }

  /** The exception that carries this code, with arguments given as name, value, name, value. */
  PanelException exception(Object... namesAndValues) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      arguments.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return new PanelException(this, arguments);
  }
}
