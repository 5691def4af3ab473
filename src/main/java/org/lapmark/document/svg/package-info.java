/** Drawings as SVG, and the cut files of pieces. */
package org.lapmark.document.svg;
