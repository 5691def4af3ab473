/**
 * The sections of instructions: one class a section says when a document has it and what its
 * template gets, for one size and for several beside each other.
 *
 * <p>{@link org.lapmark.document.section.Sections} lists them; contents, bookmarks, links,
 * templates and the companion follow from that list. Values that a template gets keep their names,
 * since makers of templates rely on them.
 */
package org.lapmark.document.section;
