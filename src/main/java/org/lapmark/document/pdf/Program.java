package org.lapmark.document.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** The program's name as documents state it. */
public final class Program {
  private static final String RESOURCE = "program.properties";

  private Program() {}

  /** Name and version. */
  public static String name() {
    Properties properties = new Properties();
    try (InputStream stream = Program.class.getResourceAsStream(RESOURCE)) {
      properties.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("name") + " " + properties.getProperty("version");
  }
}
