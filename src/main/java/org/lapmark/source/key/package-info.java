/**
 * What can be written under which key, and how it is read.
 *
 * <p>Whatever is of another kind is reported at its place, and reading goes on.
 */
package org.lapmark.source.key;
