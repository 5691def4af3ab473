package org.lapmark.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Which stretches of a line lie inside an outline. Every place where a line goes through the
 * outline is found ({@link Crossings}), within 1e-9 mm; what lies between two of them is inside if
 * its middle is. With a margin, what runs outside but no farther off than that counts as inside:
 * where a line leaves the margin is found to rounding, if it stays beyond for 2 mm or for a
 * thirty-second of the way to the next crossing.
 */
public final class Inside {
  private static final double STEP = 2;
  private static final int LEAST_STEPS = 32;
  private static final int MOST_STEPS = 4000;
  private static final int ROUNDS = 60;

  private final Path outline;
  private final double margin;

  /**
   * An outline to look into.
   *
   * @param outline a closed path
   * @param margin how far beyond it, in millimetres, still counts as inside
   */
  public Inside(Path outline, double margin) {
    this.outline = outline;
    this.margin = margin;
  }

  /**
   * A stretch of a line.
   *
   * @param from where on the line it begins
   * @param to where it ends
   * @param path the stretch itself
   */
  public record Stretch(Path.Place from, Path.Place to, Path path) {}

  /**
   * Whether a point lies inside, or within the margin of the outline.
   *
   * @param point the point
   * @return true if it does; without a margin, points on the outline may or may not
   */
  public boolean has(Point point) {
    return outline.encloses(point) || margin > 0 && outline.distance(point) <= margin;
  }

  /**
   * The stretches of a line that lie inside.
   *
   * @param line a closed or open path
   * @return the stretches in order; a closed line's may end and begin again at its start
   */
  public List<Stretch> stretches(Path line) {
    TreeSet<Path.Place> borders = new TreeSet<>();
    Crossings.of(line, outline).forEach(crossing -> borders.add(crossing.first()));
    Path.Place last = new Path.Place(line.curves().size() - 1, 1);
    borders.add(last);
    List<Stretch> found = new ArrayList<>();
    Path.Place begun = null;
    Path.Place before = new Path.Place(0, 0);
    for (Path.Place next : borders) {
      Optional<Path> between = line.between(before, next);
      if (between.isEmpty()) {
        continue;
      }
      double from = line.lengthTo(before);
      double length = between.get().length();
      if (length <= Path.JOIN_TOLERANCE) {
        // Too short to tell on which side it lies; it doesn't part what lies around it.
        continue;
      }
      List<Run> runs = runs(line, before, next, from, length);
      for (Run run : runs) {
        if (run.inside && begun == null) {
          begun = run.from;
        } else if (!run.inside && begun != null) {
          add(line, begun, run.from, found);
          begun = null;
        }
      }
      before = next;
    }
    if (begun != null) {
      add(line, begun, last, found);
    }
    return found;
  }

  private static void add(Path line, Path.Place from, Path.Place to, List<Stretch> found) {
    line.between(from, to).ifPresent(path -> found.add(new Stretch(from, to, path)));
  }

  /** What begins at a place of a line. */
  private record Run(Path.Place from, boolean inside) {}

  /** The stretches between two crossings, by the places where they begin. */
  private List<Run> runs(
      Path line, Path.Place before, Path.Place next, double from, double length) {
    Point middle = line.atLength(from + length / 2);
    if (outline.encloses(middle) || margin > 0 && length <= margin) {
      return List.of(new Run(before, true));
    }
    if (margin == 0 || outline.distance(middle) > margin + length / 2) {
      return List.of(new Run(before, false));
    }
    int steps = (int) Math.max(LEAST_STEPS, Math.min(MOST_STEPS, Math.ceil(length / STEP)));
    List<Run> runs = new ArrayList<>();
    boolean inside = has(line.at(before));
    runs.add(new Run(before, inside));
    for (int i = 1; i <= steps; i++) {
      double here = from + length * i / steps;
      boolean now = has(i == steps ? line.at(next) : line.atLength(here));
      if (now != inside) {
        runs.add(new Run(line.place(border(line, here - length / steps, here, now)), now));
      }
      inside = now;
    }
    return runs;
  }

  /** Where a line comes within the margin or leaves it. */
  private double border(Path line, double from, double to, boolean insideAfter) {
    double low = from;
    double high = to;
    for (int round = 0; round < ROUNDS; round++) {
      double middle = (low + high) / 2;
      if (has(line.atLength(middle)) == insideAfter) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * How much of a line lies outside.
   *
   * @param line a closed or open path
   * @return millimetres; what lies within the margin doesn't count
   */
  public double outside(Path line) {
    double inside = stretches(line).stream().mapToDouble(one -> one.path().length()).sum();
    return Math.max(0, line.length() - inside);
  }

  /**
   * The longest stretch of a straight line that lies inside; the margin doesn't count.
   *
   * @param from where the line begins
   * @param to where it ends
   * @return the stretch, unless all of the line lies outside
   */
  public Optional<Line> longest(Point from, Point to) {
    List<Crossings.OnStraight> crossings = Crossings.straight(outline, from, to.minus(from));
    Line longest = null;
    for (int i = 1; i < crossings.size(); i += 2) {
      double start = Math.max(0, crossings.get(i - 1).along());
      double end = Math.min(1, crossings.get(i).along());
      if (end > start) {
        Line stretch = new Line(from.towards(to, start), from.towards(to, end));
        longest = longest == null || stretch.length() > longest.length() ? stretch : longest;
      }
    }
    return Optional.ofNullable(longest);
  }
}
