/**
 * Tagged PDF with embedded fonts, by PDFBox alone.
 *
 * <p>The same content gives the same bytes; every file is PDF/A-3a and PDF/UA-1.
 */
package org.lapmark.document.pdf;
