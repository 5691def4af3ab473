package org.lapmark.figure.seen;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.lapmark.figure.seen.SeenFigure.Mark;

/** What the templates say of the looks of figures. */
final class Looks {
  private Looks() {}

  static Properties stated() {
    Properties stated = new Properties();
    try (Reader reader =
        Files.newBufferedReader(Path.of("templates", "figure", "styles.properties"))) {
      stated.load(reader);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return stated;
  }

  /** Which lines are those of a texture: they are seen within a shape only, and look like one. */
  static Predicate<Mark> texture() {
    Properties stated = stated();
    Set<String> looks = new TreeSet<>();
    for (String key : stated.stringPropertyNames()) {
      if (key.endsWith("-texture.stroke")) {
        String dash = stated.getProperty(key.replace(".stroke", ".dash"), "");
        looks.add(Double.parseDouble(stated.getProperty(key)) + " " + dash);
      }
    }
    return mark -> !mark.clips().isEmpty() && looks.contains(mark.line() + " " + mark.dash());
  }
}
