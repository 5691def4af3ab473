/** Values as they are printed: in one unit or both, rounded to steps, within texts. */
package org.lapmark.measure.print;
