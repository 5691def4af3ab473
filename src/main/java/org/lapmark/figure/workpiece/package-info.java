/**
 * What lies flat on the table, as numbers, and how it is drawn: pieces of cloth and zips in their
 * poses, beside each other or on each other, with what lies on them and is marked and done on them.
 * Everything on a workpiece is in its own coordinates in real millimetres; paper begins with {@link
 * org.lapmark.figure.workpiece.PlacedBody}.
 */
package org.lapmark.figure.workpiece;
