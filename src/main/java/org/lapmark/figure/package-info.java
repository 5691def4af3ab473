/**
 * Drawings of steps and of the finished article, from the pattern's true geometry.
 *
 * <p>An author states a figure as a YAML block in a step. {@link org.lapmark.figure.FigureSource}
 * is the block as read ({@link org.lapmark.figure.read}), without any size; each of its pictures
 * comes to numbers and words in one variant ({@link org.lapmark.figure.stage}), a scene that says
 * itself in words ({@link org.lapmark.figure.scene}); {@link org.lapmark.figure.FigureDrawer} tries
 * scenes as ink at several scales ({@link org.lapmark.figure.ink}) until every label has its place.
 * Each kind of picture has a package of its own. Shapes and distances are the computed ones; only
 * the stagger of layers and the thickness of cloth in a section are drawn larger than they are.
 * Drawings are in millimetres on paper, x right, y down.
 */
package org.lapmark.figure;
