/** The commands: their options, their findings as text and JSON, their progress and exit codes. */
package org.lapmark.cli;
