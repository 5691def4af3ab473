/** Edges: hems, facings, bindings, casings, pockets. */
package org.lapmark.figure.operation.edges;
