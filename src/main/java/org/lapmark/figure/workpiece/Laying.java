package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** How a symbol lies on a piece: from its coordinates to the piece’s. */
public sealed interface Laying {
  /** What makes a path of the symbol one on the piece. */
  UnaryOperator<Path> map();

  /**
   * In its own shape.
   *
   * @param place where it lies
   */
  record Rigid(Affine place) implements Laying {
    /** At a place, its y axis along a direction of length 1. */
    public static Rigid at(Point place, Point way) {
      return new Rigid(new Affine(way.y(), -way.x(), way.x(), way.y(), place.x(), place.y()));
    }

    @Override
    public UnaryOperator<Path> map() {
      return path -> path.transformed(place);
    }
  }

  /**
   * Bent along a line, on beyond its ends as they point.
   *
   * @param line the line, as chords
   * @param start where on the line the symbol begins
   * @param aside how far its middle lies to the line’s right
   */
  record Course(List<Point> line, double start, double aside) implements Laying {
    /** How long chords may be in millimetres. */
    private static final double STEP = 4;

    /** Copies the list. */
    public Course {
      line = List.copyOf(line);
    }

    @Override
    public UnaryOperator<Path> map() {
      double[] lengths = new double[line.size()];
      for (int i = 1; i < lengths.length; i++) {
        lengths[i] = lengths[i - 1] + line.get(i).distance(line.get(i - 1));
      }
      return path -> bent(path, lengths);
    }

    private Path bent(Path path, double[] lengths) {
      List<Point> own = path.flattened(FlatInk.FLATNESS);
      List<Point> bent = new ArrayList<>();
      bent.add(bent(own.get(0), lengths));
      for (int i = 1; i < own.size(); i++) {
        Point a = own.get(i - 1);
        Point b = own.get(i);
        int steps = (int) Math.max(1, Math.ceil(Math.abs(b.y() - a.y()) / STEP));
        for (int k = 1; k <= steps; k++) {
          Point next = bent(a.towards(b, (double) k / steps), lengths);
          if (next.distance(bent.get(bent.size() - 1)) > 1e-9) {
            bent.add(next);
          }
        }
      }
      if (path.isClosed()) {
        bent.set(bent.size() - 1, bent.get(0));
      }
      return Path.polyline(bent);
    }

    private Point bent(Point point, double[] lengths) {
      double at = start + point.y();
      int chord = 1;
      while (chord < lengths.length - 1 && lengths[chord] < at) {
        chord++;
      }
      Point from = line.get(chord - 1);
      Point along = line.get(chord).minus(from).unit();
      double share = (at - lengths[chord - 1]) / (lengths[chord] - lengths[chord - 1]);
      Point turned = way(chord - 1).towards(way(chord), Math.max(0, Math.min(1, share))).unit();
      // The symbol’s x axis points to the left of its way on paper, whose y axis points down.
      Point right = turned.quarterTurn();
      return from.plus(along.times(at - lengths[chord - 1])).plus(right.times(aside - point.x()));
    }

    /** The direction at one of its points, halfway between those of the chords that meet there. */
    private Point way(int at) {
      Point before = line.get(Math.max(0, at - 1));
      Point behind = line.get(Math.min(line.size() - 1, at + 1));
      return behind.minus(before).unit();
    }
  }
}
