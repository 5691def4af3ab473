package org.lapmark.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.measure.Value;

/**
 * The size table.
 *
 * @param sizes the sizes' names in column order
 * @param rows the base measures in row order
 */
public record SizeTable(List<String> sizes, List<Row> rows) {
  /** Copies the lists. */
  public SizeTable {
    sizes = List.copyOf(sizes);
    rows = List.copyOf(rows);
  }

  /**
   * A base measure.
   *
   * @param name its name
   * @param position where the name stands
   * @param values its value by size, in column order; a size whose cell couldn't be read is missing
   */
  public record Row(String name, Position position, Map<String, Value.Quantity> values) {
    /** Copies the map, keeping its order. */
    public Row {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
  }
}
