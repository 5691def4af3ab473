/**
 * Panels: named edges on the stitching line, and the marks on them. Plain numbers come in; formulas
 * are unknown here. The stitching line is the truth, and runs clockwise on paper. What cannot be
 * done is a {@link org.lapmark.panel.PanelException} with a {@link org.lapmark.panel.PanelCode}.
 *
 * <p>Beside it stand {@code stated} (shapes from numbers), {@code spreading} (slashes), {@code
 * cutting} (allowances, the cutting line, notches) and {@code derivation} (panels from panels),
 * none of which it knows.
 */
package org.lapmark.panel;
