/**
 * Cloth: how the pieces of each material are laid on it in a single layer, what to buy, and the
 * drawing of both. Lay coordinates are millimetres, x along the cloth from its cut end, y across it
 * from one selvedge.
 */
package org.lapmark.lay;
