/**
 * What instructions say of a pattern in one variant or several, and its wording, whatever the page.
 */
package org.lapmark.document.manual;
