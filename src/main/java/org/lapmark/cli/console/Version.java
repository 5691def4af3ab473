package org.lapmark.cli.console;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The program's version, as the build wrote it down. */
public final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"Lapmark " + text()};
  }

  public static String text() {
    Properties properties = new Properties();
    try (InputStream stream =
        Version.class.getResourceAsStream("/org/lapmark/cli/version.properties")) {
      if (stream == null) {
        throw new IllegalStateException("the program lacks its version");
      }
      properties.load(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }
}
