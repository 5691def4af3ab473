package org.lapmark.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Value;

/**
 * The size table.
 *
 * @param sizes the sizes' names in column order
 * @param rows the base measures in row order
 * @param heads the sizes' names where they stand
 */
public record SizeTable(List<String> sizes, List<Row> rows, List<SourceText> heads) {
  /** Copies the lists. */
  public SizeTable {
    sizes = List.copyOf(sizes);
    rows = List.copyOf(rows);
    heads = List.copyOf(heads);
  }

  /**
   * A table that stands in no file.
   *
   * @param sizes the sizes' names in column order
   * @param rows the base measures in row order
   */
  public SizeTable(List<String> sizes, List<Row> rows) {
    this(sizes, rows, List.of());
  }

  /**
   * A base measure.
   *
   * @param name its name
   * @param position where the name stands
   * @param values its value by size, in column order; a size whose cell couldn't be read is missing
   */
  public record Row(String name, Position position, Map<String, Value.Quantity> values) {
    /**
     * Whether its values are plain numbers, as where no unit is stated.
     *
     * @return false for lengths, angles and counts, and where no value could be read
     */
    public boolean isWithoutUnit() {
      return !values.isEmpty()
          && values.values().stream().allMatch(value -> value.dimension() == Dimension.PLAIN);
    }

    /** Copies the map, keeping its order. */
    public Row {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
  }
}
