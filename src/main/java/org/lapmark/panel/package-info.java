/**
 * Panels: named edges on the stitching line, allowances, the cutting line, notches, folds and
 * derived panels. Plain numbers come in; formulas are unknown here.
 *
 * <p>The stitching line is the truth, and runs clockwise on paper. A cutting line is made of lines
 * and curves within 0.02 mm of the true parallel (as computed, 0.005 mm), each span naming its
 * edge.
 *
 * <p>Where two edges run on smoothly at different allowances the cutting line steps; where a wide
 * allowance meets a narrow one at an obtuse corner, the narrow edge's line goes on until it meets
 * the wide one's, if that leaves at least half of the wide one. A fold's line goes on straight,
 * also where it runs on smoothly, until it meets its neighbour's cutting line, so that the unfolded
 * piece has no step there; only where it meets nothing does the neighbour's allowance end square to
 * it. A raw edge of allowance 0 is no fold. Corners are cut as stated ({@link
 * org.lapmark.panel.CornerShape}). An allowance that leaves an edge without any cutting line, or
 * that closes a ring, is refused by name and place. What cannot be done is a {@link
 * org.lapmark.panel.PanelException} with a {@link org.lapmark.panel.PanelCode}.
 */
package org.lapmark.panel;
