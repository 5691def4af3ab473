package org.lapmark.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyWords;
import org.lapmark.source.key.Table;

/** Examples of keys, with as much around each as it needs to be read. */
final class KeyExamples {
  private final KeyWords words;

  KeyExamples(KeyWords words) {
    this.words = words;
  }

  /**
   * What has to stand in a file to have an example of a key in it.
   *
   * @param root the file's table
   * @param table the key's table
   * @param key the key
   */
  Map<String, Object> of(Table root, Table table, Key<?> key) {
    Map<String, Object> extras = new LinkedHashMap<>();
    for (String beside : words.beside(table, key)) {
      if (KeySchema.value(beside) instanceof Map<?, ?> map) {
        map.forEach((name, value) -> extras.put((String) name, value));
      } else {
        List.of(beside.split(", *")).forEach(name -> extras.putIfAbsent(name, null));
      }
    }
    if (table == root && !table.id().equals("pattern")) {
      return map(table, key, value(table, key), extras);
    }
    if (table == root) {
      return Map.of(key.name(), value(table, key));
    }
    Map<String, Object> stated = map(table, key, value(table, key), extras);
    Map<String, Object> all = around(root, table, stated, extras, new LinkedHashSet<>());
    all.keySet()
        .removeAll(root.required().stream().filter(name -> !contains(root, name, table)).toList());
    return all;
  }

  private static boolean contains(Table root, String name, Table table) {
    return root.keys().stream()
        .filter(key -> key.name().equals(name))
        .flatMap(key -> Table.reachable(key.form().tables()).values().stream())
        .anyMatch(inner -> inner == table);
  }

  /** A table's example in the maps around it, up to a file's; null if it stands nowhere there. */
  private Map<String, Object> around(
      Table at, Table table, Object stated, Map<String, Object> extras, Set<String> visited) {
    List<Key<?>> keys = new ArrayList<>(at.keys());
    keys.sort(Comparator.comparing(key -> !extras.containsKey(key.name())));
    for (Key<?> key : keys) {
      for (Table inner : key.form().tables()) {
        Object value = null;
        if (inner == table) {
          value = stated;
        } else if (visited.add(inner.id())) {
          value = around(inner, table, stated, extras, visited);
        }
        if (value != null) {
          Object wrapped = wrapped(key.form().schema(), inner, value, words.named(at, key));
          words.beside(at, key).forEach(name -> extras.putIfAbsent(name, null));
          return map(at, key, wrapped, extras);
        }
      }
    }
    return null;
  }

  /** The keys that a table needs beside one. */
  private Map<String, Object> map(
      Table table, Key<?> key, Object value, Map<String, Object> extras) {
    Map<String, Object> map = new LinkedHashMap<>();
    List<String> needed = new ArrayList<>(table.required());
    extras.keySet().stream().filter(name -> table.known().contains(name)).forEach(needed::add);
    for (Choice choice : table.choices()) {
      List<String> way = way(choice, key == null ? "" : key.name(), needed);
      needed.removeAll(choice.keys());
      needed.addAll(way);
    }
    for (Key<?> each : table.keys()) {
      if (key != null && each.name().equals(key.name())) {
        map.put(each.name(), value);
      } else if (needed.contains(each.name())) {
        Object extra = extras.get(each.name());
        map.put(each.name(), extra == null ? value(table, each) : extra);
      }
    }
    return map;
  }

  /** The first way with a key, else with one of those needed, else any that says something. */
  private static List<String> way(Choice choice, String key, List<String> needed) {
    List<List<String>> ways = choice.ways().stream().filter(way -> !way.isEmpty()).toList();
    List<List<String>> own = ways.stream().filter(way -> way.contains(key)).toList();
    List<List<String>> likely = own.isEmpty() ? ways : own;
    return likely.stream()
        .filter(way -> way.stream().anyMatch(needed::contains))
        .findFirst()
        .orElse(likely.get(0));
  }

  /** What a key says in examples; of a map, what its own table needs. */
  Object value(Table table, Key<?> key) {
    if (words.example(table, key).isPresent()) {
      return KeySchema.value(words.example(table, key).get());
    }
    Table inner = key.form().tables().get(0);
    Map<String, Object> extras = new LinkedHashMap<>();
    if (inner.required().isEmpty() && inner.choices().isEmpty()) {
      extras.put(inner.keys().get(0).name(), null);
    }
    words.beside(inner, null).forEach(name -> extras.put(name, null));
    Object stated = map(inner, null, null, extras);
    return wrapped(key.form().schema(), inner, stated, words.named(table, key));
  }

  /** A table's map as a form has it: by itself, in a list, under a name. */
  private static Object wrapped(Object schema, Table table, Object value, String name) {
    Map<?, ?> map = (Map<?, ?>) schema;
    if (("#/$defs/" + table.id()).equals(map.get("$ref"))) {
      return value;
    }
    if (map.get("items") != null) {
      Object item = wrapped(map.get("items"), table, value, name);
      int count = map.get("minItems") instanceof Integer fewest ? fewest : 1;
      return item == null ? null : Collections.nCopies(count, item);
    }
    if (map.get("additionalProperties") != null) {
      Object entry = wrapped(map.get("additionalProperties"), table, value, name);
      Map<String, Object> named = new LinkedHashMap<>();
      named.put(name, entry);
      return entry == null ? null : named;
    }
    if (map.get("anyOf") instanceof List<?> forms) {
      for (Object form : forms) {
        Object wrapped = wrapped(form, table, value, name);
        if (wrapped != null) {
          return wrapped;
        }
      }
    }
    return null;
  }
}
