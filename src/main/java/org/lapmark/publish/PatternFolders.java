package org.lapmark.publish;

import com.ibm.icu.text.Normalizer2;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.lapmark.publish.request.RefusedException;

/** Pattern folders as paths: each once, and none that its own output would lie in or over. */
final class PatternFolders {
  private PatternFolders() {}

  static List<Path> distinct(List<Path> folders) {
    Map<String, Path> byName = new LinkedHashMap<>();
    for (Path given : new LinkedHashSet<>(folders.stream().map(PatternFolders::plain).toList())) {
      Path name = given.getFileName();
      if (name == null) {
        throw new RefusedException("‘" + given + "’ can't be a pattern folder: it has no name");
      }
      if (name.toString().startsWith(".")) {
        throw new RefusedException(
            "‘" + given + "’ can't be a pattern folder: its name must not begin with a dot");
      }
      // File systems that don't tell upper and lower case apart must not merge two patterns.
      String key = Normalizer2.getNFCInstance().normalize(name.toString()).toLowerCase(Locale.ROOT);
      Path other = byName.putIfAbsent(key, given);
      if (other != null) {
        throw new RefusedException(
            "‘" + other + "’ and ‘" + given + "’ would be published under the same name");
      }
    }
    return List.copyOf(byName.values());
  }

  private static Path plain(Path folder) {
    return folder.toAbsolutePath().normalize();
  }

  static void refuseOverlap(List<Path> patterns, Path output) {
    for (Path pattern : patterns) {
      Path target = real(plain(output).resolve(pattern.getFileName()));
      for (Path folder : patterns) {
        Path source = real(folder);
        if (target.startsWith(source) || source.startsWith(target)) {
          throw new RefusedException(
              "the output ‘"
                  + output
                  + "’ would lie in or over the pattern folder ‘"
                  + folder
                  + "’");
        }
      }
    }
  }

  /** The path with the symbolic links of that part of it that exists followed. */
  private static Path real(Path path) {
    Path existing = path;
    while (existing != null) {
      try {
        return existing.toRealPath().resolve(existing.relativize(path)).normalize();
      } catch (IOException e) {
        existing = existing.getParent();
      }
    }
    return path;
  }
}
