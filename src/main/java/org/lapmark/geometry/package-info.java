/**
 * Plane geometry in double-precision millimetres: x runs right, y runs down, as in SVG; a positive
 * turn is clockwise on paper.
 *
 * <p>Lines, arcs and cubic curves stay what they are under every operation here; nothing is
 * replaced by chords except by {@code flattened}, which states its error. Trigonometry goes through
 * {@code StrictMath} and sums run in path order, so that the same input gives the same bits on
 * every machine.
 */
package org.lapmark.geometry;
