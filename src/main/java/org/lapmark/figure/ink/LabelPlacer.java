package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * Finds a place for every label of a figure: clear of lines and of other lettering, with straight
 * leaders that cross neither each other nor any lettering.
 *
 * <p>For each label the cheapest places are listed, the longer the leader and the more lines it
 * crosses the dearer. Then each label in turn takes the place that conflicts least with the others,
 * until nothing changes. The order is fixed and so is the result.
 */
public final class LabelPlacer {
  /** What a label keeps clear of lines, in millimetres. */
  static final double CLEAR = 1.2;

  static final double RING = 4;
  private static final double STEP = 1.5;
  private static final double LONGEST_LINE = 44;
  private static final int CANDIDATES = 90;
  private static final int PASSES = 40;
  private static final double CONFLICT = 1000;
  private static final double SHORTEST_LEADER = 2.5;

  private final Canvas canvas;
  private final Box frame;
  private final Raster drawn;
  private final Raster filled;

  /**
   * A placer for one canvas.
   *
   * @param canvas what is drawn, with its wishes for labels
   * @param frame where labels may stand
   */
  public LabelPlacer(Canvas canvas, Box frame) {
    this.canvas = canvas;
    this.frame = frame;
    this.drawn = Raster.ofLines(frame, canvas.lines());
    this.filled = Raster.ofShapes(frame, canvas.covered());
  }

