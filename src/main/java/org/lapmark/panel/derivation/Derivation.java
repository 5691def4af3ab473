package org.lapmark.panel.derivation;

import java.util.function.Consumer;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;

/**
 * A way to make a panel from others. Each kind is one class, made from panels and plain numbers.
 * Lines stay lines, arcs arcs and cubics cubics wherever they are only moved, mirrored or cut; what
 * runs beside an outline is within 0.01 mm of it. Names of edges and corners are kept unless said
 * otherwise; where a name would stand twice the later one ends in {@code _2}. Marks follow as far
 * as they lie on the new panel.
 */
public interface Derivation {
  /**
   * The derived panel.
   *
   * @param name its name
   * @param notices told what isn't wrong but should be known, as of marks that are left out
   * @return the panel, whose names of edges and corners follow from the statement alone as far as
   *     the outline has the same corners
   * @throws PanelException when it can't be made
   */
  Panel derive(String name, Consumer<PanelException> notices);
}
