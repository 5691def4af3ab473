/**
 * Operations of the trade, each a figure of one idea in at most three moments. {@link
 * org.lapmark.figure.operation.Operation} states, reads and stages one; a kind of operation is one
 * class below this package, with its keys and what its moments look like, in section.
 */
package org.lapmark.figure.operation;
