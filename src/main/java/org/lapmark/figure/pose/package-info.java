/**
 * How a piece lies that doesn't lie flat: folded, with a corner turned back, drawn up along an
 * edge, rolled up, held by pins or clips. One class a kind, which reads itself, comes to numbers in
 * one variant, and says itself in words; what is drawn of it is in {@link
 * org.lapmark.figure.workpiece}.
 */
package org.lapmark.figure.pose;
