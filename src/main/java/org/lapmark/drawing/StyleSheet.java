package org.lapmark.drawing;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

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

  /**
   * Reads a style sheet: lines {@code role.property = value} in the form of Java properties. The
   * properties are {@code stroke} (width in millimetres), {@code dash} (lengths in millimetres,
   * separated by spaces), {@code grey} (of the stroke, or of lettering, 0 for black to 1), {@code
   * fill} (grey of the filling), {@code size} (of lettering in points), {@code bold} (true or
   * false) and {@code halo} (millimetres). A role exists when it has one property; the others are
   * then none, black, and not bold.
   *
   * @param text the file's text
   * @return the style sheet, roles in the order of their names
   * @throws IllegalArgumentException naming the line's key, when a property is unknown or its value
   *     is not of its kind
   */
  public static StyleSheet parse(String text) {
    Properties properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, Style> styles = new TreeMap<>();
    for (String key : properties.stringPropertyNames().stream().sorted().toList()) {
      int dot = key.lastIndexOf('.');
      if (dot < 1) {
        throw new IllegalArgumentException("not role.property: " + key);
      }
      String role = key.substring(0, dot);
      Style style = styles.getOrDefault(role, new Style(0, List.of(), 0, -1, 0, false, 0));
      String value = properties.getProperty(key).trim();
      try {
        styles.put(role, with(style, key.substring(dot + 1), value));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("in style sheet: " + key + " = " + value, e);
      }
    }
    return new StyleSheet(styles);
  }

  private static Style with(Style s, String property, String value) {
    return switch (property) {
      case "stroke" ->
          new Style(
              number(value, 10),
              s.dash(),
              s.strokeGrey(),
              s.fillGrey(),
              s.fontSize(),
              s.bold(),
              s.halo());
      case "dash" ->
          new Style(
              s.strokeWidth(),
              numbers(value),
              s.strokeGrey(),
              s.fillGrey(),
              s.fontSize(),
              s.bold(),
              s.halo());
      case "grey" ->
          new Style(
              s.strokeWidth(),
              s.dash(),
              number(value, 1),
              s.fillGrey(),
              s.fontSize(),
              s.bold(),
              s.halo());
      case "fill" ->
          new Style(
              s.strokeWidth(),
              s.dash(),
              s.strokeGrey(),
              number(value, 1),
              s.fontSize(),
              s.bold(),
              s.halo());
      case "size" ->
          new Style(
              s.strokeWidth(),
              s.dash(),
              s.strokeGrey(),
              s.fillGrey(),
              number(value, 200),
              s.bold(),
              s.halo());
      case "bold" ->
          new Style(
              s.strokeWidth(),
              s.dash(),
              s.strokeGrey(),
              s.fillGrey(),
              s.fontSize(),
              truth(value),
              s.halo());
      case "halo" ->
          new Style(
              s.strokeWidth(),
              s.dash(),
              s.strokeGrey(),
              s.fillGrey(),
              s.fontSize(),
              s.bold(),
              number(value, 10));
      default -> throw new IllegalArgumentException("unknown property " + property);
    };
  }

  private static List<Double> numbers(String value) {
    List<Double> list = new ArrayList<>();
    for (String part : value.split("\\s+")) {
      list.add(number(part, 100));
    }
    return list;
  }

  private static double number(String value, double most) {
    double number;
    try {
      number = Double.parseDouble(value);
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException("“" + value + "” is no number", e);
    }
    if (!(number >= 0 && number <= most)) {
      throw new IllegalArgumentException("not from 0 to " + most);
    }
    return number;
  }

  private static boolean truth(String value) {
    return switch (value) {
      case "true" -> true;
      case "false" -> false;
      default -> throw new IllegalArgumentException("neither true nor false");
    };
  }
}
