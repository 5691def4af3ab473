package org.lapmark.source;

import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;

/**
 * A named formula.
 *
 * @param name its name
 * @param formula what it is; null if that couldn't be understood, which was reported
 */
public record MeasureSource(SourceText name, Formula formula) {}
