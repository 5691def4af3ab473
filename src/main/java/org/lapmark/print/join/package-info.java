/** What joins tiles: lines, marks, check lines and notes, so that no two can be confused. */
package org.lapmark.print.join;
