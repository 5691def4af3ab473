package org.lapmark.print.line;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Finds what several sizes' lines have in common, so that it can be drawn once.
 *
 * <p>Lines are cut where a curve of their own or of another line ends. As each curve is analytic,
 * two lines either run on each other all the way between two such cuts, or meet in single points;
 * some points inside the stretch tell which.
 */
public final class CommonLines {
  /**
   * How far lines may be apart, in millimetres, to count as one. What is drawn instead of a line is
   * therefore no further from it.
   */
  static final double TOLERANCE = 0.0015;

  /** Stretches shorter than this, in millimetres, go with the one before. */
  private static final double SHORTEST = 0.002;

  private static final double[] SAMPLES = {0.5, 0.03, 0.97, 0.25, 0.75, 0.38, 0.62};

  private CommonLines() {}

  /**
   * A line of one size.
   *
   * @param owner the size
   * @param path where it runs
   */
  public record Owned(int owner, Path path) {}

  /**
   * A stretch of line.
   *
   * @param owners the sizes that it belongs to, ascending
   * @param path where it runs: as the first of them has it
   */
  public record Shared(List<Integer> owners, Path path) {}

  /** Cuts lines, given by ascending owners, into stretches; none is given twice. */
  public static List<Shared> of(List<Owned> lines) {
    List<Shared> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Owned line = lines.get(i);
      List<Shared> own = new ArrayList<>();
      List<Double> cuts = cuts(lines, i);
      List<List<Integer>> owners = new ArrayList<>();
      for (int k = 0; k + 1 < cuts.size(); k++) {
        List<Point> samples = samples(line.path(), cuts.get(k), cuts.get(k + 1));
        owners.add(drawn(found, line.owner(), samples) ? List.of() : owners(lines, i, samples));
      }
      int from = 0;
      for (int k = 1; k <= owners.size(); k++) {
        if (k == owners.size() || !owners.get(k).equals(owners.get(from))) {
          if (!owners.get(from).isEmpty()) {
            boolean all = from == 0 && k == owners.size();
            own.add(
                new Shared(
                    owners.get(from),
                    all ? line.path() : line.path().part(cuts.get(from), cuts.get(k))));
          }
          from = k;
        }
      }
      found.addAll(closed(own, line.path()));
    }
    return found;
  }

  /** Joins the last stretch of a closed line with the first where both are of the same sizes. */
  private static List<Shared> closed(List<Shared> own, Path path) {
    int last = own.size() - 1;
    if (last < 1
        || !path.isClosed()
        || !own.get(0).owners().equals(own.get(last).owners())
        || own.get(0).path().start().distance(path.start()) > Path.JOIN_TOLERANCE
        || own.get(last).path().end().distance(path.end()) > Path.JOIN_TOLERANCE) {
      return own;
    }
    List<Shared> joined = new ArrayList<>(own.subList(1, last));
    joined.add(new Shared(own.get(0).owners(), own.get(last).path().then(own.get(0).path())));
    return joined;
  }

  private static List<Double> cuts(List<Owned> lines, int index) {
    Path path = lines.get(index).path();
    TreeSet<Double> places = new TreeSet<>();
    double length = 0;
    for (Curve curve : path.curves()) {
      places.add(length);
      length += curve.length();
    }
    Box near = path.bounds().expanded(TOLERANCE);
    for (int j = 0; j < lines.size(); j++) {
      if (j == index || lines.get(j).owner() == lines.get(index).owner()) {
        continue;
      }
      for (Curve curve : lines.get(j).path().curves()) {
        for (Point end : List.of(curve.start(), curve.end())) {
          if (near.contains(end) && isOn(path, end)) {
            places.add(path.nearestLength(end));
          }
        }
      }
    }
    List<Double> cuts = new ArrayList<>();
    for (double place : places) {
      if (cuts.isEmpty() || place - cuts.get(cuts.size() - 1) > SHORTEST) {
        cuts.add(place);
      }
    }
    if (cuts.size() > 1 && length - cuts.get(cuts.size() - 1) <= SHORTEST) {
      cuts.remove(cuts.size() - 1);
    }
    cuts.add(length);
    return cuts;
  }

  private static List<Point> samples(Path path, double from, double to) {
    List<Point> points = new ArrayList<>();
    for (double share : SAMPLES) {
      points.add(path.atLength(from + share * (to - from)));
    }
    return points;
  }

  private static boolean drawn(List<Shared> found, int owner, List<Point> samples) {
    for (Point point : samples) {
      boolean on = false;
      for (Shared shared : found) {
        if (shared.owners().contains(owner) && isOn(shared.path(), point)) {
          on = true;
          break;
        }
      }
      if (!on) {
        return false;
      }
    }
    return true;
  }

  private static List<Integer> owners(List<Owned> lines, int index, List<Point> samples) {
    TreeSet<Integer> owners = new TreeSet<>();
    owners.add(lines.get(index).owner());
    for (int j = index + 1; j < lines.size(); j++) {
      Owned other = lines.get(j);
      if (!owners.contains(other.owner())
          && samples.stream().allMatch(point -> isOn(other.path(), point))) {
        owners.add(other.owner());
      }
    }
    return List.copyOf(owners);
  }

  /** Whether a point lies on a path; curves whose boxes are elsewhere aren't asked. */
  private static boolean isOn(Path path, Point point) {
    for (Curve curve : path.curves()) {
      if (curve.bounds().expanded(TOLERANCE).contains(point)
          && curve.at(curve.nearest(point)).distance(point) <= TOLERANCE) {
        return true;
      }
    }
    return false;
  }
}
