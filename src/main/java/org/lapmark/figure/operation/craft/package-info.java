/**
 * What operations of the trade have in common: the keys of their amounts and materials, how they
 * are read, and what a seam, an edge or a trim that is named says of them in one variant.
 */
package org.lapmark.figure.operation.craft;
