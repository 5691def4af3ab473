package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** A folder for what is measured, which goes with all in it. */
record Scratch(Path home) implements AutoCloseable {
  Scratch() throws IOException {
    this(Files.createTempDirectory("lapmark-times"));
  }

  /** A folder that isn't there yet. */
  Path missing(String name) throws IOException {
    Path folder = home.resolve(name);
    empty(folder);
    return folder;
  }

  /** A copy of a folder. */
  Path copy(Path folder) throws IOException {
    Path copy = missing(folder.getFileName().toString());
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = copy.resolve(folder.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
    return copy;
  }

  private static void empty(Path folder) throws IOException {
    if (Files.exists(folder)) {
      List<Path> all;
      try (Stream<Path> files = Files.walk(folder)) {
        all = files.sorted(Comparator.reverseOrder()).toList();
      }
      for (Path file : all) {
        Files.delete(file);
      }
    }
  }

  @Override
  public void close() throws IOException {
    empty(home);
  }
}
