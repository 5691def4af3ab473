/**
 * The author's texts as a document model whose numbers are still values.
 *
 * <p>A {@link org.lapmark.text.Manuscript} is one text, parsed once: blocks and inlines as records,
 * with placeholders, cross-references, notes, boxes and figures as parts of their own and every
 * part's place in the file. {@link org.lapmark.text.Printing} holds what the placeholders come to
 * in one variant or several; {@link org.lapmark.text.HtmlText} and {@link
 * org.lapmark.text.PlainText} write both. No word that a reader sees comes from here.
 */
package org.lapmark.text;
