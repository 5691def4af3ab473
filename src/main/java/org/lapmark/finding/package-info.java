/**
 * Findings: what a check has to say, where, and what to do about it.
 *
 * <p>Everything a user can get wrong ends as a {@link org.lapmark.finding.Finding} with a code, a
 * position and, from a resource beside the code, a sentence and a hint. Columns count Unicode code
 * points from 1, lines from 1.
 */
package org.lapmark.finding;
