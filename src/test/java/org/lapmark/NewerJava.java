package org.lapmark;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;

/** A Java newer than the one that runs: stated, or installed beside it. */
public final class NewerJava {
  private NewerJava() {}

  /** Its home, if there is one. */
  public static Optional<Path> home() throws IOException {
    String stated = System.getenv("JAVA_HOME_NEWER");
    if (stated != null && !stated.isEmpty()) {
      assertTrue(feature(Path.of(stated)) > Runtime.version().feature(), stated + " is not newer");
      return Optional.of(Path.of(stated));
    }
    Path siblings = Path.of(System.getProperty("java.home")).toRealPath().getParent();
    try (Stream<Path> homes = Files.list(siblings)) {
      return homes
          .sorted()
          .filter(other -> feature(other) > Runtime.version().feature())
          .filter(other -> Files.isExecutable(other.resolve("bin/java")))
          .findFirst();
    }
  }

  private static int feature(Path javaHome) {
    try {
      for (String line : Files.readAllLines(javaHome.resolve("release"))) {
        if (line.startsWith("JAVA_VERSION=")) {
          return Runtime.Version.parse(line.substring(13).replace("\"", "")).feature();
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      return 0;
    }
    return 0;
  }
}
