package org.lapmark.print;

import org.lapmark.packing.TileGrid;

/**
 * How a sheet is cut into tiles.
 *
 * @param overlap how much two neighbouring tiles both show, in millimetres: 10 to 15 is easy to
 *     glue
 * @param caption the height kept free at the top of each tile for its code and the pattern's name,
 *     in millimetres
 * @param gap the least distance between two pieces, in millimetres
 * @param edge how far pieces keep from the edge of what may carry ink, in millimetres
 */
record Tiling(double overlap, double caption, double gap, double edge) {
  static final Tiling DEFAULT = new Tiling(12, 4.5, 2, 0.5);

  TileGrid grid(Paper paper) {
    return new TileGrid(paper.window().width(), paper.window().height() - caption, overlap, edge);
  }
}
