package org.lapmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The launchers for POSIX shells and for Windows say the same to Java and to people. */
class LaunchersTest {
  private static final Path FOLDER = Path.of("src", "main", "launcher");

  private static String launcher(String name) throws IOException {
    return Files.readString(FOLDER.resolve(name));
  }

  private static String found(String pattern, String text) {
    Matcher found = Pattern.compile(pattern, Pattern.DOTALL).matcher(text);
    assertTrue(found.find(), pattern);
    return found.group(1);
  }

  private static List<String> flags(String text) {
    return List.of(text.replace("\\\n", " ").strip().split("\\s+"));
  }

  @Test
  void bothStartJavaWithTheSameFlags() throws IOException {
    List<String> posix =
        flags(found("\nset -- (-X.*?)\\$\\{LAPMARK_JAVA_OPTIONS", launcher("lapmark")));
    List<String> windows =
        flags(found("\n\"%java%\" (-X.*?)%LAPMARK_JAVA_OPTIONS%", launcher("lapmark.cmd")));
    assertTrue(posix.size() > 3, posix.toString());
    assertEquals(posix, windows);
  }

  @Test
  void bothSayAlikeThatThereIsNoJava() throws IOException {
    String said = "echo \"?(lapmark: [^\"\n]*?)\"? (?:>&2|1>&2)";
    assertEquals(found(said, launcher("lapmark")), found(said, launcher("lapmark.cmd")));
    assertEquals(
        found("no Java.*?exit (\\d)", launcher("lapmark")),
        found("no Java.*?exit /b (\\d)", launcher("lapmark.cmd")));
  }
}
