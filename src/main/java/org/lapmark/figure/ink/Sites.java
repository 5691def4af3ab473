package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/**
 * The places in one frame where a label may stand: clear of lines and of lettering. The longer a
 * leader and the more lines it crosses, the dearer is a place. Some ten thousand are looked at for
 * each label, so that they are numbers until one is kept.
 */
final class Sites {
  private static final double STEP = 1.5;
  private static final double BORDER = 0.5;
  private static final int KEPT = 90;

  /** So many of the cheapest are kept even where they are nearly the same. */
  private static final int ALIKE = 12;

  private static final double SHORTEST_LEADER = 2.5;
  private static final double LEADER = 5;
  private static final double TEXTURE = 14;
  private static final double CROSSING = 2.5;
  private static final double LATER_ANCHOR = 0.3;
  private static final double BROKEN_LINE = 1.5;
  private static final double FROM_HOME = 0.2;
  private static final double SLANT = 0.15;

  /** Between lettering and its leader. */
  private static final double GAP = 0.9;

  private static final double GAP_ABOVE = 0.4;

  /** A point so far beside lettering has its leader at the end of a line. */
  private static final double ASIDE = 1.5;

  /** The number of an anchor that stands for none: a label at home. */
  private static final int HOME = -1;

  private final Canvas canvas;
  private final Box frame;
  private final Raster drawn;
  private final Raster filled;
  private final Stretches stretches;
  private final List<Box> keptClear = new ArrayList<>();
  private final List<Box> uncrossed = new ArrayList<>();

  Sites(Canvas canvas, Box frame) {
    this.canvas = canvas;
    this.frame = frame;
    this.drawn = Raster.ofLines(frame, canvas.lines());
    this.filled = Raster.ofShapes(frame, canvas.covered());
    this.stretches = new Stretches(canvas.lines());
    for (Box text : canvas.texts()) {
      keptClear.add(text.expanded(LabelPlacer.CLEAR));
      uncrossed.add(text.expanded(0.6));
    }
  }

  /** What any place for a label costs at least, wherever it is. */
  static double least(Canvas.Wish wish) {
    return wish.home() == null ? LEADER + SHORTEST_LEADER : 0;
  }

  /** All free places of a label; nothing is known of their leaders yet but how long they are. */
  record Free(List<Survey> surveys, Cheapest cheapest) {
    /** What any of them costs at least; infinitely much where there is none. */
    double least() {
      return cheapest.least();
    }
  }

  /**
   * The free places of a label.
   *
   * @param wish the label
   * @param anchors the points that it may name
   */
  Free free(Canvas.Wish wish, List<Point> anchors) {
    Free free = new Free(new ArrayList<>(), new Cheapest());
    for (List<String> lines : LineBreaks.of(wish, canvas)) {
      Survey survey = new Survey(wish, anchors, lines, free.surveys.size());
      free.surveys.add(survey);
      survey.look(free.cheapest);
    }
    return free;
  }

  /** The cheapest of free places, at most ninety, in the order of their cost; only once. */
  List<PlacedLabel> cheapest(Free free) {
    List<Survey> surveys = free.surveys;
    Cheapest cheapest = free.cheapest;
    Taken taken = new Taken();
    List<PlacedLabel> kept = new ArrayList<>();
    while (kept.size() < KEPT && !cheapest.isEmpty()) {
      int place = cheapest.take();
      Survey survey = surveys.get(cheapest.survey(place));
      int column = cheapest.column(place);
      int row = cheapest.row(place);
      if (kept.size() >= ALIKE && taken.isNear(survey.lines.size(), column, row)) {
        continue;
      }
      PlacedLabel label = survey.label(cheapest, place);
      if (!isUnfit(label)) {
        taken.add(survey.lines.size(), column, row);
        kept.add(priced(label));
      }
    }
    kept.sort(Comparator.comparingDouble(PlacedLabel::cost));
    return kept;
  }

  private boolean isUnfit(PlacedLabel placed) {
    return placed.start() != null
        && (uncrossed.stream()
                .anyMatch(text -> Polygons.crosses(text, placed.start(), placed.anchor()))
            || stretches.runsAlong(placed.start(), placed.anchor()));
  }

  private PlacedLabel priced(PlacedLabel placed) {
    return placed.start() == null
        ? placed
        : placed.costing(
            placed.cost() + CROSSING * stretches.crossed(placed.start(), placed.anchor()));
  }

  /** Where places of a like number of lines have been kept. */
  private final class Taken {
    /** Two places are nearly the same when they are a step apart, or on one another. */
    private final List<BitSet> near = new ArrayList<>();

    /** So many places stand in a row, with one beside either end. */
    private final int across = 3 + (int) (frame.width() / STEP);

    void add(int lines, int column, int row) {
      while (near.size() <= lines) {
        near.add(new BitSet());
      }
      for (int down = -1; down <= 1; down++) {
        int place = place(column, row + down);
        near.get(lines).set(place - 1, place + 2);
      }
    }

    boolean isNear(int lines, int column, int row) {
      return lines < near.size() && near.get(lines).get(place(column, row));
    }

    private int place(int column, int row) {
      return (row + 1) * across + column + 1;
    }
  }

  /** A look at every place for a label broken into lines in one way. */
  private final class Survey {
    private final Canvas.Wish wish;
    private final List<Point> anchors;
    private final List<String> lines;
    private final int number;
    private final double width;
    private final double height;
    private final double extra;
    private final double[] anchorX;
    private final double[] anchorY;

