/**
 * Pieces on paper at true scale: sheets, tiles, join marks, page map and the printing page, all as
 * drawings in millimetres.
 */
package org.lapmark.print;
