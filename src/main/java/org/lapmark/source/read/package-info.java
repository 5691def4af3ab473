/**
 * Reads a pattern folder into values, and checks that what they name is there.
 *
 * <p>Everything wrong is reported in one run; what could be read is handed on.
 */
package org.lapmark.source.read;
