/**
 * Placing shapes on rectangles and strips without overlap: polygons in, placements out. It knows
 * nothing of sewing; turning is allowed as the caller states.
 */
package org.lapmark.packing;
