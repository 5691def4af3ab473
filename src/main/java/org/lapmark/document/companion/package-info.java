/** The companion: one page for a screen, with every size. */
package org.lapmark.document.companion;
