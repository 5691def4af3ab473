/**
 * The folder that files are written into: their names, the list of what the program wrote itself,
 * and replacing all of it at once.
 *
 * <p>A reader never sees half an output, and nothing of somebody else's is ever deleted.
 */
package org.lapmark.publish.output;
