/**
 * Lines on paper: clipped, dashed, shared, moved, and the room that they leave for lettering; in
 * millimetres.
 */
package org.lapmark.print.line;
