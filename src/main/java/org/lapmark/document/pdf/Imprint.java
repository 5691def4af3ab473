package org.lapmark.document.pdf;

import java.time.LocalDate;

/**
 * What a PDF file says about itself.
 *
 * @param title the document's title
 * @param author who publishes it, or empty
 * @param subject one sentence
 * @param language a BCP 47 tag
 * @param date the edition's date, which is the document's
 * @param program name and version of what wrote it
 */
public record Imprint(
    String title, String author, String subject, String language, LocalDate date, String program) {}
