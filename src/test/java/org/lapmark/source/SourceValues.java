package org.lapmark.source;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.drawing.PanelDrawing;

/** What a source says, without where it says it. */
final class SourceValues {
  private SourceValues() {}

  /**
   * A value without places: records as maps, texts and formulas as they are written. Drawings,
   * which stand in files of their own, are left out.
   */
  static Object of(Object value) {
    if (value instanceof SourceText text) {
      return text.text();
    }
    if (value instanceof Formula formula) {
      return formula.text().text();
    }
    if (value instanceof Position || value instanceof PanelDrawing) {
      return "";
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(SourceValues::of).orElse(null);
    }
    if (value instanceof Iterable<?> items) {
      List<Object> list = new ArrayList<>();
      items.forEach(item -> list.add(of(item)));
      return list;
    }
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> sorted = new TreeMap<>();
      map.forEach((key, inner) -> sorted.put(String.valueOf(of(key)), of(inner)));
      return sorted;
    }
    return value instanceof Record record ? components(record) : String.valueOf(value);
  }

  private static Map<String, Object> components(Record record) {
    Map<String, Object> values = new TreeMap<>();
    values.put("", record.getClass().getName());
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      try {
        component.getAccessor().setAccessible(true);
        values.put(component.getName(), of(component.getAccessor().invoke(record)));
      } catch (ReflectiveOperationException e) {
        throw new AssertionError(e);
      }
    }
    return values;
  }
}
