/**
 * Panels made from panels: lines are kept wherever they are only moved, mirrored or cut; names
 * follow from the statement alone, never from the geometry; marks follow as far as they lie on the
 * new panel, and what is left out is told.
 */
package org.lapmark.panel.derivation;
