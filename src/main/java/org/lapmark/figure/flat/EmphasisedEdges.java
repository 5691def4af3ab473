package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Edges that stand out.
 *
 * @param paths their raw edges, in the piece's coordinates
 * @param now whether it is what the step is about
 * @param words a label
 */
record EmphasisedEdges(List<Path> paths, boolean now, Optional<String> words) implements Detail {
  EmphasisedEdges {
    paths = List.copyOf(paths);
  }

  private List<Path> on(PlacedBody laid) {
    return paths.stream().map(path -> path.transformed(laid.map())).toList();
  }

  /** Points by which it is judged whether anything is seen. */
  List<Point> points(PlacedBody laid) {
    List<Point> points = new ArrayList<>();
    on(laid).forEach(path -> points.addAll(path.flattened(FlatInk.FLATNESS)));
    return points;
  }

  /** Where a label may point. */
  List<Point> anchors(PlacedBody laid) {
    List<Point> places = new ArrayList<>();
    for (Path path : on(laid)) {
      double length = path.length();
      for (int i = 1; i < 12; i++) {
        places.add(path.atLength(length * i / 12));
      }
    }
    return places.stream().filter(point -> !laid.hides(point)).toList();
  }

  @Override
  public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
    ink.canvas().lines(seen(laid, on(laid)), "figure-edge" + (now ? "-now" : ""));
    words.ifPresent(text -> ink.canvas().wish(text, anchors(laid), null));
  }

  /** The parts of lines that aren't left out. */
  private static List<Path> seen(PlacedBody laid, List<Path> paths) {
    if (laid.cuts().isEmpty()) {
      return paths;
    }
    List<Path> seen = new ArrayList<>();
    for (Path path : paths) {
      List<Point> run = new ArrayList<>();
      // Steps short enough for the place where the rest is left out.
      int steps = (int) Math.max(1, Math.ceil(path.length() / 0.25));
      for (int i = 0; i <= steps; i++) {
        Point point = path.atLength(path.length() * i / steps);
        if (!laid.hides(point)) {
          run.add(point);
        }
        if (run.size() > 1 && (i == steps || laid.hides(point))) {
          seen.add(Path.polyline(run));
        }
        if (laid.hides(point)) {
          run.clear();
        }
      }
    }
    return seen;
  }

  @Override
  public Optional<String> inWords(Words sentences) {
    return Optional.empty();
  }
}
