/**
 * YAML as values that know where they stand, character by character.
 *
 * <p>No entity, alias or tag is followed, and depth and number of values are bounded.
 */
package org.lapmark.source.yaml;
