/**
 * What is fastened to panels in one variant, as numbers: equal where a maker makes the same.
 *
 * <p>Lengths are millimetres, points those of the panel that something is attached to.
 */
package org.lapmark.grade.fastening;
