package org.lapmark.lay;

import org.lapmark.measure.Value;

/**
 * A width in which a cloth is sold.
 *
 * @param property the property that states it
 * @param stated what is stated: a length or a nominal pair
 * @param usable millimetres: of a pair the smaller, so that a layout is right on either cloth
 */
public record ClothWidth(String property, Value stated, double usable) {}
