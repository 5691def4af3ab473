/**
 * What was computed is remembered by the values that it depends on, in bounded memory: a result
 * that is remembered is equal to the one that would be computed.
 */
package org.lapmark.memory;
