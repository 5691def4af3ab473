package org.lapmark.source.sizes;

import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.measure.Dimension;

/**
 * The unit of a row.
 *
 * @param factor what one of it is, in millimetres, degrees or bare numbers
 * @param dimension what it measures
 */
record CellUnit(double factor, Dimension dimension) {
  static final double INCH = 25.4;

  /** Every unit by the word that stands for it, in the order in which they are named. */
  static Map<String, CellUnit> known() {
    Map<String, CellUnit> units = new LinkedHashMap<>();
    units.put("mm", new CellUnit(1, Dimension.LENGTH));
    units.put("cm", new CellUnit(10, Dimension.LENGTH));
    units.put("m", new CellUnit(1000, Dimension.LENGTH));
    units.put("in", new CellUnit(INCH, Dimension.LENGTH));
    units.put("ft", new CellUnit(12 * INCH, Dimension.LENGTH));
    units.put("yd", new CellUnit(36 * INCH, Dimension.LENGTH));
    units.put("deg", new CellUnit(1, Dimension.ANGLE));
    units.put("count", new CellUnit(1, Dimension.COUNT));
    units.put("-", new CellUnit(1, Dimension.PLAIN));
    units.put("", new CellUnit(1, Dimension.PLAIN));
    return units;
  }
}
