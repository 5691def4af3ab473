/**
 * Where a piece is cut: allowances, the cutting line with its corners and dart caps, notches, and
 * folded cloth.
 *
 * <p>A cutting line is made of lines and curves within 0.02 mm of the true parallel (as computed,
 * 0.005 mm), each span naming its edge. Where two edges run on smoothly at different allowances it
 * steps; where a wide allowance meets a narrow one at an obtuse corner, the narrow edge's line goes
 * on until it meets the wide one's, if that leaves at least half of the wide one. A fold's line
 * goes on straight, also where it runs on smoothly, until it meets its neighbour's cutting line, so
 * that the unfolded piece has no step there; only where it meets nothing does the neighbour's
 * allowance end square to it. A raw edge of allowance 0 is no fold. Corners are cut as stated
 * ({@link org.lapmark.panel.cutting.CornerShape}). An allowance that leaves an edge without any
 * cutting line, or that closes a ring, is refused by name and place.
 */
package org.lapmark.panel.cutting;
