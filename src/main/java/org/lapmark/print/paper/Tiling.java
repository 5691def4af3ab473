package org.lapmark.print.paper;

import org.lapmark.packing.TileGrid;
import org.lapmark.source.JoinStyle;

/**
 * How a sheet is cut into tiles.
 *
 * @param overlap how much two neighbouring tiles both show, in millimetres: 10 to 15 is easy to
 *     glue, 0 where they meet edge to edge
 * @param caption the height kept free at the top of each tile for its code and the pattern's name,
 *     in millimetres
 * @param gap the least distance between two pieces, in millimetres
 * @param edge how far pieces keep from the edge of what may carry ink, in millimetres
 * @param joins how neighbours are joined
 */
public record Tiling(double overlap, double caption, double gap, double edge, JoinStyle joins) {
  public static final Tiling DEFAULT = new Tiling(12, 4.5, 2, 0.5, JoinStyle.OVERLAP);

  /** What suits a way of joining. */
  public static Tiling of(JoinStyle joins) {
    double overlap = joins == JoinStyle.BUTT ? 0 : DEFAULT.overlap();
    return new Tiling(overlap, DEFAULT.caption(), DEFAULT.gap(), DEFAULT.edge(), joins);
  }

  public TileGrid grid(Paper paper) {
    return new TileGrid(paper.window().width(), paper.window().height() - caption, overlap, edge);
  }
}
