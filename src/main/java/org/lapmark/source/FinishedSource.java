package org.lapmark.source;

import org.lapmark.measure.TemplateText;

/**
 * A row of the finished measurements.
 *
 * @param label what is measured
 * @param value what it measures
 */
public record FinishedSource(TemplateText label, TemplateText value) {}
