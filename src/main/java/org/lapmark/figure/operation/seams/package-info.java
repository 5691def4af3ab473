/** Seams, and what is done to their allowances. */
package org.lapmark.figure.operation.seams;
