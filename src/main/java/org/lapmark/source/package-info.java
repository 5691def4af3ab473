/**
 * The pattern folder, read with positions: {@code pattern.yaml}, {@code sizes.csv}, {@code
 * panels/*.svg} and {@code steps/*.md}.
 *
 * <p>Everything wrong is reported in one run; what could be read is handed on. The folder is
 * untrusted: no path leaves it, nothing is fetched, no entity is expanded, and sizes, depths and
 * counts are bounded ({@link org.lapmark.source.Limits}). Formulas and texts are parsed here but
 * not evaluated.
 *
 * <p>In a drawing, a shape's id says what it stands for: {@code outline}, {@code grainline}, {@code
 * corner.NAME}, {@code placement.NAME}, {@code foldline.NAME}, {@code drill.NAME}, {@code
 * notch.NAME}. An attribute {@code data-X} overrides the attribute X and may hold placeholders,
 * each of which is one whole number: a sign belongs inside its braces.
 */
package org.lapmark.source;
