package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Path.Place;

/** Cuts parts out of a path, as {@link Path} promises them. */
final class PathPart {
  private PathPart() {}

  static Path ofLengths(Path path, double from, double to) {
    Place first = path.place(from);
    Place last = path.place(to);
    if (last.curve() > first.curve()
        && path.curves().get(last.curve()).lengthTo(last.parameter()) <= Path.ROUNDING) {
      // The join before the last curve belongs to the part, the curve without length doesn't.
      last = new Place(last.curve() - 1, 1);
    }
    return between(path, first, last)
        .orElseThrow(() -> new IllegalArgumentException("a part ends after its start"));
  }

  static Optional<Path> between(Path path, Place from, Place to) {
    List<Curve> parts = new ArrayList<>();
    for (int i = from.curve(); i <= to.curve(); i++) {
      double start = i == from.curve() ? from.parameter() : 0;
      double end = i == to.curve() ? to.parameter() : 1;
      if (end > start) {
        parts.add(
            start == 0 && end == 1 ? path.curves().get(i) : path.curves().get(i).part(start, end));
      }
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(new Path(parts));
  }

  static Path around(Path path, double from, double to) {
    if (to > from) {
      return ofLengths(path, from, to);
    }
    double length = path.length();
    if (length - from <= Path.JOIN_TOLERANCE) {
      return ofLengths(path, 0, to);
    }
    Path tail = ofLengths(path, from, length);
    return to <= Path.JOIN_TOLERANCE ? tail : tail.then(ofLengths(path, 0, to));
  }
}
