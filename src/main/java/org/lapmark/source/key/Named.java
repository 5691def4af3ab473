package org.lapmark.source.key;

import org.lapmark.finding.SourceText;

/**
 * Something under a name of the author's own.
 *
 * @param <T> what it is
 * @param name the name
 * @param value what stands under it; null if that couldn't be read, which was reported
 */
public record Named<T>(SourceText name, T value) {}
