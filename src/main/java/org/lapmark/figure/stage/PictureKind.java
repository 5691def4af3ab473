package org.lapmark.figure.stage;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.figure.read.Keys;
import org.lapmark.source.key.Key;

/**
 * A kind of picture.
 *
 * @param key the key under which it is stated
 * @param beside what other keys stand beside that key
 * @param reader reads it from the keys among which it stands; null if it can’t be shown
 */
public record PictureKind(Key<?> key, List<Key<?>> beside, Function<Keys, Picture> reader) {
  /** Copies the list. */
  public PictureKind {
    beside = List.copyOf(beside);
  }

  /**
   * A kind that is a map of its own.
   *
   * @param key its key
   * @return the kind
   */
  public static PictureKind of(Key<Picture> key) {
    return new PictureKind(key, List.of(), keys -> keys.get(key));
  }

  /**
   * Reads a picture of this kind.
   *
   * @param keys the keys of a picture
   * @return nothing if what else it shows depends on something that couldn’t be read
   */
  public Optional<Picture> read(Keys keys) {
    return Optional.ofNullable(reader.apply(keys));
  }
}
