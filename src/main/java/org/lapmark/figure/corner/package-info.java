/**
 * Boxed corners: a corner of something assembled, opened out so that one of its seams lies on
 * another, and sewn across. {@link org.lapmark.figure.corner.BoxedCorner} states, reads and stages
 * one.
 */
package org.lapmark.figure.corner;
