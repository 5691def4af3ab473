package org.lapmark.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;

/**
 * A material or a piece of hardware.
 *
 * @param id its name in formulas and cuts
 * @param name what readers see
 * @param properties formulas by property name; a formula names one as {@code id.property}. Null
 *     stands for one that couldn't be understood, which was reported
 */
public record ThingSource(SourceText id, TemplateText name, Map<String, Formula> properties) {
  /** Copies the map, keeping its order. */
  public ThingSource {
    properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
  }
}
