package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyWords;
import org.lapmark.source.key.Table;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The JSON Schema of a file of the source, as its tables of keys make it. */
final class KeySchema {
  private final KeyWords words;

  KeySchema(KeyWords words) {
    this.words = words;
  }

  /**
   * A schema.
   *
   * @param id the last words of its identity
   * @param title what it is of
   * @param roots the tables of whole files, the first that of the file itself
   */
  String of(String id, String title, List<Table> roots) {
    Map<String, Object> definitions = new LinkedHashMap<>();
    Table.reachable(roots).values().forEach(table -> definitions.put(table.id(), table(table)));
    String all = JsonText.line(definitions);
    Map<String, Object> used = new LinkedHashMap<>();
    shared()
        .forEach(
            (name, schema) -> {
              if (all.contains("#/$defs/" + name + "\"")
                  || name.equals("name") && used.size() > 0) {
                used.put(name, schema);
              }
            });
    used.putAll(definitions);
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", "urn:lapmark:" + id);
    schema.put("title", title);
    schema.put("$ref", "#/$defs/" + roots.get(0).id());
    schema.put("$defs", used);
    return JsonText.of(schema) + "\n";
  }

  private static Map<String, Object> shared() {
    Map<String, Object> shared = new LinkedHashMap<>();
    shared.put("names", map("type", "array", "minItems", 1, "items", map("$ref", "#/$defs/name")));
    shared.put(
        "name",
        map(
            "description",
            "A name: a letter from a to z, then such letters, digits and underscores.",
            "type",
            "string",
            "pattern",
            "^[a-z][a-z0-9_]*$"));
    shared.put(
        "text",
        map(
            "description",
            "Text, with or without placeholders.",
            "type",
            List.of("string", "number")));
    shared.put(
        "formula",
        map(
            "description",
            "A number with its unit, a name, or a calculation.",
            "type",
            List.of("string", "number", "boolean")));
    shared.put(
        "condition",
        map(
            "description",
            "An option’s name, or a comparison such as closure = zip or size < L.",
            "type",
            List.of("string", "boolean")));
    return shared;
  }

  private Map<String, Object> table(Table table) {
    Map<String, Object> schema = new LinkedHashMap<>();
    words.meaning(table).ifPresent(meaning -> schema.put("description", meaning));
    schema.put("type", "object");
    schema.put("additionalProperties", false);
    if (!table.required().isEmpty()) {
      schema.put("required", table.required());
    }
    List<Object> choices = table.choices().stream().<Object>map(KeySchema::choice).toList();
    if (choices.size() == 1) {
      schema.put("oneOf", choices.get(0));
    } else if (!choices.isEmpty()) {
      schema.put("allOf", choices.stream().map(each -> map("oneOf", each)).toList());
    }
    Map<String, Object> properties = new LinkedHashMap<>();
    for (Key<?> key : table.keys()) {
      Map<String, Object> property = new LinkedHashMap<>();
      property.put("description", words.meaning(table, key).orElse(""));
      property.putAll(key.form().schema());
      if (key.standard() != null) {
        property.put("default", value(key.standard()));
      }
      words
          .example(table, key)
          .ifPresent(example -> property.put("examples", List.of(value(example))));
      properties.put(key.name(), property);
    }
    schema.put("properties", properties);
    return schema;
  }

  /** Each way needs its own keys and forbids the others; those with the same keys are one. */
  private static Object choice(Choice choice) {
    List<Object> ways = new ArrayList<>();
    for (List<String> way : choice.ways()) {
      Map<String, Object> schema = new LinkedHashMap<>();
      if (!way.isEmpty()) {
        schema.put("required", way);
      }
      Map<String, Object> others = new LinkedHashMap<>();
      choice.keys().stream()
          .filter(key -> !way.contains(key))
          .forEach(key -> others.put(key, false));
      if (!others.isEmpty()) {
        schema.put("properties", others);
      }
      ways.add(schema);
    }
    return ways;
  }

  static Object value(String yaml) {
    return new Load(LoadSettings.builder().build()).loadFromString(yaml);
  }

  private static Map<String, Object> map(Object... pairs) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], pairs[i + 1]);
    }
    return map;
  }
}
