package org.lapmark.document.setting;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.pdf.Glyphs;

/**
 * Turns records into maps, which is what templates can read: records become maps by component name,
 * an empty optional is left out, enum constants become their names, and every string loses what
 * can't be printed.
 */
public final class RecordModel {
  private final Glyphs glyphs;

  public RecordModel(Glyphs glyphs) {
    this.glyphs = glyphs;
  }

  public Map<String, Object> map(Record value) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (RecordComponent component : value.getClass().getRecordComponents()) {
      Object converted = convert(read(component, value));
      if (converted != null) {
        map.put(component.getName(), converted);
      }
    }
    return map;
  }

  private static Object read(RecordComponent component, Record value) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(value);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(e);
    }
  }

  private Object convert(Object value) {
    if (value == null || value instanceof Number || value instanceof Boolean) {
      return value;
    } else if (value instanceof String text) {
      return glyphs.printable(text);
    } else if (value instanceof Record inner) {
      return map(inner);
    } else if (value instanceof Optional<?> optional) {
      return convert(optional.orElse(null));
    } else if (value instanceof Enum<?> constant) {
      return constant.name();
    } else if (value instanceof List<?> list) {
      List<Object> converted = new ArrayList<>();
      list.forEach(element -> converted.add(convert(element)));
      return converted;
    } else if (value instanceof Map<?, ?> entries) {
      Map<String, Object> converted = new LinkedHashMap<>();
      entries.forEach((key, element) -> converted.put(key.toString(), convert(element)));
      return converted;
    }
    throw new IllegalArgumentException("no template form for " + value.getClass());
  }
}
