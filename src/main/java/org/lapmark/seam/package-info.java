/** Edges sewn to each other: their lengths walked along the stitching line and compared. */
package org.lapmark.seam;
