/** Draws the tiles of a sheet, each thing that they show by itself. */
package org.lapmark.print.tile;
