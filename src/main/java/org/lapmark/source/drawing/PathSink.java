package org.lapmark.source.drawing;

import org.lapmark.geometry.Point;

/** Takes path commands, all coordinates absolute and in user units. */
interface PathSink {
  void moveTo(Point to);

  void lineTo(Point to);

  void quadraticTo(Point control, Point to);

  void cubicTo(Point control1, Point control2, Point to);

  /**
   * An elliptical arc.
   *
   * @param rotation degrees
   */
  void arcTo(
      double radiusX, double radiusY, double rotation, boolean large, boolean clockwise, Point to);

  void close();
}
