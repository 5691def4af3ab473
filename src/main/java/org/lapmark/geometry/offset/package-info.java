/**
 * Lines beside a closed outline, each side at a distance of its own, joined at corners as stated:
 * without loops, curves joined within 1e-6 mm, nothing farther off than 2.7 times the distance
 * ({@link org.lapmark.geometry.offset.Offset}).
 */
package org.lapmark.geometry.offset;
