/**
 * Finished articles that have one outline from side to side, with their true measurements. {@link
 * org.lapmark.figure.article.Article} states, reads and stages one.
 */
package org.lapmark.figure.article;
