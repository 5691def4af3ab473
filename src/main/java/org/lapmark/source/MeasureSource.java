package org.lapmark.source;

import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;

/**
 * A named formula.
 *
 * @param name its name
 * @param formula what it is
 */
public record MeasureSource(SourceText name, Formula formula) {}
