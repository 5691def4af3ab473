package org.lapmark.figure.read;

import java.util.List;

/**
 * What could be read of a list.
 *
 * @param <T> what an entry is
 * @param entries those entries
 * @param isWhole whether all could be read
 */
public record Entries<T>(List<T> entries, boolean isWhole) {
  /** Copies the list. */
  public Entries {
    entries = List.copyOf(entries);
  }
}
