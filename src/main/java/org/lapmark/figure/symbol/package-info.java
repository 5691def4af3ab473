/**
 * Hardware and notions seen from above, in true size: one class for each form that {@code form}
 * names in a pattern, which says what of a thing it measures, what it is drawn as, and in which
 * words readers are told of it. A symbol is numbers; it knows neither formulas nor places in files.
 */
package org.lapmark.figure.symbol;
