/**
 * Documents: templates become HTML, HTML and drawings become one tagged PDF. All of PDFBox is in
 * the packages inside, and nothing here touches a file.
 */
package org.lapmark.document;
