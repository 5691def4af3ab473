/**
 * How stitching looks along a line in a figure: each kind of stitch draws itself, in millimetres on
 * paper, so that it reads the same at any scale.
 */
package org.lapmark.figure.stitching;
