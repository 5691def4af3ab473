package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.lapmark.cli.console.Console;
import org.lapmark.publish.request.RefusedException;

/** Folders as stated on the command line. */
final class Folders {
  private static final String PATTERN = "pattern.yaml";
  private static final String CONTENT = "content";

  private Folders() {}

  /**
   * The pattern folders stated, by themselves or by the {@code pattern.yaml} in them.
   *
   * @param stated as stated
   * @param console says from where they are to be resolved
   * @return each, resolved
   * @throws RefusedException when a name is empty, or a folder isn't a pattern but holds patterns
   */
  static List<Path> patterns(List<Path> stated, Console console) {
    return stated.stream()
        .map(
            folder -> {
              Path resolved = holder(one("FOLDER", folder, console));
              refuseShelf(resolved, console);
              return resolved;
            })
        .toList();
  }

  /** Whoever names a pattern's file means the folder that it is in. */
  private static Path holder(Path stated) {
    Path name = stated.getFileName();
    return name != null && name.toString().equals(PATTERN) && Files.isRegularFile(stated)
        ? stated.toAbsolutePath().normalize().getParent()
        : stated;
  }

  /**
   * A folder stated.
   *
   * @param option where it was stated
   * @param folder as stated, or null
   * @param console says from where it is to be resolved
   * @return the folder resolved, or null
   * @throws RefusedException when its name is empty
   */
  static Path one(String option, Path folder, Console console) {
    if (folder == null) {
      return null;
    }
    if (folder.toString().isBlank()) {
      throw new RefusedException("‘" + option + "’ names no folder: it is empty");
    }
    return console.directory().resolve(folder);
  }

  /**
   * The pattern folders in {@code content}, for when none was stated.
   *
   * @param console says where that folder is
   * @return all of them, by name
   * @throws RefusedException when there is none
   * @throws IOException when the folder can't be read
   */
  static List<Path> content(Console console) throws IOException {
    Path folder = console.directory().resolve(CONTENT);
    if (!Files.isDirectory(folder)) {
      throw new RefusedException(
          "no pattern folder was given, and there is no folder ‘" + CONTENT + "’ here");
    }
    List<Path> found = children(folder);
    if (found.isEmpty()) {
      throw new RefusedException("there is no pattern folder in ‘" + console.shown(folder) + "’");
    }
    return found;
  }

  private static void refuseShelf(Path folder, Console console) {
    if (!Files.isDirectory(folder) || Files.exists(folder.resolve(PATTERN))) {
      return;
    }
    List<Path> patterns;
    try {
      patterns =
          children(folder).stream().filter(child -> Files.exists(child.resolve(PATTERN))).toList();
    } catch (IOException e) {
      return; // Reading the pattern will say what is wrong.
    }
    if (!patterns.isEmpty()) {
      throw new RefusedException(
          "‘"
              + console.shown(folder)
              + "’ is no pattern, but it holds pattern folders: name one of them, such as ‘"
              + console.shown(patterns.get(0))
              + "’");
    }
  }

  private static List<Path> children(Path folder) throws IOException {
    try (Stream<Path> children = Files.list(folder)) {
      return children
          .filter(Files::isDirectory)
          .filter(child -> !child.getFileName().toString().startsWith("."))
          .sorted()
          .toList();
    }
  }
}
