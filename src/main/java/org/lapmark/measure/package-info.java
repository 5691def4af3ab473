/**
 * Quantities with dimensions, formulas over them, and the forms in which readers see them.
 *
 * <p>Lengths are millimetres, areas square millimetres, angles degrees. Formulas are evaluated
 * against a {@link org.lapmark.measure.Scope} and know nothing of patterns. Every failure is a
 * finding at the exact characters.
 */
package org.lapmark.measure;
