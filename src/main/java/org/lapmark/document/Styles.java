package org.lapmark.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;

/**
 * Reads the look of drawings: every {@code styles.properties} among the templates. A line is {@code
 * role.property = value}; the properties are stroke, dash and halo in millimetres, size in points,
 * grey (of a line or of lettering) and fill from 0 for black to 1 for white, and bold.
 */
final class Styles {
  private static final String NAME = "styles.properties";

  private Styles() {}

  static StyleSheet of(Templates templates) {
    Map<String, Map<String, String>> roles = new TreeMap<>();
    templates
        .files()
        .keySet()
        .forEach(
            path -> {
              if (path.substring(path.lastIndexOf('/') + 1).equals(NAME)) {
                PropertyFile.read(templates.text(path))
                    .forEach((key, value) -> put(roles, path, key, value));
              }
            });
    Map<String, Style> styles = new LinkedHashMap<>();
    roles.forEach((role, properties) -> styles.put(role, style(role, properties)));
    return new StyleSheet(styles);
  }

  private static void put(
      Map<String, Map<String, String>> roles, String path, String key, String value) {
    int dot = key.lastIndexOf('.');
    if (dot < 1) {
      throw new IllegalArgumentException(path + ": not role.property: " + key);
    }
    roles
        .computeIfAbsent(key.substring(0, dot), role -> new TreeMap<>())
        .put(key.substring(dot + 1), value.strip());
  }

  private static Style style(String role, Map<String, String> properties) {
    try {
      Map<String, String> left = new TreeMap<>(properties);
      Style style =
          new Style(
              number(left.remove("stroke"), 0),
              numbers(left.remove("dash")),
              number(left.remove("grey"), 0),
              number(left.remove("fill"), -1),
              number(left.remove("size"), 0),
              Boolean.parseBoolean(left.remove("bold")),
              number(left.remove("halo"), 0));
      if (!left.isEmpty()) {
        throw new IllegalArgumentException("no such property: " + left.keySet());
      }
      return style;
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException("style " + role + ": " + e.getMessage(), e);
    }
  }

  private static double number(String text, double otherwise) {
    return text == null ? otherwise : Double.parseDouble(text);
  }

  private static List<Double> numbers(String text) {
    List<Double> numbers = new ArrayList<>();
    if (text != null) {
      for (String number : text.split("\\s+")) {
        numbers.add(Double.parseDouble(number));
      }
    }
    return numbers;
  }
}
