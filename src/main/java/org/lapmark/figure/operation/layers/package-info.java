/** Layers laid and sewn on each other. */
package org.lapmark.figure.operation.layers;
