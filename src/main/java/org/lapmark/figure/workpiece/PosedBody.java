package org.lapmark.figure.workpiece;

import org.lapmark.figure.ink.Beside;
import org.lapmark.geometry.Affine;

/**
 * Something flat in its pose.
 *
 * @param body what it is
 * @param pose from its own coordinates to the picture's, in which it keeps its real size; where
 *     pieces lie apart, only how it is turned
 * @param cutAway the side on which it is cut away to show what lies beneath, or null
 */
public record PosedBody(Body body, Affine pose, Beside cutAway) {}
