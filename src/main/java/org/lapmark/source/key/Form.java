package org.lapmark.source.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.source.yaml.YamlNode;

/**
 * How a value is written: what reads it, its JSON Schema, and what the reference calls it.
 *
 * @param <T> what is read
 * @param shown what the reference calls it, such as {@code length}
 * @param schema its JSON Schema as maps, lists, texts, numbers and truths; a table is referred to
 *     by its id among the definitions
 * @param tables the tables of the maps that may stand in it
 * @param reader reads it
 */
public record Form<T>(
    String shown, Map<String, Object> schema, List<Table> tables, Reader<T> reader) {
  /**
   * Reads a value.
   *
   * @param <T> what is read
   */
  @FunctionalInterface
  public interface Reader<T> {
    /**
     * Reads a value.
     *
     * @param key the key that it is the value of, for messages
     * @return what was read, or null if it is something else, which is then reported
     */
    T read(Reading reading, YamlNode node, String key);
  }

  /** Copies the tables. */
  public Form {
    tables = List.copyOf(tables);
  }

  /** The same form with more said in its schema: keys and values in turn. */
  public Form<T> with(Object... pairs) {
    Map<String, Object> more = new LinkedHashMap<>(schema);
    more.putAll(schema(pairs));
    return new Form<>(shown, Collections.unmodifiableMap(more), tables, reader);
  }

  /** The same form under another name. */
  public Form<T> shown(String other) {
    return new Form<>(other, schema, tables, reader);
  }

  /** The same form, whose messages name something else than the key. */
  public Form<T> naming(String what) {
    return new Form<>(
        shown, schema, tables, (reading, node, key) -> reader.read(reading, node, what));
  }

  /** The same form for readers that look at the value themselves. */
  public Form<YamlNode> unread() {
    return new Form<>(shown, schema, tables, (reading, node, key) -> node);
  }

  /** A schema of keys and values in turn. */
  static Map<String, Object> schema(Object... pairs) {
    Map<String, Object> schema = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      schema.put((String) pairs[i], pairs[i + 1]);
    }
    return Collections.unmodifiableMap(schema);
  }

  Form(String shown, Map<String, Object> schema, Reader<T> reader) {
    this(shown, schema, List.of(), reader);
  }
}
