package org.lapmark.source.key;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Ways to state the same thing, of which one is taken: its keys are there, and none of the others'.
 *
 * @param ways each the names of its keys; none where nothing need be said
 */
public record Choice(List<List<String>> ways) {
  /** Copies the list. */
  public Choice {
    ways = ways.stream().map(List::copyOf).toList();
  }

  /**
   * One way.
   *
   * @param keys the names of its keys
   */
  public record Way(List<String> keys) {}

  /** Some ways. */
  public static Choice of(Way... ways) {
    return new Choice(Stream.of(ways).map(Way::keys).toList());
  }

  /** A way of these keys; of none, it says nothing. */
  public static Way way(Key<?>... keys) {
    return new Way(Stream.of(keys).<String>map(Key::name).toList());
  }

  /** Ways of one key each. */
  public static Choice among(List<? extends Key<?>> keys) {
    return new Choice(keys.stream().map(key -> List.of(key.name())).toList());
  }

  /** All keys of all ways. */
  public Set<String> keys() {
    Set<String> keys = new LinkedHashSet<>();
    ways.forEach(keys::addAll);
    return keys;
  }

  /**
   * Whether what is stated is one of the ways.
   *
   * @param names the names of the keys that are written
   */
  public boolean isMet(Collection<String> names) {
    Set<String> written = new LinkedHashSet<>(names);
    written.retainAll(keys());
    return ways.stream().anyMatch(way -> written.equals(new LinkedHashSet<>(way)));
  }

  /** As messages show it. */
  public String shown() {
    return ways.stream()
        .filter(way -> !way.isEmpty())
        .map(way -> String.join(" and ", way))
        .collect(Collectors.joining(", or "));
  }
}
