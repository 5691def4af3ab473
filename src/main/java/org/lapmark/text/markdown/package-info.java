/**
 * Reads the author's Markdown: commonmark-java parses it, and what it found becomes a {@link
 * org.lapmark.text.Manuscript} or {@link org.lapmark.text.Steps}, with findings where a text can't
 * be understood.
 */
package org.lapmark.text.markdown;
