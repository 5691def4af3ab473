/**
 * What an operation of the trade comes to in one variant: its moments, each a section as plain
 * numbers, with the sentences that say it.
 */
package org.lapmark.figure.operation.frame;
