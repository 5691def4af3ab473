package org.lapmark.drawing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The style of each role.
 *
 * @param styles by role
 */
public record StyleSheet(Map<String, Style> styles) {
  /** Copies the map, keeping its order. */
  public StyleSheet {
    styles = Collections.unmodifiableMap(new LinkedHashMap<>(styles));
  }

  /**
   * The style of a role.
   *
   * @param role the role
   * @return its style
   * @throws IllegalArgumentException when the sheet doesn't have the role
   */
  public Style style(String role) {
    Style style = styles.get(role);
    if (style == null) {
      throw new IllegalArgumentException("no style for role " + role);
    }
    return style;
  }
}
