/**
 * Pieces as they lie on a sheet: their strokes, marks, lettering, and the layers and groups they
 * belong to; in millimetres.
 */
package org.lapmark.print.piece;
