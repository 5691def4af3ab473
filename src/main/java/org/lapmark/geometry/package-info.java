/**
 * Plane geometry in double-precision millimetres: x runs right, y runs down, as in SVG; a positive
 * turn is clockwise on paper.
 *
 * <p>Lines, arcs and cubic curves stay what they are under every operation here; nothing is
 * replaced by chords except by {@code flattened}, which states its error. Trigonometry goes through
 * {@code StrictMath} and sums run in path order, so that the same input gives the same bits on
 * every machine.
 *
 * <p>Promises: lengths within 1e-6 mm of analytic values, cusps and coincident control points
 * included; areas in closed form; affine images exact, an arc staying an arc of an ellipse; the
 * parallel of a curve within 0.003 mm, lines and arcs of circles exactly ({@link
 * org.lapmark.geometry.Parallel}); a moved outline without loops, its curves joined within 1e-6 mm
 * ({@link org.lapmark.geometry.offset.Offset}); an arc as cubics within 1e-4 mm.
 */
package org.lapmark.geometry;
