/** Pieces as values: what is cut, how it is ruled, where it is folded. */
package org.lapmark.grade.piece;
