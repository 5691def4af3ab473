/** The sections of instructions: when a document has one, and what its template gets. */
package org.lapmark.document.section;
