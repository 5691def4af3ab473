/** Numbers, lengths and ids as they are written in SVG. */
package org.lapmark.source.drawing.text;
