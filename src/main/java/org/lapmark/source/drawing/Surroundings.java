package org.lapmark.source.drawing;

import java.util.List;
import org.lapmark.source.drawing.xml.XmlElement;

/**
 * What stands around an element.
 *
 * @param placings outermost first
 * @param shown whether it is drawn
 * @param visible whether it is visible, which elements inside can change
 * @param extent the viewport's size
 * @param copy the outermost copy, or null
 * @param owner takes shapes that have no role of their own, or null
 */
record Surroundings(
    List<Placing> placings,
    boolean shown,
    boolean visible,
    ViewportSize extent,
    XmlElement copy,
    PartCollector owner) {
  Surroundings placed(Placing next) {
    return new Surroundings(Placing.inside(placings, next), shown, visible, extent, copy, owner);
  }

  Surroundings looking(SvgStyles.Look look) {
    boolean seen =
        switch (look.visibility()) {
          case "hidden", "collapse" -> false;
          case "visible" -> true;
          default -> visible;
        };
    return new Surroundings(placings, shown && !look.hidden(), seen, extent, copy, owner);
  }

  Surroundings in(ViewportSize inner) {
    return new Surroundings(placings, shown, visible, inner, copy, owner);
  }

  Surroundings copied(XmlElement use) {
    return new Surroundings(placings, shown, visible, extent, copy == null ? use : copy, owner);
  }

  Surroundings ownedBy(PartCollector collector) {
    return new Surroundings(placings, shown, visible, extent, copy, collector);
  }

  boolean isDrawn() {
    return shown && visible;
  }

  /** Whether an element's own role counts for something here. */
  boolean hasRoles() {
    return owner == null || !owner.isCopy();
  }
}
