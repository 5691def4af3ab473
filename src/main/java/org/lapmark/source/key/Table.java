package org.lapmark.source.key;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The keys that a kind of map may have: the one place where they are stated. Readers, JSON Schema,
 * hints and the reference follow from it.
 *
 * @param id its name among the definitions of a schema, and that of its words
 * @param keys the keys, those that have to be there first
 * @param choices ways to state the same thing
 */
public record Table(String id, List<Key<?>> keys, List<Choice> choices) {
  /** Copies the lists. */
  public Table {
    keys = List.copyOf(keys);
    choices = List.copyOf(choices);
    if (keys.stream().map(Key::name).distinct().count() < keys.size()) {
      throw new IllegalArgumentException(id + " has a key twice");
    }
  }

  /** A table of keys. */
  public static Table of(String id, Key<?>... keys) {
    return new Table(id, Arrays.asList(keys), List.of());
  }

  /** The same table with more keys. */
  public Table with(List<? extends Key<?>> more) {
    List<Key<?>> all = new ArrayList<>(keys);
    all.addAll(more);
    return new Table(id, all, choices);
  }

  /** The same table, of whose ways one has to be taken. */
  public Table oneOf(Choice choice) {
    List<Choice> all = new ArrayList<>(choices);
    all.add(choice);
    return new Table(id, keys, all);
  }

  /** The names of all keys. */
  public List<String> known() {
    return keys.stream().<String>map(Key::name).toList();
  }

  /** The names of the keys that have to be there. */
  public List<String> required() {
    return keys.stream().filter(Key::required).<String>map(Key::name).toList();
  }

  /** All tables that can be reached from some, each once, by their ids, outer ones first. */
  public static Map<String, Table> reachable(List<Table> roots) {
    Map<String, Table> reached = new LinkedHashMap<>();
    for (Table root : roots) {
      collect(root, reached);
    }
    return Collections.unmodifiableMap(reached);
  }

  private static void collect(Table table, Map<String, Table> reached) {
    Table before = reached.putIfAbsent(table.id(), table);
    if (before == null) {
      table.keys().forEach(key -> key.form().tables().forEach(inner -> collect(inner, reached)));
    } else if (before != table) {
      throw new IllegalArgumentException("two tables are called " + table.id());
    }
  }
}
