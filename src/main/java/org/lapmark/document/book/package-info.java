/**
 * Files of pages: what each holds, in which order, and their numbers.
 *
 * <p>All are PDF/A-3a and PDF/UA-1, and the same values give the same bytes.
 */
package org.lapmark.document.book;
