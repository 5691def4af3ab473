/** Panels whose shape is stated by numbers instead of drawn: rectangles, circles, sectors. */
package org.lapmark.panel.stated;
