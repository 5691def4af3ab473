package org.lapmark.figure.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** How each key of a figure is written, for hints. */
public final class Examples {
  private Examples() {}

  /**
   * An example.
   *
   * @param what a key, with what it belongs to before a slash
   * @return the key with a value
   */
  public static String of(String what) {
    String example = all().getProperty(what);
    if (example == null) {
      throw new IllegalStateException("no example of " + what);
    }
    return example;
  }

  /** All of them; read anew each time, as few are ever wanted. */
  public static Properties all() {
    Properties examples = new Properties();
    try (InputStream stream = Examples.class.getResourceAsStream("examples.properties")) {
      examples.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return examples;
  }
}
