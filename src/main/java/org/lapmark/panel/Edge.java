package org.lapmark.panel;

import org.lapmark.geometry.Path;

/**
 * One named edge of a panel: the stitching line from one corner to the next.
 *
 * @param name the edge's name, unique in its panel
 * @param from the name of the corner where it begins
 * @param to the name of the corner where it ends
 * @param path the stitching line, travelled clockwise on paper around the panel
 */
public record Edge(String name, String from, String to, Path path) {}
