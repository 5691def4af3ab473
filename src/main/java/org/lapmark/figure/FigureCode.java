package org.lapmark.figure;

import java.util.Locale;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with a figure. */
public enum FigureCode implements FindingCode {
  /** The block has more characters than are read. */
  FIGURE_TOO_LARGE,
  /** A key that isn't known there. */
  FIGURE_KEY_UNKNOWN,
  /** A key stands twice in one map. */
  FIGURE_KEY_TWICE,
  /** A key that has to be there isn't. */
  FIGURE_KEY_MISSING,
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
  /** No seam has the name. */
  FIGURE_SEAM_UNKNOWN,
  /** A distance leads off the thing it is measured on. */
  FIGURE_DISTANCE_BEYOND,
  /** What has to stretch from one place to another doesn't. */
  FIGURE_STRETCH_EMPTY,
  /** Something that only a piece can show is stated of a zip. */
  FIGURE_NEEDS_PIECE,
  /** A line can't be drawn at its distance. */
  FIGURE_LINE_IMPOSSIBLE,
  /** A dimension stands where its two ends lie on each other. */
  FIGURE_DIMENSION_FLAT,
  /** A label has more letters than a figure can show. */
  FIGURE_LABEL_TOO_LONG,
  /** No arrangement of the labels keeps them apart. */
  FIGURE_CROWDED;

  @Override
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  @Override
  public Severity severity() {
    return Severity.ERROR;
  }
}
