package org.lapmark.figure.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the keys of figures mean and how each is written, in English: {@code keys.properties} beside
 * this class.
 */
public final class KeyWords {
  private static final String EXAMPLE = ".example";

  private final Properties words = new Properties();

  /** Reads the words. */
  public KeyWords() {
    try (InputStream stream = KeyWords.class.getResourceAsStream("keys.properties")) {
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
  public Optional<String> example(String what) {
    String key = what.substring(what.indexOf('/') + 1);
    return word(what, EXAMPLE).map(value -> key + ": " + value);
  }

  /**
   * What a key says.
   *
   * @param what the key, with what it belongs to before a slash
   * @return a sentence; nothing if there is no such key
   */
  public Optional<String> meaning(String what) {
    return word(what, "");
  }

  /**
   * All keys.
   *
   * @return each with what it belongs to before a slash
   */
  public Set<String> keys() {
    Set<String> keys = new TreeSet<>();
    for (String name : words.stringPropertyNames()) {
      keys.add(name.replace(EXAMPLE, "").replace('.', '/'));
    }
    return keys;
  }

  private Optional<String> word(String what, String part) {
    return Optional.ofNullable(words.getProperty(what.replace('/', '.') + part));
  }
}
