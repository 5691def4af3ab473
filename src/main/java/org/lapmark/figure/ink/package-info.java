/**
 * What is drawn of a figure, in millimetres on paper, and how its labels find their places: lines,
 * textures and lettering, without any word about patterns. A canvas only grows; placing labels
 * changes nothing of it, and the same canvas always gets the same labels.
 */
package org.lapmark.figure.ink;
