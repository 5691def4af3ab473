package org.lapmark.figure.operation.craft;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.figure.read.Keys;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.source.key.Key;

/**
 * What an author states of an operation, in no size.
 *
 * @param place where it stands
 * @param name the seam, edge or trim that it is about, or null
 * @param values what stands under each key that is written
 * @param places where that stands
 */
public record Stated(
    Position place, SourceText name, Map<String, Object> values, Map<String, Position> places) {
  /** Copies the maps. */
  public Stated {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    places = Collections.unmodifiableMap(new LinkedHashMap<>(places));
  }

  static Stated of(SourceText name) {
    return new Stated(name.position(), name, Map.of(), Map.of());
  }

  /** What stands under some keys of a map. */
  public static Stated of(Keys keys, List<? extends Key<?>> looked) {
    Map<String, Object> values = new LinkedHashMap<>();
    Map<String, Position> places = new LinkedHashMap<>();
    for (Key<?> key : looked) {
      if (keys.has(key)) {
        values.put(key.name(), keys.get(key));
        places.put(key.name(), keys.node(key).position());
      }
    }
    return new Stated(keys.position(), null, values, places);
  }

  /** The same with a name. */
  public Stated of(Stated named) {
    return new Stated(named.place, named.name, values, places);
  }

  /** Whether a key is written. */
  public boolean has(Key<?> key) {
    return values.containsKey(key.name());
  }

  /** What stands under a key, or null. */
  @SuppressWarnings("unchecked") // What is kept under a key was read by a form of its type.
  public <T> T get(Key<T> key) {
    return (T) values.get(key.name());
  }
}
