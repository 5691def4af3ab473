/** Strips, straps and tabs, seen from above. */
package org.lapmark.figure.operation.strips;
