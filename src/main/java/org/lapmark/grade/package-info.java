/**
 * Source and variant in, the whole pattern out: measures, panels, pieces and seams evaluated on
 * demand in one graph, so that a cycle is named in full even where it runs through a panel.
 */
package org.lapmark.grade;
