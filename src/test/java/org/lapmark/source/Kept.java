package org.lapmark.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that the program makes and that are kept beside it. */
public final class Kept {
  private Kept() {}

  /**
   * Holds a file to what it has to say; with {@code -Dlapmark.update=true} it is written instead.
   *
   * @param file where it is kept, from the top of the source
   * @param expected what it has to say
   */
  public static void hold(String file, String expected) throws IOException {
    Path path = Path.of(file);
    if (Boolean.getBoolean("lapmark.update")) {
      Files.createDirectories(path.getParent());
      Files.writeString(path, expected);
    }
    assertEquals(
        expected,
        Files.exists(path) ? Files.readString(path) : "",
        file + " is of an earlier day: run this test with -Dlapmark.update=true");
  }
}
