package org.lapmark.figure.read;

import java.util.List;

/**
 * The keys that one map of a figure may have, stated once.
 *
 * @param name what the map is called among the examples
 * @param keys its keys, in the order in which hints list them
 */
public record KeyTable(String name, List<String> keys) {
  /** Copies the list. */
  public KeyTable {
    keys = List.copyOf(keys);
  }

  /**
   * A table.
   *
   * @param name what the map is called among the examples
   * @param keys its keys
   * @return the table
   */
  public static KeyTable of(String name, String... keys) {
    return new KeyTable(name, List.of(keys));
  }
}
