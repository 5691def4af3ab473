package org.lapmark.source.key;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;

/**
 * What keys mean to authors, in English: {@code keys.properties} beside this class. What a table
 * says of a key goes before what is said of the key wherever it stands, under a star.
 */
public final class KeyWords {
  private final Properties words = new Properties();

  /**
   * Reads the words.
   *
   * @param home a class beside whose own {@code keys.properties} stands
   */
  public KeyWords(Class<?> home) {
    try (InputStream stream = home.getResourceAsStream("keys.properties")) {
      words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What kind of map a table is of. */
  public Optional<String> meaning(Table table) {
    return word(table.id());
  }

  /** What a key says; what can only be a map of some kind means what that kind does. */
  public Optional<String> meaning(Table table, Key<?> key) {
    return of(table, key, "")
        .or(
            () ->
                key.form().tables().size() == 1
                    ? meaning(key.form().tables().get(0))
                    : Optional.empty());
  }

  /** How its value is written, in YAML; none for maps, whose keys have examples. */
  public Optional<String> example(Table table, Key<?> key) {
    return key.form().tables().isEmpty()
        ? of(table, key, ".example")
        : word(table.id() + "." + key.name() + ".example");
  }

  /** Where makers see it. */
  public Optional<String> printed(Table table, Key<?> key) {
    return word(table.id() + "." + key.name() + ".printed")
        .or(() -> word("*." + key.name() + ".printed"))
        .or(() -> word(table.id() + ".*.printed"))
        .or(() -> word("*.printed"));
  }

  /**
   * What has to stand beside an example of a key, in its map or in those around it.
   *
   * @param key the key, or null for any
   */
  public List<String> beside(Table table, Key<?> key) {
    List<String> beside = new ArrayList<>();
    if (key != null) {
      of(table, key, ".in").ifPresent(beside::add);
    }
    word(table.id() + ".in").ifPresent(beside::add);
    return beside;
  }

  /** Under which name examples of a map's entries stand. */
  public String named(Table table, Key<?> key) {
    return of(table, key, ".named").orElse("sample");
  }

  /** Everything that has words. */
  public Set<String> all() {
    return new TreeSet<>(words.stringPropertyNames());
  }

  private Optional<String> of(Table table, Key<?> key, String what) {
    return word(table.id() + "." + key.name() + what).or(() -> word("*." + key.name() + what));
  }

  private Optional<String> word(String name) {
    return Optional.ofNullable(words.getProperty(name)).map(String::strip);
  }
}
