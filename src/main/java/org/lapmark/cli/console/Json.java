package org.lapmark.cli.console;

import java.math.BigDecimal;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntPredicate;

/**
 * Writes JSON: maps in their own order, lists, strings, booleans, numbers and null. Everything that
 * isn't plainly visible is escaped, so that a report may be shown on a terminal.
 */
public final class Json {
  private Json() {}

  /** A map from names and values given in turn; a null value leaves its name out. */
  public static Map<String, Object> object(Object... namesAndValues) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      if (namesAndValues[i + 1] != null) {
        object.put((String) namesAndValues[i], namesAndValues[i + 1]);
      }
    }
    return object;
  }

  /** The value as JSON, indented by two spaces, ended by LF. */
  public static String text(Object value) {
    StringBuilder text = new StringBuilder();
    append(text, value, "\n");
    return text.append('\n').toString();
  }

  /**
   * A report as JSON: what writes it, and what is said of each pattern.
   *
   * @param format the number of the report's format
   */
  public static String report(Object format, List<Object> patterns) {
    return text(
        object(
            "format",
            format,
            "program",
            object("name", "Lapmark", "version", Version.text()),
            "patterns",
            patterns));
  }

  /**
   * A JSON string on one line.
   *
   * @param plain which of the visible characters stand as they are; the others are escaped
   */
  static String string(String value, IntPredicate plain) {
    StringBuilder text = new StringBuilder();
    quote(text, value, plain);
    return text.toString();
  }

  private static void append(StringBuilder text, Object value, String line) {
    if (value instanceof Map<?, ?> map) {
      Iterator<? extends Map.Entry<?, ?>> entries = map.entrySet().iterator();
      text.append('{');
      while (entries.hasNext()) {
        Map.Entry<?, ?> entry = entries.next();
        text.append(line).append("  ");
        quote(text, String.valueOf(entry.getKey()));
        text.append(": ");
        append(text, entry.getValue(), line + "  ");
        text.append(entries.hasNext() ? "," : line);
      }
      text.append('}');
    } else if (value instanceof List<?> list) {
      Iterator<?> items = list.iterator();
      text.append('[');
      while (items.hasNext()) {
        text.append(line).append("  ");
        append(text, items.next(), line + "  ");
        text.append(items.hasNext() ? "," : line);
      }
      text.append(']');
    } else if (value instanceof Integer || value instanceof Long || value instanceof Boolean) {
      text.append(value);
    } else if (value instanceof Double number && Double.isFinite(number)) {
      text.append(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
    } else if (value == null) {
      text.append("null");
    } else {
      quote(text, value.toString());
    }
  }

  private static void quote(StringBuilder text, String value) {
    quote(text, value, c -> true);
  }

  private static void quote(StringBuilder text, String value, IntPredicate plain) {
    text.append('"');
    value
        .codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                text.append('\\').append((char) c);
              } else if (c == '\n' || c == '\t') {
                text.append(c == '\n' ? "\\n" : "\\t");
              } else if (Visible.is(c) && plain.test(c)) {
                text.appendCodePoint(c);
              } else {
                for (char unit : Character.toChars(c)) {
                  text.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
                }
              }
            });
    text.append('"');
  }
}
