/** The pieces of all sizes stacked on each other, their lines and their names. */
package org.lapmark.print.nest;
