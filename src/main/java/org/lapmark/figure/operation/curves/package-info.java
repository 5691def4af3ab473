/** Corners and curves, seen from above. */
package org.lapmark.figure.operation.curves;
