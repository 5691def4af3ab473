package org.lapmark.grade;

/**
 * How many of a piece are cut from one material.
 *
 * @param material the material's id
 * @param materialName what readers see
 * @param count how many in all, at least 1
 * @param reversed how many of them with the paper face down, at most {@code count}
 */
public record Cut(String material, String materialName, int count, int reversed) {}
