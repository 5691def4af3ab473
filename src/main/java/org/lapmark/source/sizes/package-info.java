/** The table of sizes, as spreadsheets write it. */
package org.lapmark.source.sizes;
