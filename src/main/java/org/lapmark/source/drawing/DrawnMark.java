package org.lapmark.source.drawing;

import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Something that is drawn and has a name.
 *
 * @param name its name; empty for what has none
 * @param point the point that it marks, or where its line begins
 * @param path its line, or null for a point
 */
public record DrawnMark(String name, Point point, Path path) {
  static DrawnMark line(String name, Path path) {
    return new DrawnMark(name, path.start(), path);
  }

  /** The same elsewhere. */
  public DrawnMark transformed(Affine map) {
    return new DrawnMark(name, map.apply(point), path == null ? null : path.transformed(map));
  }
}
