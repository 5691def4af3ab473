/** The comparison of sizes as text, JSON and CSV. */
package org.lapmark.cli.grade;
