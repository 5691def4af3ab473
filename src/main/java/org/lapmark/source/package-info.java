/**
 * The pattern folder, read with positions: {@code pattern.yaml}, {@code sizes.csv}, {@code
 * panels/*.svg} and {@code steps/*.md}.
 *
 * <p>Everything wrong is reported in one run; what could be read is handed on. The folder is
 * untrusted: no path leaves it, nothing is fetched, no entity is expanded, and sizes, depths and
 * counts are bounded. Formulas and texts are parsed here but not evaluated.
 */
package org.lapmark.source;
