/**
 * The files of a pattern folder, as text.
 *
 * <p>The folder is untrusted: no path leaves it, nothing is fetched, and sizes, depths and counts
 * are bounded ({@link org.lapmark.source.folder.Limits}).
 */
package org.lapmark.source.folder;
