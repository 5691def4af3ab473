/**
 * Markup in, pages out: what templates made becomes pages of a {@link
 * org.lapmark.document.pdf.PdfBook}.
 */
package org.lapmark.document.setting;
