package org.lapmark.grade;

import org.lapmark.measure.Variant;

/**
 * A choice that a variant can't be changed to, all its other choices staying.
 *
 * @param option the option's name
 * @param choice the choice's id
 * @param variant the variant that can't be made
 */
public record Refusal(String option, String choice, Variant variant) {}
