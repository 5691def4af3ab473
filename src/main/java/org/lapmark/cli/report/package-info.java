/**
 * Findings as text, JSON and SARIF.
 *
 * <p>What is said about one finding is bounded, in every form.
 */
package org.lapmark.cli.report;
