package org.lapmark.lay;

/**
 * Lengths cut from a tape or webbing whose width is the pieces' own.
 *
 * @param total all lengths together, in millimetres
 * @param purchase what to buy
 */
public record PieceGoods(double total, Purchase purchase) {}
