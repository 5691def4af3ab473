package org.lapmark.figure.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;

/**
 * How each key of a figure is written, for hints: the examples in {@code keys.properties} beside
 * this class, where it also stands what keys mean. Those of any table stand under a star.
 */
public final class FigureExamples {
  private static final String EXAMPLE = ".example";

  private final Properties words = new Properties();

  /** Reads the words. */
  public FigureExamples() {
    try (InputStream stream = FigureExamples.class.getResourceAsStream("keys.properties")) {
      words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * How a key is written, with a value.
   *
   * @param what the key, with what it belongs to before a slash
   * @return the key with a value; nothing if there is no such key
   */
  public Optional<String> of(String what) {
    String key = what.substring(what.indexOf('/') + 1);
    return word(what).map(value -> key + ": " + value);
  }

  private Optional<String> word(String what) {
    String key = what.substring(what.indexOf('/'));
    return Optional.ofNullable(words.getProperty(what.replace('/', '.') + EXAMPLE))
        .or(() -> Optional.ofNullable(words.getProperty("*" + key.replace('/', '.') + EXAMPLE)));
  }
}
