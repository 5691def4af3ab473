package org.lapmark.source;

import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;

/**
 * A row of the finished measurements.
 *
 * @param label what is measured
 * @param value what it measures
 * @param when the condition on which a variant has the row, or null for always; it stands here
 *     because the other texts may be exchanged for those of another language
 */
public record FinishedSource(TemplateText label, TemplateText value, Formula when) {}
