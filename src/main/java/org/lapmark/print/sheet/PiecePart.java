package org.lapmark.print.sheet;

import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.piece.PieceArt;

/**
 * Which part of a piece a tile shows, as the piece lies on the sheet.
 *
 * @param across which part from the left
 * @param down which part from the top
 */
public record PiecePart(Part across, Part down) {
  /** Nearer than this to a piece's end, as a share of its length, a part reaches to it. */
  private static final double REACHES = 0.02;

  /** A part of a length. */
  public enum Part {
    BEGINNING,
    MIDDLE,
    END,
    ALL
  }

  public static PiecePart of(PieceArt art, Cell cell) {
    Box all = art.bounds();
    if (cell.shown().contains(all)) {
      return new PiecePart(Part.ALL, Part.ALL);
    }
    Reach reach = new Reach();
    Box core = cell.core();
    for (int i = 1; i < art.outline().size(); i++) {
      reach.addSide(art.outline().get(i - 1), art.outline().get(i), core);
    }
    for (double x : new double[] {core.minX(), core.maxX()}) {
      for (double y : new double[] {core.minY(), core.maxY()}) {
        if (all.contains(new Point(x, y)) && encloses(art.outline(), x, y)) {
          reach.add(x, y);
        }
      }
    }
    return new PiecePart(
        part(reach.minX - all.minX(), reach.maxX - all.minX(), all.width()),
        part(reach.minY - all.minY(), reach.maxY - all.minY(), all.height()));
  }

  private static boolean encloses(List<Point> outline, double x, double y) {
    boolean inside = false;
    for (int i = 1; i < outline.size(); i++) {
      Point a = outline.get(i - 1);
      Point b = outline.get(i);
      if ((a.y() <= y) != (b.y() <= y)
          && x < a.x() + (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y())) {
        inside = !inside;
      }
    }
    return inside;
  }

  /** How far something reaches; nothing at first. */
  private static final class Reach {
    private double minX = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;

    void add(double x, double y) {
      minX = Math.min(minX, x);
      maxX = Math.max(maxX, x);
      minY = Math.min(minY, y);
      maxY = Math.max(maxY, y);
    }

    /** Adds what of a side lies in a box. */
    void addSide(Point a, Point b, Box box) {
      double[] span = {0, 1};
      narrow(span, a.x(), b.x(), box.minX(), box.maxX());
      narrow(span, a.y(), b.y(), box.minY(), box.maxY());
      if (span[0] <= span[1]) {
        for (double t : span) {
          Point point = a.towards(b, t);
          add(point.x(), point.y());
        }
      }
    }

    private static void narrow(double[] span, double from, double to, double low, double high) {
      double way = to - from;
      if (way == 0) {
        span[1] = from < low || from > high ? -1 : span[1];
        return;
      }
      double first = (low - from) / way;
      double last = (high - from) / way;
      span[0] = Math.max(span[0], Math.min(first, last));
      span[1] = Math.min(span[1], Math.max(first, last));
    }
  }

  private static Part part(double from, double to, double length) {
    boolean first = from <= REACHES * length;
    boolean last = to >= (1 - REACHES) * length;
    if (first && last) {
      return Part.ALL;
    }
    return first ? Part.BEGINNING : last ? Part.END : Part.MIDDLE;
  }

  /** The end of the key of the words for it. */
  public String key() {
    String down = word(this.down, "upper", "lower");
    String across = word(this.across, "left", "right");
    if (down.isEmpty() && across.isEmpty()) {
      return "whole";
    }
    return down.isEmpty() ? across : across.isEmpty() ? down : down + "-" + across;
  }

  private static String word(Part part, String beginning, String end) {
    return switch (part) {
      case BEGINNING -> beginning;
      case MIDDLE -> "middle";
      case END -> end;
      case ALL -> "";
    };
  }
}
