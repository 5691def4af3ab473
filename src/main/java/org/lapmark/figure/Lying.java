package org.lapmark.figure;

import java.util.List;
import java.util.Map;
import org.lapmark.figure.FigureSource.View;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.grade.Piece;
import org.lapmark.panel.Panel;

/**
 * A piece or a zip as it lies in one variant, in its own coordinates in real millimetres: a
 * panel's, or for a zip x along the tape from its middle and y across from one edge of the tape.
 *
 * @param view as stated
 * @param piece the piece, or null for a zip
 * @param material the material's or the zip's id
 * @param texture its texture; for a zip null
 * @param whole its outline
 * @param outline what is seen of it
 * @param cut the line where the rest is left out, or null
 * @param allowances allowances by edge; of turned edges 0
 * @param turned the names of edges turned in
 * @param zip the zip's measures, or null
 */
record Lying(
    View view,
    Piece piece,
    String material,
    Texture texture,
    Path whole,
    Path outline,
    Cut cut,
    Map<String, Double> allowances,
    List<String> turned,
    Zip zip) {
  /**
   * A zip.
   *
   * @param length from stop to stop
   * @param tape the tape's width
   * @param visible how much of it stays visible
   */
  record Zip(double length, double tape, double visible) {
    /**
     * How far the tape reaches beyond a stop, in millimetres, as zips are sold: far enough that a
     * seam beside the stop catches it.
     */
    static final double END = 20;
  }

  /** Whether it is seen mirrored: from the side that isn't the paper's. */
  boolean mirrored() {
    return view.side() == FigureSource.Side.WRONG != view.reversed();
  }

  /** From its own coordinates to a picture in which it keeps its real size. */
  Affine facing() {
    Affine mirror = mirrored() ? Affine.scaling(-1, 1) : Affine.IDENTITY;
    return Affine.rotation(view.turn()).after(mirror);
  }

  Panel panel() {
    return piece.shape().panel();
  }

  /** How far the grain is turned on paper. */
  double angle() {
    return view.turn();
  }
}
