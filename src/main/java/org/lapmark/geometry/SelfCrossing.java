package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Looks for crossings of a path with itself on its chords, by exact orientation tests. */
final class SelfCrossing {
  private static final double CHORD = 1e-3;

  private SelfCrossing() {}

  static Optional<Point> first(Path path) {
    List<Coordinate> points = new ArrayList<>();
    for (Point point : path.flattened(CHORD)) {
      Coordinate next = new Coordinate(point.x(), point.y());
      if (points.isEmpty() || points.get(points.size() - 1).distance(next) > Path.JOIN_TOLERANCE) {
        points.add(next);
      }
    }
    int chords = points.size() - 1;
    if (path.isClosed() && chords > 0) {
      points.set(chords, points.get(0));
    }
    return new Chords(points, path.isClosed()).firstCrossing();
  }

  /** Chords in groups of neighbours: few boxes have to be held against each other. */
  private static final class Chords {
    private static final int GROUP = 12;

    private final List<Coordinate> points;
    private final boolean closed;
    private final Envelope[] boxes;
    private final Envelope[] groups;

    Chords(List<Coordinate> points, boolean closed) {
      this.points = points;
      this.closed = closed;
      this.boxes = new Envelope[Math.max(0, points.size() - 1)];
      this.groups = new Envelope[(boxes.length + GROUP - 1) / GROUP];
      for (int i = 0; i < boxes.length; i++) {
        boxes[i] = new Envelope(points.get(i), points.get(i + 1));
        if (i % GROUP == 0) {
          groups[i / GROUP] = new Envelope();
        }
        groups[i / GROUP].expandToInclude(boxes[i]);
      }
    }

    Optional<Point> firstCrossing() {
      STRtree tree = new STRtree();
      for (int group = 0; group < groups.length; group++) {
        tree.insert(groups[group], group);
      }
      for (int group = 0; group < groups.length; group++) {
        List<?> near = tree.query(groups[group]);
        int end = Math.min(boxes.length, (group + 1) * GROUP);
        for (int i = group * GROUP; i < end; i++) {
          int least = Integer.MAX_VALUE;
          for (Object found : near) {
            least = Math.min(least, first(i, (Integer) found));
          }
          if (least < Integer.MAX_VALUE) {
            return Optional.of(meeting(points, i, least));
          }
        }
      }
      return Optional.empty();
    }

    /** The first later chord of a group that meets a chord. */
    private int first(int i, int group) {
      if (groups[group].intersects(boxes[i])) {
        int end = Math.min(boxes.length, (group + 1) * GROUP);
        for (int j = Math.max(i + 1, group * GROUP); j < end; j++) {
          if (boxes[j].intersects(boxes[i]) && meets(points, i, j, closed)) {
            return j;
          }
        }
      }
      return Integer.MAX_VALUE;
    }
  }

  private static boolean meets(List<Coordinate> points, int i, int j, boolean closed) {
    Coordinate a = points.get(i);
    Coordinate b = points.get(i + 1);
    Coordinate c = points.get(j);
    Coordinate d = points.get(j + 1);
    int chords = points.size() - 1;
    if (j == i + 1 && chords > 1) {
      return turnsBack(a, b, d);
    }
    if (closed && i == 0 && j == chords - 1) {
      return turnsBack(c, a, b);
    }
    int c1 = Orientation.index(a, b, c);
    int d1 = Orientation.index(a, b, d);
    int a1 = Orientation.index(c, d, a);
    int b1 = Orientation.index(c, d, b);
    if (c1 * d1 > 0 || a1 * b1 > 0) {
      return false;
    }
    // On one line the envelopes decide, and those of the tree's answer overlap.
    return true;
  }

  private static boolean turnsBack(Coordinate a, Coordinate corner, Coordinate b) {
    double dot = (a.x - corner.x) * (b.x - corner.x) + (a.y - corner.y) * (b.y - corner.y);
    return dot > 0 && Orientation.index(a, corner, b) == Orientation.COLLINEAR;
  }

  private static Point meeting(List<Coordinate> points, int i, int j) {
    Point a = point(points.get(i));
    Point along = point(points.get(i + 1)).minus(a);
    Point c = point(points.get(j));
    Point across = point(points.get(j + 1)).minus(c);
    double cross = along.cross(across);
    if (cross == 0) {
      return point(points.get(i + 1));
    }
    double t = c.minus(a).cross(across) / cross;
    return a.plus(along.times(Math.max(0, Math.min(1, t))));
  }

  private static Point point(Coordinate coordinate) {
    return new Point(coordinate.x, coordinate.y);
  }
}
