package org.lapmark.source.key;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.measure.Formula;
import org.lapmark.source.yaml.DecimalCommas;
import org.lapmark.source.yaml.YamlNode;

/** What is written in one map, held against a table of keys. Each value is read once. */
public final class Stated {
  /** To which variants something belongs. */
  public static final Key<Formula> WHEN = Key.of("when", Forms.CONDITION);

  private final Reading reading;
  private final Table table;
  private final Position owner;
  private final Map<String, YamlNode> values;
  private final Map<String, Object> read = new LinkedHashMap<>();
  private final boolean known;

  private Stated(
      Reading reading, Table table, Position owner, Map<String, YamlNode> values, boolean known) {
    this.known = known;
    this.reading = reading;
    this.table = table;
    this.owner = owner;
    this.values = values;
  }

  /**
   * Holds a map against a table. Unknown, duplicate and missing keys are reported.
   *
   * @param owner where a missing key is reported: what the map belongs to
   * @param key the key that the map is the value of, for messages
   * @return what is stated, or null if it isn't a map
   */
  public static Stated of(Reading reading, YamlNode node, Table table, Position owner, String key) {
    YamlNode.Entries map = reading.map(node, key);
    if (map == null) {
      return null;
    }
    List<String> known = table.known();
    Map<String, YamlNode> values = new LinkedHashMap<>();
    Map<String, YamlNode> meant = new LinkedHashMap<>();
    Map<String, YamlNode.Text> seen = new LinkedHashMap<>();
    for (YamlNode.Entry entry : DecimalCommas.mended(map, reading.findings())) {
      String name = entry.key().text().text();
      if (reading.repeated(entry.key(), seen)) {
        continue;
      }
      if (known.contains(name)) {
        values.put(name, entry.value());
      } else {
        reading.unknown(KeyCode.KEY_UNKNOWN, entry.key().position(), name, known);
        meant.putIfAbsent(reading.hints().nearest(name, known), entry.value());
      }
    }
    boolean allKnown = meant.isEmpty();
    // What stands under a mistyped key is read as what was meant, so that nothing else is amiss.
    meant.remove("");
    meant.forEach(values::putIfAbsent);
    for (String required : table.required()) {
      if (!values.containsKey(required)) {
        reading.findings().add(KeyCode.KEY_MISSING, owner, "key", required);
      }
    }
    return new Stated(reading, table, owner, values, allKnown);
  }

  /** A map in which nothing is written. */
  public static Stated nothing(Reading reading, Table table) {
    return new Stated(reading, table, null, Collections.emptyMap(), true);
  }

  /** The table that it is held against. */
  public Table table() {
    return table;
  }

  /** Where what is missing is reported. */
  public Position owner() {
    return owner;
  }

  /** The names of the keys that are written, in that order. */
  public List<String> names() {
    return List.copyOf(values.keySet());
  }

  /** The keys that are written, in that order. */
  public List<Key<?>> keys() {
    List<Key<?>> keys = new ArrayList<>();
    for (String name : values.keySet()) {
      table.keys().stream().filter(key -> key.name().equals(name)).forEach(keys::add);
    }
    return keys;
  }

  /** Whether a key is written. */
  public boolean has(Key<?> key) {
    return values.containsKey(known(key).name());
  }

  /** What is written under a key, or null. */
  public YamlNode node(Key<?> key) {
    return values.get(known(key).name());
  }

  /** Where the value of a key that is written stands. */
  public Position position(Key<?> key) {
    return node(key).position();
  }

  /**
   * What a key says.
   *
   * @return what was read; null if the key isn't there, or if its value couldn't be read, which is
   *     then reported
   */
  @SuppressWarnings("unchecked") // What is kept under a key was read by the key's own form.
  public <T> T get(Key<T> key) {
    YamlNode node = node(key);
    if (node == null) {
      return null;
    }
    if (!read.containsKey(key.name())) {
      read.put(key.name(), key.form().reader().read(reading, node, key.name()));
    }
    return (T) read.get(key.name());
  }

  /**
   * What a key says, or something else where it isn't there.
   *
   * @return null if its value couldn't be read, which is then reported
   */
  public <T> T get(Key<T> key, T otherwise) {
    return has(key) ? get(key) : otherwise;
  }

  /** What a key says, or something else where it isn't there or couldn't be read. */
  public <T> T or(Key<T> key, T otherwise) {
    T value = get(key);
    return value == null ? otherwise : value;
  }

  /** The entries of a list or of a map; none where it isn't there. */
  public <T> List<T> all(Key<List<T>> key) {
    return or(key, List.of());
  }

  /**
   * What those of some keys say that are written, by their names and in that order.
   *
   * @return null for each that couldn't be read, which is then reported
   */
  public <T> Map<String, T> each(List<Key<T>> some) {
    Map<String, T> each = new LinkedHashMap<>();
    for (String name : values.keySet()) {
      for (Key<T> key : some) {
        if (key.name().equals(name) && table.keys().contains(key)) {
          each.put(name, get(key));
        }
      }
    }
    return each;
  }

  /** Whether a key says yes. */
  public boolean isTrue(Key<Boolean> key) {
    return Boolean.TRUE.equals(get(key));
  }

  /** Whether these keys could be read, or needn't be there and aren't. */
  public boolean isSound(Key<?>... keys) {
    boolean sound = true;
    for (Key<?> key : keys) {
      sound &= has(key) ? get(key) != null : !key.required();
    }
    return sound;
  }

  /** Whether every key that is written is one of the table's. */
  public boolean isKnown() {
    return known;
  }

  /** Whether all keys that have to be there are written. */
  public boolean isComplete() {
    return values.keySet().containsAll(table.required());
  }

  /** Has what is stated here belong to the variants that {@link #WHEN} says. */
  public void condition(Ref what) {
    Formula when = get(WHEN);
    if (when != null) {
      reading.switches().condition(what, when);
    } else if (has(WHEN)) {
      reading.switches().unread(what);
    }
  }

  private Key<?> known(Key<?> key) {
    if (!table.keys().contains(key)) {
      throw new IllegalArgumentException(table.id() + " has no key " + key.name());
    }
    return key;
  }
}