    Survey(Canvas.Wish wish, List<Point> anchors, List<String> lines, int number) {
      this.wish = wish;
      this.anchors = anchors;
      this.lines = lines;
      this.number = number;
      this.width =
          wish.ring()
              ? LabelPlacer.RING
              : lines.stream().mapToDouble(canvas::width).max().orElse(0);
      this.height =
          wish.ring()
              ? LabelPlacer.RING
              : canvas.lineHeight() + (lines.size() - 1) * canvas.leading();
      this.extra = (lines.size() - 1) * BROKEN_LINE;
      this.anchorX = anchors.stream().mapToDouble(Point::x).toArray();
      this.anchorY = anchors.stream().mapToDouble(Point::y).toArray();
    }

    void look(Cheapest cheapest) {
      int row = 0;
      for (double y = frame.minY() + BORDER; y + height <= frame.maxY() - BORDER; y += STEP) {
        int column = 0;
        for (double x = frame.minX() + BORDER; x + width <= frame.maxX() - BORDER; x += STEP) {
          if (isFree(x, y)) {
            price(x, y, column, row, cheapest);
          }
          column++;
        }
        row++;
      }
    }

    private boolean isFree(double x, double y) {
      double right = x + width;
      double bottom = y + height;
      double clear = LabelPlacer.CLEAR;
      if (drawn.count(x - clear, y - clear, right + clear, bottom + clear) > 0) {
        return false;
      }
      for (int i = 0; i < keptClear.size(); i++) {
        Box other = keptClear.get(i);
        if (other.minX() < right && x < other.maxX() && other.minY() < bottom && y < other.maxY()) {
          return false;
        }
      }
      return true;
    }

    private void price(double x, double y, int column, int row, Cheapest cheapest) {
      double right = x + width;
      double bottom = y + height;
      // No line runs through the box, so that all of it is where its middle is.
      if (wish.home() != null && wish.home().test(new Point((x + right) / 2, (y + bottom) / 2))) {
        Box box = Box.at(x, y, width, height);
        // At home a label stands as near as it can to the first point.
        double off = anchors.isEmpty() ? 0 : box.centre().distance(anchors.get(0));
        cheapest.add(extra + FROM_HOME * off, number, column, row, HOME);
        return;
      }
      double clearLeft = x - LabelPlacer.CLEAR;
      double clearTop = y - LabelPlacer.CLEAR;
      double clearRight = right + LabelPlacer.CLEAR;
      double clearBottom = bottom + LabelPlacer.CLEAR;
      double area = (clearRight - clearLeft) * (clearBottom - clearTop);
      double texture = TEXTURE * filled.area(clearLeft, clearTop, clearRight, clearBottom) / area;
      int best = HOME;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < anchorX.length; i++) {
        double anchorAcross = anchorX[i];
        double anchorDown = anchorY[i];
        if (anchorAcross >= clearLeft
            && anchorAcross <= clearRight
            && anchorDown >= clearTop
            && anchorDown <= clearBottom) {
          continue;
        }
        double across;
        double down;
        if (wish.ring()) {
          Point start = start(Box.at(x, y, width, height), anchors.get(i));
          across = Math.abs(start.x() - anchorAcross);
          down = Math.abs(start.y() - anchorDown);
        } else {
          across = Math.abs(startX(x, right, anchorAcross) - anchorAcross);
          down = Math.abs(startY(x, y, right, bottom, anchorAcross, anchorDown) - anchorDown);
        }
        double length = Math.sqrt(across * across + down * down);
        // Leaders that run steeply from the side of a line of text look torn off.
        double slant = Math.min(across, down) * SLANT;
        double cost = length + extra + texture + LATER_ANCHOR * i + slant + LEADER;
        if (length >= SHORTEST_LEADER && cost < least) {
          least = cost;
          best = i;
        }
      }
      if (best != HOME) {
        cheapest.add(least, number, column, row, best);
      }
    }

    PlacedLabel label(Cheapest cheapest, int place) {
      double x = frame.minX() + BORDER;
      for (int i = 0; i < cheapest.column(place); i++) {
        x += STEP;
      }
      double y = frame.minY() + BORDER;
      for (int i = 0; i < cheapest.row(place); i++) {
        y += STEP;
      }
      Box box = Box.at(x, y, width, height);
      int number = cheapest.anchor(place);
      Point anchor = number == HOME ? null : anchors.get(number);
      Point start = number == HOME ? null : start(box, anchor);
      return new PlacedLabel(wish, lines, box, start, anchor, cheapest.cost(place));
    }

    /** Where the leader leaves the lettering: at one of its ends, or above or below its middle. */
    private Point start(Box box, Point anchor) {
      if (wish.ring()) {
        Point out = anchor.minus(box.centre()).unit();
        return box.centre().plus(out.times(LabelPlacer.RING / 2));
      }
      return new Point(
          startX(box.minX(), box.maxX(), anchor.x()),
          startY(box.minX(), box.minY(), box.maxX(), box.maxY(), anchor.x(), anchor.y()));
    }

    private static double startX(double left, double right, double anchor) {
      if (anchor < left - ASIDE) {
        return left - GAP;
      }
      if (anchor > right + ASIDE) {
        return right + GAP;
      }
      double inset = Math.min(3, (right - left) / 3);
      return Math.max(left + inset, Math.min(right - inset, anchor));
    }

    private static double startY(
        double left,
        double top,
        double right,
        double bottom,
        double anchorAcross,
        double anchorDown) {
      double middle = (top + bottom) / 2;
      if (anchorAcross < left - ASIDE || anchorAcross > right + ASIDE) {
        return middle;
      }
      return anchorDown < middle ? top - GAP_ABOVE : bottom + GAP_ABOVE;
    }
  }
}
