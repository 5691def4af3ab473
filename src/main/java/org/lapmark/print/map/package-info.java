/** The sheet in small, with the codes of its tiles. */
package org.lapmark.print.map;
