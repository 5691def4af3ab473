/**
 * Drawings of panels: SVG, read with positions, and computed where attributes have placeholders.
 *
 * <p>In a drawing, a shape's id says what it stands for: {@code outline}, {@code grainline}, {@code
 * corner.NAME}, {@code placement.NAME}, {@code foldline.NAME}, {@code styleline.NAME}, {@code
 * drill.NAME}, {@code notch.NAME}, {@code dart.NAME} (an open line of two legs), {@code pleat.NAME}
 * (a line from the outline inwards, of which {@code pattern.yaml} says more), {@code
 * buttonhole.NAME} (the line that is cut), {@code matchpoint.NAME}, {@code slash.NAME}. Where the
 * id says nothing, a label does: an attribute {@code label} of a namespace that isn't SVG's, or
 * {@code data-name}. An attribute {@code data-X} overrides the attribute X and may hold
 * placeholders, each of which is one whole number: a sign belongs inside its braces.
 *
 * <table>
 * <caption>What is taken from a drawing, and what isn't</caption>
 * <thead>
 * <tr><th>In the drawing</th><th>What becomes of it</th></tr>
 * </thead>
 * <tbody>
 * <tr><td>{@code path} with every command, {@code rect} with rounded corners, {@code circle},
 * {@code ellipse}, {@code line}, {@code polyline}, {@code polygon}</td>
 * <td>Taken if it has a role; else ignored, with one note for all.</td></tr>
 * <tr><td>{@code g}, {@code a}, {@code switch} (its first choice without conditions), {@code svg}
 * inside the drawing, {@code symbol} and {@code defs} as the source of copies</td>
 * <td>Taken, with their transforms, view boxes and aspect ratios.</td></tr>
 * <tr><td>{@code use} of something in the same drawing</td><td>Taken: a role on the copy goes before
 * the original's. A copy of what is drawn itself is only shown, and ignored with the note. Copies
 * of copies count as elements; a copy inside itself is refused.</td></tr>
 * <tr><td>{@code <g id="outline">} around several open lines, or one path of several</td>
 * <td>Taken: the lines are joined end to nearest end, turned where needed. If a shape inside is the
 * outline itself, the group is but a layer.</td></tr>
 * <tr><td>Gaps</td><td>Up to 0.05 mm closed, with a note; wider ones refused.</td></tr>
 * <tr><td>Segments without length</td><td>Ignored.</td></tr>
 * <tr><td>Units {@code mm cm in Q pt pc px}, and shares of the viewport ({@code %})</td>
 * <td>Taken; in a drawing with placeholders a user unit is 1 mm whatever the view box says, and
 * shares are refused. {@code em}, {@code ex} and others are refused.</td></tr>
 * <tr><td>{@code width}, {@code height}, {@code viewBox}, {@code preserveAspectRatio} of the
 * drawing</td><td>Taken: none, meet and slice. A view box without any size is refused.</td></tr>
 * <tr><td>{@code display} none, {@code visibility} hidden, as attributes, in a style or by a rule
 * for a class</td><td>The shapes aren't taken; if one has a role, with a note.</td></tr>
 * <tr><td>Elements and attributes of other namespaces, guides, metadata, titles, colours, strokes,
 * clipping, masks, markers, filters</td><td>Ignored.</td></tr>
 * <tr><td>{@code text}, and an {@code image} held in the drawing</td>
 * <td>Ignored, with the note; with a role refused.</td></tr>
 * <tr><td>Ids as drawing programs write them: {@code corner_x2E_a}, blanks around them</td>
 * <td>Taken as meant.</td></tr>
 * <tr><td>The number of a copy behind a role: {@code outline-1}, {@code outline_1_}</td>
 * <td>Left out, with a note; refused where the role is taken.</td></tr>
 * <tr><td>{@code transform} and the like in a style, {@code transform-origin}, the transform of the
 * drawing's root, {@code refX} of a symbol</td><td>Refused: it would move or shape something.</td>
 * </tr>
 * <tr><td>Scripts, animation, foreign objects, links and pictures elsewhere</td>
 * <td>Ignored, with a warning.</td></tr>
 * <tr><td>A document type</td><td>Passed over, unfetched; refused if it declares entities, or gives
 * an attribute a value.</td></tr>
 * </tbody>
 * </table>
 */
package org.lapmark.source.drawing;
