package org.lapmark.print.nest;

import java.util.List;
import org.lapmark.geometry.Path;
import org.lapmark.print.piece.PieceArt;

/**
 * What is drawn of a nested piece.
 *
 * @param others all but cutting lines
 * @param marks those of them that need a name
 * @param cutting the cutting lines
 */
record NestedLines(List<PieceArt.Stroke> others, List<Mark> marks, List<Cutting> cutting) {
  /**
   * A stretch of cutting line. It runs clockwise, so that its right is the inside.
   *
   * @param number what tells it from all others on the sheet, counted from 0
   * @param owners the sizes it belongs to
   * @param path where it runs on the sheet
   */
  record Cutting(int number, List<Integer> owners, Path path) {}

  /**
   * A mark that isn't the same in all sizes.
   *
   * @param owners the sizes it belongs to
   * @param path where it runs on the sheet
   * @param role its role
   */
  record Mark(List<Integer> owners, Path path, String role) {}
}
