/**
 * Pieces and zips that lie flat, beside each other or as layers along a seam. What a picture states
 * of one is a class for each map of keys ({@link org.lapmark.figure.flat.View} and what stands in
 * it), which reads itself, comes to numbers in one variant, and has what is drawn of it inside;
 * lengths and places are true, only the stagger of layers isn't.
 */
package org.lapmark.figure.flat;
