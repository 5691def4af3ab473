/**
 * Finished articles that are made of rings, with their true measurements. {@link
 * org.lapmark.figure.rings.Rings} states, reads and stages one.
 */
package org.lapmark.figure.rings;
