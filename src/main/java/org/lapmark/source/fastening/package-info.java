/**
 * What is fastened to panels and isn't a seam of edges, as stated: trims sewn along edges, and what
 * is attached at a place.
 *
 * <p>Values alone; formulas in them aren't evaluated, and names lead somewhere only once the whole
 * folder has been read.
 */
package org.lapmark.source.fastening;
