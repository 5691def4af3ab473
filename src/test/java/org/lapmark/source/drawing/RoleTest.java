package org.lapmark.source.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class RoleTest {
  @Test
  void whatDrawingsAreSaidToHoldIsEveryRole() throws IOException {
    Properties meanings = new Properties();
    Path file = Path.of("src/main/resources/org/lapmark/source/key/keys.properties");
    try (Reader reader = Files.newBufferedReader(file)) {
      meanings.load(reader);
    }
    String said = meanings.getProperty("panel.drawing");
    assertEquals(
        List.of(),
        Arrays.stream(Role.values())
            .map(role -> role.id("NAME"))
            .filter(id -> !said.matches(".*\\b" + id + "\\b.*"))
            .toList());
  }
}
