package org.lapmark.document;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** Reads {@code .properties} text in UTF-8. */
final class PropertyFile {
  private PropertyFile() {}

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
