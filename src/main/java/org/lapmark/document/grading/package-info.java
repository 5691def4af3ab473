/** The grade report's pages. */
package org.lapmark.document.grading;
