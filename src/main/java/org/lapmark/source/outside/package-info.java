/**
 * What a pattern brings from outside: photographs and line drawings of its folder {@code art}, and
 * the address of a film. Files are untrusted: sizes, pixels and depths are bounded, nothing is
 * fetched, nothing runs.
 */
package org.lapmark.source.outside;
