package org.lapmark.source;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Maps, lists, texts, numbers and truths as JSON; what fits stands on one line. */
final class JsonText {
  private static final int WIDTH = 150;

  private JsonText() {}

  /** A value as JSON. */
  static String of(Object value) {
    return of(value, 0);
  }

  private static String of(Object value, int indent) {
    String line = line(value);
    if (indent + line.length() <= WIDTH && indent > 0
        || !(value instanceof Map<?, ?> || value instanceof List<?>)) {
      return line;
    }
    List<String> parts = new ArrayList<>();
    String blank = " ".repeat(indent + 2);
    if (value instanceof Map<?, ?> map) {
      map.forEach((key, inner) -> parts.add(blank + line(key) + ": " + of(inner, indent + 2)));
      return "{\n" + String.join(",\n", parts) + "\n" + " ".repeat(indent) + "}";
    }
    ((List<?>) value).forEach(inner -> parts.add(blank + of(inner, indent + 2)));
    return "[\n" + String.join(",\n", parts) + "\n" + " ".repeat(indent) + "]";
  }

  /** A value on one line. */
  static String line(Object value) {
    List<String> parts = new ArrayList<>();
    if (value instanceof Map<?, ?> map) {
      map.forEach((key, inner) -> parts.add(line(key) + ": " + line(inner)));
      return "{" + String.join(", ", parts) + "}";
    }
    if (value instanceof List<?> list) {
      list.forEach(inner -> parts.add(line(inner)));
      return "[" + String.join(", ", parts) + "]";
    }
    return value instanceof String text
        ? "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n") + "\""
        : String.valueOf(value);
  }
}
