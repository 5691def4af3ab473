/**
 * Sheets drawn as tiles, nested sizes, cut sheets, the page map and the printing page, all as
 * drawings in millimetres at true scale.
 */
package org.lapmark.print;
