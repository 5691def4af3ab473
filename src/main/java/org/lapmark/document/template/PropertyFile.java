package org.lapmark.document.template;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** Reads {@code .properties} text in UTF-8. */
final class PropertyFile {
  private PropertyFile() {}

  /**
   * An entry with its place.
   *
   * @param key its key
   * @param value its value; null where it can't be understood
   * @param line the line on which it begins, from 1
   */
  record Entry(String key, String value, int line) {}

  /** The entries in the order in which they stand. */
  static List<Entry> entries(String text) {
    List<Entry> entries = new ArrayList<>();
    String[] lines = text.split("\\R", -1);
    for (int i = 0; i < lines.length; i++) {
      int line = i + 1;
      String first = lines[i].stripLeading();
      if (first.isEmpty() || first.startsWith("#") || first.startsWith("!")) {
        continue;
      }
      StringBuilder all = new StringBuilder(lines[i]);
      while (isContinued(lines[i]) && i + 1 < lines.length) {
        all.append('\n').append(lines[++i]);
      }
      try {
        read(all.toString()).forEach((key, value) -> entries.add(new Entry(key, value, line)));
      } catch (IllegalArgumentException e) {
        entries.add(new Entry(first.split("[=:\\s]", 2)[0], null, line));
      }
    }
    return entries;
  }

  private static boolean isContinued(String line) {
    int backslashes = 0;
    while (backslashes < line.length() && line.charAt(line.length() - 1 - backslashes) == '\\') {
      backslashes++;
    }
    return backslashes % 2 == 1;
  }

  /** The entries, sorted by key. */
  static Map<String, String> read(String text) {
    Properties properties = new Properties();
    try {
      properties.load(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<String, String> entries = new TreeMap<>();
    properties.stringPropertyNames().forEach(key -> entries.put(key, properties.getProperty(key)));
    return entries;
  }
}
