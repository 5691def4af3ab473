/** Panels of one variant with their marks, and the seams that marks are taken from. */
package org.lapmark.grade.panel;
