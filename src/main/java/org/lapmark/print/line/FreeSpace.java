package org.lapmark.print.line;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.Whole;

/**
 * A map of 0.5 mm cells that tells where on a rectangle nothing has been drawn yet, so that
 * lettering can be put there. Coordinates are those of the rectangle's surroundings.
 */
public final class FreeSpace {
  private static final double CELL = 0.5;

  private final Box area;
  private final int width;
  private final int height;

  /** By rows; a bit a cell, since a map is kept for every tile of a plan. */
  private final BitSet taken;

  public FreeSpace(Box area) {
    this.area = area;
    this.width = Math.max(1, Whole.floor(area.width() / CELL));
    this.height = Math.max(1, Whole.floor(area.height() / CELL));
    this.taken = new BitSet(width * height);
  }

  /** A copy of the part of the map that a box overlaps; whole cells, and one at least. */
  public FreeSpace part(Box box) {
    int left = Math.max(0, Math.min(width - 1, (int) ((box.minX() - area.minX()) / CELL)));
    int top = Math.max(0, Math.min(height - 1, (int) ((box.minY() - area.minY()) / CELL)));
    int right = Math.min(width, Whole.ceil((box.maxX() - area.minX()) / CELL));
    int bottom = Math.min(height, Whole.ceil((box.maxY() - area.minY()) / CELL));
    int partWidth = Math.max(1, right - left);
    int partHeight = Math.max(1, bottom - top);
    FreeSpace part =
        new FreeSpace(
            Box.at(
                area.minX() + left * CELL,
                area.minY() + top * CELL,
                (partWidth + 0.01) * CELL,
                (partHeight + 0.01) * CELL));
    for (int y = 0; y < part.height; y++) {
      int from = (top + y) * width + left;
      int to = y * part.width - from;
      int end = from + part.width;
      int at = taken.nextSetBit(from);
      while (at >= 0 && at < end) {
        int clear = Math.min(end, taken.nextClearBit(at));
        part.taken.set(at + to, clear + to);
        at = taken.nextSetBit(clear);
      }
    }
    return part;
  }

