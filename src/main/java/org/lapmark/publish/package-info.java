/**
 * One folder in, a set of files out: the order of stages, the threads, and writing so that a reader
 * never sees half an output.
 */
package org.lapmark.publish;
