package org.lapmark.source;

import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.yaml.YamlNode;

/**
 * Something assembled that figures show as one.
 *
 * @param name its name
 * @param label what readers see as its name, or null
 * @param view what it is made of and how that lies, written as in a figure, which alone reads it
 */
public record UnitSource(SourceText name, TemplateText label, YamlNode view) {}
