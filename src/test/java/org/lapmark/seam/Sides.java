package org.lapmark.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Sides for the tests. */
final class Sides {
  private Sides() {}

  /** A straight part with single notches. */
  static SeamPart straight(String panel, double length, double... notches) {
    List<SeamPart.Notch> list = new ArrayList<>();
    for (double at : notches) {
      list.add(new SeamPart.Notch(at, 1));
    }
    Path line = new Path(List.of(new Line(new Point(0, 0), new Point(length, 0))));
    return part(panel, line, true, list);
  }

  /** An arc of a circle, convex for its panel where it is travelled clockwise. */
  static SeamPart arc(String panel, double radius, double degrees, boolean clockwise) {
    double sweep = StrictMath.toRadians(degrees);
    Path arc =
        new Path(
            List.of(
                Arc.ofCircle(
                    new Point(0, 0), radius, clockwise ? 0 : sweep, clockwise ? sweep : -sweep)));
    return part(panel, arc, clockwise, List.of());
  }

  static SeamPart part(String panel, Path path, boolean clockwise, List<SeamPart.Notch> notches) {
    return new SeamPart(
        panel,
        panel + ".edge",
        Optional.of(path),
        clockwise,
        path.length(),
        List.of(10.0),
        notches,
        1);
  }

  static SeamSide side(SeamPart... parts) {
    return SeamSide.of(List.of(parts));
  }

  static SeamSide eased(double ease, SeamPart... parts) {
    return new SeamSide("", List.of(parts), List.of(), ease, List.of());
  }

  static WalkedSeam seam(boolean closed, SeamSide... sides) {
    return new WalkedSeam("seam", closed, List.of(sides), 0.5, false, List.of());
  }
}
