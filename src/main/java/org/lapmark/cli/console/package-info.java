/** The streams, and how text, JSON and CSV are written to them. */
package org.lapmark.cli.console;
