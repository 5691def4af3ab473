/**
 * Documents: templates become HTML, HTML and drawings become one tagged PDF. All of PDFBox is here,
 * and nothing here touches a file.
 */
package org.lapmark.document;
