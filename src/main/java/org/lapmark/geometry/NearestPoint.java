package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Finds the nearest point of a curve by halving: between two parameters a curve strays from its
 * chord by at most an eighth of the squared step times the greatest second derivative, which bounds
 * the distance from below and lets most intervals be given up at once.
 */
final class NearestPoint {
  private static final int START = 8;
  private static final int KEPT = 48;

  private record Span(double from, double to, Point start, Point end, double atLeast) {}

  private NearestPoint() {}

  static double parameter(Curve curve, Point point) {
    double bend = curve.greatestBend();
    double best = 0;
    double bestDistance = curve.start().distance(point);
    List<Span> spans = new ArrayList<>();
    Point before = curve.start();
    for (int i = 1; i <= START; i++) {
      double t = (double) i / START;
      Point here = curve.at(t);
      double distance = here.distance(point);
      if (distance < bestDistance) {
        best = t;
        bestDistance = distance;
      }
      spans.add(span((i - 1.0) / START, t, before, here, point, bend));
      before = here;
    }
    for (int depth = 0; depth < 40 && !spans.isEmpty(); depth++) {
      List<Span> halves = new ArrayList<>();
      for (Span span : spans) {
        if (span.atLeast >= bestDistance - 1e-8) {
          continue;
        }
        double middle = (span.from + span.to) / 2;
        Point here = curve.at(middle);
        double distance = here.distance(point);
        if (distance < bestDistance) {
          best = middle;
          bestDistance = distance;
        }
        halves.add(span(span.from, middle, span.start, here, point, bend));
        halves.add(span(middle, span.to, here, span.end, point, bend));
      }
      // Only a point about equally far from a whole stretch of curve can leave many of them.
      if (halves.size() > KEPT) {
        halves.sort(Comparator.comparingDouble(Span::atLeast).thenComparingDouble(Span::from));
        halves = new ArrayList<>(halves.subList(0, KEPT));
      }
      spans = halves;
    }
    return polished(curve, point, best, bestDistance);
  }

  /** Newton's rule on the derivative of the squared distance, as long as it brings us nearer. */
  private static double polished(Curve curve, Point point, double start, double startDistance) {
    double t = start;
    double distance = startDistance;
    for (int round = 0; round < 8; round++) {
      Point away = curve.at(t).minus(point);
      Point first = curve.derivative(t);
      double slope = away.dot(first);
      double rise = first.dot(first) + away.dot(curve.secondDerivative(t));
      if (rise <= 0) {
        break;
      }
      double next = Math.max(0, Math.min(1, t - slope / rise));
      double nextDistance = curve.at(next).distance(point);
      if (nextDistance > distance + 1e-13 || next == t) {
        break;
      }
      t = next;
      distance = nextDistance;
    }
    return t;
  }

  private static Span span(
      double from, double to, Point start, Point end, Point point, double bend) {
    double step = to - from;
    Line line = new Line(start, end);
    Point chord = line.at(line.nearest(point));
    return new Span(from, to, start, end, chord.distance(point) - step * step * bend / 8);
  }
}
