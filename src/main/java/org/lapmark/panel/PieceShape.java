package org.lapmark.panel;

import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * What is drawn of a piece, in the panel's own coordinates.
 *
 * @param panel the panel on its stitching line
 * @param allowances millimetres by edge name, one entry an edge
 * @param cuttingLine the cutting line; equal to the stitching line where allowances are 0
 * @param notches the notches as drawn: short lines from the cutting line inwards
 */
public record PieceShape(
    Panel panel, Map<String, Double> allowances, CuttingLine cuttingLine, List<Path> notches) {
  /** Copies the lists. */
  public PieceShape {
    notches = List.copyOf(notches);
  }

  /**
   * Builds a piece's shape.
   *
   * @param panel the panel
   * @param allowances millimetres, 0 or more, by edge name; every edge has one
   * @return the shape
   * @throws PanelException when an allowance can't be drawn or a notch doesn't fit
   */
  public static PieceShape of(Panel panel, Map<String, Double> allowances) {
    throw new UnsupportedOperationException();
  }

  /**
   * The box around the cutting line.
   *
   * @return the box in panel coordinates
   */
  public Box bounds() {
    return cuttingLine.path().bounds();
  }
}
