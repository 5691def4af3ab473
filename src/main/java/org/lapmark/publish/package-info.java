/**
 * One folder in, a set of files out: the order of stages and the threads.
 *
 * <p>Findings and files come in a fixed order, whatever the threads do.
 */
package org.lapmark.publish;
