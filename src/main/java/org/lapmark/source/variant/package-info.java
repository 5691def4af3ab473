/**
 * What statements ask of the variant in which something is made of them; whoever evaluates patterns
 * answers.
 */
package org.lapmark.source.variant;
