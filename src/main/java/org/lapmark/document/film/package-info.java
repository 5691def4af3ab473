/** Links to films of steps, for paper as codes of squares. Nothing is fetched. */
package org.lapmark.document.film;
