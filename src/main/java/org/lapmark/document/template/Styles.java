package org.lapmark.document.template;

import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;

/**
 * Finds the look of drawings among the templates: every {@code styles.properties}. A role is stated
 * in one file only.
 */
public final class Styles {
  private static final String NAME = "styles.properties";

  private Styles() {}

  /** Whether a file has styles in it. */
  static boolean isIn(String path) {
    return path.substring(path.lastIndexOf('/') + 1).equals(NAME);
  }

  public static StyleSheet of(Templates templates) {
    Map<String, Style> styles = new LinkedHashMap<>();
    for (String path : templates.files().keySet()) {
      if (isIn(path)) {
        StyleSheet.parse(templates.text(path))
            .styles()
            .forEach(
                (role, style) -> {
                  if (styles.put(role, style) != null) {
                    throw new IllegalArgumentException(path + " states " + role + " again");
                  }
                });
      }
    }
    return new StyleSheet(styles);
  }
}
