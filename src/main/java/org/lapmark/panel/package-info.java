/**
 * Panels: named edges on the stitching line, allowances, the cutting line, notches, folds and
 * derived panels. Plain numbers come in; formulas are unknown here.
 *
 * <p>The stitching line is the truth, and runs clockwise on paper. A cutting line is made of lines
 * and curves within 0.02 mm of the true parallel, each span naming its edge.
 */
package org.lapmark.panel;
