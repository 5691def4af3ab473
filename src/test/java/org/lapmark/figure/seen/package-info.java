/**
 * Published figures as a reader has them: their SVG is read back and judged without any class of
 * the program that drew it, so that a mistake in placing can't hide behind itself.
 */
package org.lapmark.figure.seen;
