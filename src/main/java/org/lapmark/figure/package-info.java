/**
 * Drawings of steps and of the finished article, from the pattern's true geometry.
 *
 * <p>An author states a figure as a YAML block in a step: pieces laid flat, layers lying on each
 * other along a seam, a section through layers, or the finished article. {@link
 * org.lapmark.figure.FigureSource} is the block as read, without any size; {@link
 * org.lapmark.figure.FigureDrawer} draws it in one variant. Shapes and distances are the computed
 * ones; only the stagger of layers and the thickness of cloth in a section are drawn larger than
 * they are. Drawings are in millimetres on paper, x right, y down.
 */
package org.lapmark.figure;
