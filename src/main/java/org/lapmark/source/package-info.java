/**
 * What a pattern folder states, as values: formulas and texts are parsed here and not evaluated.
 *
 * <p>{@link org.lapmark.source.read.PatternReader} makes them; everything wrong is reported in one
 * run, and what could be read is handed on. Below the values stand, from the bottom: {@code
 * folder}, the files; {@code yaml}; {@code key}, what can be written under which key; {@code
 * drawing}, the drawings of panels; {@code variant}, what statements ask when something is made of
 * them; {@code mark} and {@code derived}, the kinds of marks and derivations; {@code fastening},
 * trims and attachments. Above them {@code sizes} reads the table of sizes and {@code read}
 * everything else.
 */
package org.lapmark.source;
