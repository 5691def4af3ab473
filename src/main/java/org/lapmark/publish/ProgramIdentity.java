package org.lapmark.publish;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * What tells one state of the program from another: the content of its jar, or of its folder of
 * classes and where its libraries come from.
 */
final class ProgramIdentity {
  private ProgramIdentity() {}

  /** The state of the program that runs; nothing if it can't be told. */
  static Optional<String> running() {
    try {
      CodeSource source = ProgramIdentity.class.getProtectionDomain().getCodeSource();
      if (source == null) {
        return Optional.empty();
      }
      Path home = Path.of(source.getLocation().toURI());
      if (!Files.isDirectory(home)) {
        return Optional.of(jar(home));
      }
      String libraries =
          ProgramIdentity.class.getClassLoader() instanceof URLClassLoader loader
              ? Arrays.toString(loader.getURLs())
              : System.getProperty("java.class.path", "");
      return Optional.of(classes(home) + "\n" + libraries);
    } catch (IOException | URISyntaxException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** By the checksums in the jar's own list, so that it needn't be read whole. */
  static String jar(Path jar) throws IOException {
    List<String> lines = new ArrayList<>();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        lines.add(entry.getName() + " " + entry.getSize() + " " + entry.getCrc());
      }
    }
    Collections.sort(lines);
    return String.join("\n", lines);
  }

  private static String classes(Path home) throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.walk(home)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        CRC32 sum = new CRC32();
        sum.update(Files.readAllBytes(file));
        lines.add(home.relativize(file) + " " + Files.size(file) + " " + sum.getValue());
      }
    }
    return String.join("\n", lines);
  }
}
