/**
 * Sections through layers, along which distances are true and across which they are not. {@link
 * org.lapmark.figure.section.Section} states, reads and stages one.
 */
package org.lapmark.figure.section;
