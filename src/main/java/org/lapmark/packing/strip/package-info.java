/**
 * Arranging shapes on a strip of a given width, as short as a bounded search finds; in millimetres.
 */
package org.lapmark.packing.strip;
