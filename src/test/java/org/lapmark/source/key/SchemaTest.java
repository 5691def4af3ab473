package org.lapmark.source.key;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** JSON is YAML, so that the schemas can be read with the parser that is there. */
class SchemaTest {
  private static Map<?, ?> definitions(String resource) throws IOException {
    try (InputStream stream = SchemaTest.class.getResourceAsStream(resource)) {
      Map<?, ?> schema =
          (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromInputStream(stream);
      assertEquals("https://json-schema.org/draft/2020-12/schema", schema.get("$schema"));
      return (Map<?, ?>) schema.get("$defs");
    }
  }

  @Test
  void theSchemasKnowTheKeysThatTheReaderKnows() throws IOException {
    Map<Object, Object> definitions = new LinkedHashMap<>(definitions("pattern.schema.json"));
    definitions.putAll(definitions("step.schema.json"));
    definitions.putAll(definitions("translation.schema.json"));
    for (Section section : Section.values()) {
      String name = section.name().toLowerCase(Locale.ROOT);
      Map<?, ?> definition = (Map<?, ?>) definitions.get(name);
      assertTrue(definition != null, "the schema lacks " + name);
      assertEquals(Boolean.FALSE, definition.get("additionalProperties"), name);
      assertEquals(
          new TreeSet<>(section.known()), keys((Map<?, ?>) definition.get("properties")), name);
      Object required = definition.get("required");
      assertEquals(section.required(), required == null ? List.of() : required, name);
    }
  }

  @Test
  void everyReferenceInTheSchemaLeadsSomewhere() throws IOException {
    Map<?, ?> definitions = definitions("pattern.schema.json");
    Set<String> references = new TreeSet<>();
    collect(definitions, references);
    for (String reference : references) {
      assertTrue(definitions.containsKey(reference.replace("#/$defs/", "")), reference);
    }
  }

  private static void collect(Object value, Set<String> references) {
    if (value instanceof Map<?, ?> map) {
      map.forEach(
          (key, inner) -> {
            if (key.equals("$ref")) {
              references.add((String) inner);
            }
            collect(inner, references);
          });
    } else if (value instanceof List<?> list) {
      list.forEach(inner -> collect(inner, references));
    }
  }

  private static Set<String> keys(Map<?, ?> map) {
    Set<String> keys = new TreeSet<>();
    map.keySet().forEach(key -> keys.add((String) key));
    return keys;
  }
}
