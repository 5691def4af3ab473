package org.lapmark.print.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Points on all that is drawn, half a millimetre apart, to find room for words between lines. */
public final class LineObstacles {
  private static final double STEP = 0.5;
  private static final double BIN = 4;

  /** Something without a line of its own. */
  public static final int NOTHING = -1;

  private record Dot(Point point, int line, double at) {}

  private final Map<Long, List<Dot>> bins = new LinkedHashMap<>();

  /** A box that may be turned: lettering on a line. */
  public record Slot(Point centre, Point along, double halfLength, double halfHeight) {
    /** How far a point lies outside, in millimetres; 0 or less inside. */
    double outside(Point point) {
      Point from = point.minus(centre);
      double along1 = Math.abs(from.dot(along)) - halfLength;
      double across = Math.abs(from.cross(along)) - halfHeight;
      return along1 > 0 && across > 0
          ? Math.sqrt(along1 * along1 + across * across)
          : Math.max(along1, across);
    }

    public List<Point> corners() {
      Point x = along.times(halfLength);
      Point y = along.quarterTurn().times(halfHeight);
      return List.of(
          centre.plus(x).plus(y),
          centre.plus(x).minus(y),
          centre.minus(x).minus(y),
          centre.minus(x).plus(y));
    }

    public Box box() {
      Box box = new Box(centre.x(), centre.y(), centre.x(), centre.y());
      for (Point corner : corners()) {
        box = box.union(new Box(corner.x(), corner.y(), corner.x(), corner.y()));
      }
      return box;
    }
  }

  /** Adds a line; its number tells it from the others. */
  public void add(Path path, int line) {
    double length = path.length();
    int steps = (int) Math.max(1, Math.ceil(length / STEP));
    for (int i = 0; i <= steps; i++) {
      double at = length * i / steps;
      add(path.atLength(at), line, at);
    }
  }

  /** Adds what a slot covers. */
  public void add(Slot slot) {
    int wide = (int) Math.ceil(slot.halfLength() / STEP);
    int high = (int) Math.ceil(slot.halfHeight() / STEP);
    for (int i = -wide; i <= wide; i++) {
      for (int k = -high; k <= high; k++) {
        Point x = slot.along().times(slot.halfLength() * i / wide);
        Point y = slot.along().quarterTurn().times(slot.halfHeight() * k / high);
        add(slot.centre().plus(x).plus(y), NOTHING, 0);
      }
    }
  }

  private void add(Point point, int line, double at) {
    bins.computeIfAbsent(key(bin(point.x()), bin(point.y())), unused -> new ArrayList<>())
        .add(new Dot(point, line, at));
  }

  private static int bin(double place) {
    return (int) Math.floor(place / BIN);
  }

  private static long key(int x, int y) {
    return ((long) x << 32) ^ (y & 0xffffffffL);
  }

  /**
   * How far the nearest line lies from a slot.
   *
   * @param slot the slot
   * @param most farther isn't looked
   * @param line the line on which the slot lies, or {@link #NOTHING}
   * @param at where on that line its middle is
   * @param length the length of that line if it is closed; 0 otherwise
   * @return millimetres, at most {@code most}; 0 or less where something lies in the slot
   */
  public double clearance(Slot slot, double most, int line, double at, double length) {
    double least = most;
    double own = slot.halfLength() + STEP;
    Box box = slot.box().expanded(most);
    for (int x = bin(box.minX()); x <= bin(box.maxX()); x++) {
      for (int y = bin(box.minY()); y <= bin(box.maxY()); y++) {
        for (Dot dot : bins.getOrDefault(key(x, y), List.of())) {
          if (line != NOTHING && dot.line == line) {
            double away = Math.abs(dot.at - at);
            // The line itself is interrupted for the slot; only another stretch of it is in the
            // way.
            if (Math.min(away, Math.abs(length - away)) <= own + most + STEP) {
              continue;
            }
          }
          least = Math.min(least, slot.outside(dot.point));
        }
      }
    }
    return least;
  }
}
