package org.lapmark.source;

import org.lapmark.finding.SourceText;

/**
 * A step's file.
 *
 * @param id its stated name, for cross-references
 * @param title its heading
 * @param stage the heading of the group it belongs to
 * @param body the Markdown after the front matter
 */
public record StepSource(SourceText id, SourceText title, SourceText stage, SourceText body) {}
