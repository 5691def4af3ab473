/**
 * From what an author states to a scene: formulas, texts and names come to numbers and words in one
 * variant, and all that is wrong with a figure is told at once. Nothing is drawn here; {@link
 * org.lapmark.figure.stage.Picture} is what each kind of picture does.
 */
package org.lapmark.figure.stage;
