package org.lapmark.source;

import org.lapmark.finding.SourceText;

/**
 * A file of the {@code notes} folder.
 *
 * @param name the file's name without its ending: {@code introduction}, {@code cautions}, {@code
 *     fitting}
 * @param body the Markdown
 */
public record NoteSource(String name, SourceText body) {}
