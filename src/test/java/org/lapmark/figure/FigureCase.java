package org.lapmark.figure;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A figure’s block, and what is found of it.
 *
 * @param name what it is a case of
 * @param yaml the block
 * @param expected {@code line:column+length code}, one a line
 */
public record FigureCase(String name, String yaml, String expected) {
  /**
   * The cases that stand in a file beside a test.
   *
   * @param test the test
   * @param file the file’s name
   * @return the cases, in order
   */
  public static List<FigureCase> beside(Class<?> test, String file) throws IOException {
    try (InputStream stream = test.getResourceAsStream(file)) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      List<FigureCase> cases = new ArrayList<>();
      for (String part : text.split("(?m)^=== ")) {
        if (!part.isBlank()) {
          int line = part.indexOf('\n');
          int end = part.indexOf("\n---\n");
          cases.add(
              new FigureCase(
                  part.substring(0, line),
                  part.substring(line + 1, end + 1),
                  part.substring(end + 5).strip()));
        }
      }
      return cases;
    }
  }
}
