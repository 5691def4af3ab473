/**
 * Styled vector drawings: paths, lettering, groups and clips in millimetres at printed size, each
 * with a style role; how a role looks is stated in a style sheet.
 *
 * <p>A drawing knows nothing of files: PDF and SVG writers live elsewhere.
 */
package org.lapmark.drawing;