  /**
   * Places all labels.
   *
   * @param anchors the points that each label may name
   * @return the labels, or nothing when they can't be kept apart
   */
  public Optional<List<PlacedLabel>> place(List<List<Point>> anchors) {
    List<List<PlacedLabel>> candidates = new ArrayList<>();
    for (int i = 0; i < canvas.wishes().size(); i++) {
      List<PlacedLabel> found = candidates(canvas.wishes().get(i), anchors.get(i));
      if (found.isEmpty()) {
        return Optional.empty();
      }
      candidates.add(found);
    }
    int[] chosen = new int[candidates.size()];
    java.util.Arrays.fill(chosen, -1);
    for (int pass = 0; pass < PASSES; pass++) {
      boolean changed = false;
      for (int i = 0; i < chosen.length; i++) {
        int best = cheapest(candidates, chosen, i);
        changed |= best != chosen[i];
        chosen[i] = best;
      }
      if (!changed) {
        break;
      }
    }
    List<PlacedLabel> placed = new ArrayList<>();
    for (int i = 0; i < chosen.length; i++) {
      placed.add(candidates.get(i).get(chosen[i]));
    }
    for (int i = 0; i < placed.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (placed.get(i).conflicts(placed.get(j))) {
          return Optional.empty();
        }
      }
    }
    return Optional.of(placed);
  }

  private static int cheapest(List<List<PlacedLabel>> candidates, int[] chosen, int label) {
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    List<PlacedLabel> own = candidates.get(label);
    for (int i = 0; i < own.size(); i++) {
      double cost = own.get(i).cost();
      for (int other = 0; other < chosen.length && cost < least; other++) {
        if (other != label
            && chosen[other] >= 0
            && own.get(i).conflicts(candidates.get(other).get(chosen[other]))) {
          cost += CONFLICT;
        }
      }
      if (cost < least) {
        least = cost;
        best = i;
      }
    }
    return best;
  }

  private List<PlacedLabel> candidates(Canvas.Wish wish, List<Point> anchors) {
    List<PlacedLabel> all = new ArrayList<>();
    for (List<String> lines : wrapped(wish)) {
      double width = wish.ring() ? RING : lines.stream().mapToDouble(canvas::width).max().orElse(0);
      double height =
          wish.ring() ? RING : canvas.lineHeight() + (lines.size() - 1) * canvas.leading();
      double extra = (lines.size() - 1) * 1.5;
      for (double y = frame.minY() + 0.5; y + height <= frame.maxY() - 0.5; y += STEP) {
        for (double x = frame.minX() + 0.5; x + width <= frame.maxX() - 0.5; x += STEP) {
          PlacedLabel placed = candidate(wish, anchors, lines, Box.at(x, y, width, height), extra);
          if (placed != null) {
            all.add(placed);
          }
        }
      }
    }
    all.sort(Comparator.comparingDouble(PlacedLabel::cost));
    List<PlacedLabel> kept = new ArrayList<>();
    for (PlacedLabel candidate : all) {
      if (kept.size() == CANDIDATES) {
        break;
      }
      if ((kept.size() < 12 || fresh(candidate, kept)) && !covered(candidate)) {
        kept.add(priced(candidate));
      }
    }
    kept.sort(Comparator.comparingDouble(PlacedLabel::cost));
    return kept;
  }

  /** Whether no other place of as many lines is nearly the same. Asked some thousand times. */
  private static boolean fresh(PlacedLabel candidate, List<PlacedLabel> kept) {
    for (int i = 0; i < kept.size(); i++) {
      PlacedLabel other = kept.get(i);
      if (Math.abs(other.box().minX() - candidate.box().minX()) < 2.9
          && Math.abs(other.box().minY() - candidate.box().minY()) < 2.9
          && other.lines().size() == candidate.lines().size()) {
        return false;
      }
    }
    return true;
  }

  private boolean covered(PlacedLabel placed) {
    return placed.start() != null
        && canvas.texts().stream()
            .anyMatch(text -> Canvas.crosses(text.expanded(0.6), placed.start(), placed.anchor()));
  }

  private PlacedLabel priced(PlacedLabel placed) {
    if (placed.start() == null) {
      return placed;
    }
    double cost = placed.cost() + 2.5 * crossings(placed.start(), placed.anchor());
    return placed.costing(cost);
  }

  /** The text in one line, and in two or three of like width where it is long. */
  private List<List<String>> wrapped(Canvas.Wish wish) {
    List<List<String>> ways = new ArrayList<>();
    double width = canvas.width(wish.text());
    if (wish.ring() || width <= LONGEST_LINE) {
      ways.add(List.of(wish.text()));
    }
    if (!wish.ring()) {
      for (int count = 2; count <= 3; count++) {
        if (width > 15 * count) {
          List<String> lines = divided(wish.text(), width / count);
          if (lines.size() == count) {
            ways.add(lines);
          }
        }
      }
      if (ways.isEmpty()) {
        ways.add(divided(wish.text(), LONGEST_LINE));
      }
    }
    return ways;
  }

  private List<String> divided(String text, double target) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      // A word goes where it leaves the line nearer to the target.
      if (!line.isEmpty()
          && canvas.width(longer) - target > target - canvas.width(line.toString())) {
        lines.add(line.toString());
        line = new StringBuilder(word);
      } else {
        line = new StringBuilder(longer);
      }
    }
    lines.add(line.toString());
    return lines;
  }

  private PlacedLabel candidate(
      Canvas.Wish wish, List<Point> anchors, List<String> lines, Box box, double extra) {
    Box clear = box.expanded(CLEAR);
    if (drawn.count(clear) > 0) {
      return null;
    }
    for (Box other : canvas.texts()) {
      if (other.expanded(CLEAR).overlaps(box)) {
        return null;
      }
    }
    // No line runs through the box, so that all of it is where its middle is.
    if (wish.home() != null && wish.home().test(box.centre())) {
      // At home a label stands as near as it can to the first point.
      double off = anchors.isEmpty() ? 0 : box.centre().distance(anchors.get(0));
      return new PlacedLabel(wish, lines, box, null, null, extra + 0.2 * off);
    }
    PlacedLabel best = null;
    double least = Double.POSITIVE_INFINITY;
    double texture = 14.0 * filled.area(clear) / (clear.width() * clear.height());
    for (int i = 0; i < anchors.size(); i++) {
      Point anchor = anchors.get(i);
      if (clear.contains(anchor)) {
        continue;
      }
      Point start = start(box, anchor, wish.ring());
      double length = start.distance(anchor);
      double cost = length + extra + texture + 0.3 * i + slant(start, anchor) + 5;
      if (length >= SHORTEST_LEADER && cost < least) {
        least = cost;
        best = new PlacedLabel(wish, lines, box, start, anchor, cost);
      }
    }
    return best;
  }

  /** Leaders that run steeply from the side of a line of text look torn off. */
  private static double slant(Point start, Point anchor) {
    double x = Math.abs(anchor.x() - start.x());
    double y = Math.abs(anchor.y() - start.y());
    return Math.min(x, y) * 0.15;
  }

  /** Where the leader leaves the lettering: at one of its ends, or above or below its middle. */
  private static Point start(Box box, Point anchor, boolean ring) {
    if (ring) {
      Point out = anchor.minus(box.centre()).unit();
      return box.centre().plus(out.times(RING / 2));
    }
    double gap = 0.9;
    double middle = box.centre().y();
    if (anchor.x() < box.minX() - 1.5) {
      return new Point(box.minX() - gap, middle);
    }
    if (anchor.x() > box.maxX() + 1.5) {
      return new Point(box.maxX() + gap, middle);
    }
    double inset = Math.min(3, box.width() / 3);
    double x = Math.max(box.minX() + inset, Math.min(box.maxX() - inset, anchor.x()));
    return new Point(x, anchor.y() < middle ? box.minY() - 0.4 : box.maxY() + 0.4);
  }

  private int crossings(Point start, Point anchor) {
    int crossed = 0;
    for (Canvas.Stretch stretch : canvas.lines()) {
      if (Polygons.side(start, anchor, stretch.from()) * Polygons.side(start, anchor, stretch.to())
              < 0
          && Polygons.side(stretch.from(), stretch.to(), start)
                  * Polygons.side(stretch.from(), stretch.to(), anchor)
              < 0
          && Polygons.distance(anchor, stretch.from(), stretch.to()) > 0.3) {
        crossed++;
      }
    }
    return crossed;
  }
}
