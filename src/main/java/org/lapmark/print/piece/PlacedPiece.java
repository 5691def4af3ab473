package org.lapmark.print.piece;

import org.lapmark.geometry.Affine;
import org.lapmark.grade.piece.Piece;

/**
 * A piece at its place on the sheet.
 *
 * @param piece the piece
 * @param placement from the panel's coordinates to the sheet's, a turn and a shift
 */
public record PlacedPiece(Piece piece, Affine placement) {}
