package org.lapmark.measure;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A size and a choice for every option: the key of every evaluated value, file name and record.
 *
 * @param size the size's name, a column head of the size table
 * @param choices the chosen value by option name; empty while a pattern has no options
 */
public record Variant(String size, SortedMap<String, String> choices)
    implements Comparable<Variant> {
  /** Copies the map. */
  public Variant {
    Objects.requireNonNull(size);
    choices = Collections.unmodifiableSortedMap(new TreeMap<>(choices));
  }

  /**
   * A variant of a pattern without options.
   *
   * @param size the size's name
   * @return the variant
   */
  public static Variant ofSize(String size) {
    return new Variant(size, new TreeMap<>(Map.of()));
  }

  @Override
  public int compareTo(Variant other) {
    int bySize = size.compareTo(other.size);
    return bySize != 0 ? bySize : choices.toString().compareTo(other.choices.toString());
  }
}
