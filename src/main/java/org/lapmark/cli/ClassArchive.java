package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The archive of classes that Java may write when the program ends, for later starts. The launcher
 * asks for it, and keeps it if the run is said to have met the classes that matter.
 */
final class ClassArchive {
  /** Names the file to make where a run is worth keeping. */
  private static final String PROPERTY = "lapmark.archive.worth";

  private ClassArchive() {}

  /** Says that documents were made. */
  static void isWorthKeeping() {
    String file = System.getProperty(PROPERTY);
    if (file != null) {
      try {
        Files.createFile(Path.of(file));
      } catch (IOException | IllegalArgumentException e) {
        // Then the next run makes an archive.
      }
    }
  }
}