  /** Takes what a line covers, with paper left free around it. */
  public void takeLine(List<Point> points, double clearance) {
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      int steps = Math.max(1, Whole.ceil(a.distance(b) / (2 * CELL)));
      for (int k = 0; k <= steps; k++) {
        Point p = a.towards(b, (double) k / steps);
        takeBox(new Box(p.x(), p.y(), p.x(), p.y()).expanded(clearance));
      }
    }
  }

  /** Takes a box. */
  public void takeBox(Box box) {
    int left = Math.max(0, Whole.floor((box.minX() - area.minX()) / CELL));
    int right = Math.min(width, Whole.ceil((box.maxX() - area.minX()) / CELL));
    int top = Math.max(0, Whole.floor((box.minY() - area.minY()) / CELL));
    int bottom = Math.min(height, Whole.ceil((box.maxY() - area.minY()) / CELL));
    for (int y = top; y < bottom && left < right; y++) {
      taken.set(y * width + left, y * width + right);
    }
  }

  /** The box of a size, inside another that is as large at least, that covers least of the ink. */
  public Box leastTaken(double boxWidth, double boxHeight, Box within) {
    double room = Math.max(0, within.width() - boxWidth);
    double roomBelow = Math.max(0, within.height() - boxHeight);
    int least = Integer.MAX_VALUE;
    Box best = null;
    for (double y = 0; y <= roomBelow; y += CELL) {
      for (double x = 0; x <= room; x += CELL) {
        Box box = Box.at(within.minX() + x, within.minY() + y, boxWidth, boxHeight);
        int taken = takenIn(box);
        if (taken < least) {
          least = taken;
          best = box;
        }
      }
    }
    return best;
  }

  private int takenIn(Box box) {
    int left = Math.max(0, Whole.floor((box.minX() - area.minX()) / CELL));
    int right = Math.min(width, Whole.ceil((box.maxX() - area.minX()) / CELL));
    int top = Math.max(0, Whole.floor((box.minY() - area.minY()) / CELL));
    int bottom = Math.min(height, Whole.ceil((box.maxY() - area.minY()) / CELL));
    int count = 0;
    for (int y = top; y < bottom; y++) {
      int end = y * width + right;
      int at = taken.nextSetBit(y * width + left);
      while (at >= 0 && at < end) {
        int clear = Math.min(end, taken.nextClearBit(at));
        count += clear - at;
        at = taken.nextSetBit(clear);
      }
    }
    return count;
  }

  /** Which cells have their middle inside an outline. */
  public BitSet inside(List<Point> outline) {
    BitSet inside = new BitSet(width * height);
    double[] crossings = new double[outline.size()];
    for (int y = 0; y < height; y++) {
      double level = area.minY() + (y + 0.5) * CELL;
      int count = 0;
      for (int i = 1; i < outline.size(); i++) {
        Point a = outline.get(i - 1);
        Point b = outline.get(i);
        if ((a.y() <= level) != (b.y() <= level)) {
          crossings[count++] = a.x() + (b.x() - a.x()) * (level - a.y()) / (b.y() - a.y());
        }
      }
      java.util.Arrays.sort(crossings, 0, count);
      for (int i = 0; i + 1 < count; i += 2) {
        int from = Math.max(0, Whole.ceil((crossings[i] - area.minX()) / CELL - 0.5));
        int to = Math.min(width, Whole.ceil((crossings[i + 1] - area.minX()) / CELL - 0.5));
        if (from < to) {
          inside.set(y * width + from, y * width + to);
        }
      }
    }
    return inside;
  }

  /**
   * Prepares a search in cells that are free and, where a mask is given, in the mask or outside it.
   */
  public Finder finder(BitSet mask, boolean wanted) {
    BitSet blocked = new BitSet(width * height);
    if (mask != null) {
      blocked.or(mask);
      if (wanted) {
        blocked.flip(0, width * height);
      }
    }
    blocked.or(taken);
    int[] sums = new int[(width + 1) * (height + 1)];
    int[] longest = new int[height];
    for (int y = 0; y < height; y++) {
      int end = (y + 1) * width;
      int at = y * width;
      int above = y * (width + 1) + 1 - at;
      int here = above + width + 1;
      int row = 0;
      int most = 0;
      while (at < end) {
        int next = blocked.nextSetBit(at);
        int free = next < 0 ? end : Math.min(end, next);
        most = Math.max(most, free - at);
        for (; at < free; at++) {
          sums[here + at] = sums[above + at] + row;
        }
        int clear = Math.min(end, blocked.nextClearBit(at));
        for (; at < clear; at++) {
          sums[here + at] = sums[above + at] + ++row;
        }
      }
      longest[y] = most;
    }
    return new Finder(sums, longest);
  }

  /** Finds free boxes; knows the state at which it was made. */
  public final class Finder {
    private final int[] sums;

    /** Per row how many free cells there are side by side at most. */
    private final int[] longest;

    private Finder(int[] sums, int[] longest) {
      this.sums = sums;
      this.longest = longest;
    }

    /**
     * The free box of a size whose middle is nearest to a point.
     *
     * @param boxWidth its width in millimetres
     * @param boxHeight its height in millimetres
     * @param near the point
     * @return the box, or nothing when none is free
     */
    public Optional<Box> find(double boxWidth, double boxHeight, Point near) {
      return find(boxWidth, boxHeight, near, area);
    }

    public Optional<Box> find(double boxWidth, double boxHeight, Point near, Box within) {
      int w = Whole.ceil(boxWidth / CELL);
      int h = Whole.ceil(boxHeight / CELL);
      int left = Math.max(0, Whole.ceil((within.minX() - area.minX()) / CELL - 1e-9));
      int top = Math.max(0, Whole.ceil((within.minY() - area.minY()) / CELL - 1e-9));
      int right = Math.min(width, Whole.floor((within.maxX() - area.minX()) / CELL + 1e-9));
      int bottom = Math.min(height, Whole.floor((within.maxY() - area.minY()) / CELL + 1e-9));
      double best = Double.POSITIVE_INFINITY;
      int bestX = -1;
      int bestY = -1;
      double nearX = (near.x() - area.minX()) / CELL - w / 2.0;
      double nearY = (near.y() - area.minY()) / CELL - h / 2.0;
      // From the nearest row outwards, and in each row from the nearest cell outwards; of places
      // equally near the upper one counts, then the left one.
      int lastTop = bottom - h;
      int lastLeft = right - w;
      int below = Math.max(top, Whole.ceil(nearY));
      int above = Math.min(lastTop, below - 1);
      while (above >= top || below <= lastTop) {
        boolean up = below > lastTop || (above >= top && nearY - above <= below - nearY);
        int y = up ? above-- : below++;
        double dy = (y - nearY) * (y - nearY);
        if (dy > best) {
          if (up) {
            above = top - 1;
          } else {
            below = lastTop + 1;
          }
          continue;
        }
        if (w > longest[y] || w > longest[y + h / 2] || w > longest[y + h - 1]) {
          continue;
        }
        int start = Math.max(left, Whole.ceil(nearX));
        for (int step = 1; step >= -1; step -= 2) {
          int x = step > 0 ? start : Math.min(lastLeft, start - 1);
          for (; x >= left && x <= lastLeft; x += step) {
            double distance = dy + (x - nearX) * (x - nearX);
            if (distance > best || (distance == best && y > bestY)) {
              break;
            }
            if (free(x, y, w, h)) {
              best = distance;
              bestX = x;
              bestY = y;
              break;
            }
          }
        }
      }
      return bestX < 0
          ? Optional.empty()
          : Optional.of(
              Box.at(
                  area.minX() + bestX * CELL + (w * CELL - boxWidth) / 2,
                  area.minY() + bestY * CELL + (h * CELL - boxHeight) / 2,
                  boxWidth,
                  boxHeight));
    }

    /** Whether nothing lies in a box, as far as it is on the map. */
    public boolean isFree(Box box) {
      int left = Math.max(0, Whole.floor((box.minX() - area.minX()) / CELL));
      int right = Math.min(width, Whole.ceil((box.maxX() - area.minX()) / CELL));
      int top = Math.max(0, Whole.floor((box.minY() - area.minY()) / CELL));
      int bottom = Math.min(height, Whole.ceil((box.maxY() - area.minY()) / CELL));
      return left >= right || top >= bottom || free(left, top, right - left, bottom - top);
    }

    private boolean free(int x, int y, int w, int h) {
      int stride = width + 1;
      return sums[(y + h) * stride + x + w]
              - sums[y * stride + x + w]
              - sums[(y + h) * stride + x]
              + sums[y * stride + x]
          == 0;
    }
  }
}
