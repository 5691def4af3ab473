package org.lapmark.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Path;

/**
 * One part of a side, as it is travelled in sewing: a stretch of an edge or of a chain of edges, or
 * a length that is no panel.
 *
 * @param panel the panel's name; empty for a length
 * @param name what is sewn, as written: {@code panel.edge} or the length
 * @param path the stitching line in the direction of sewing; nothing for a length
 * @param clockwise whether that direction is clockwise around the panel as drawn
 * @param length millimetres along the stitching line
 * @param allowances the seam allowances that the part's pieces have along it, in millimetres, each
 *     once and above 0, ascending; empty where nothing is cut with an allowance
 * @param notches its notches in the order of sewing
 * @param joinNotches how many notches a partner should have where this part begins
 */
public record SeamPart(
    String panel,
    String name,
    Optional<Path> path,
    boolean clockwise,
    double length,
    List<Double> allowances,
    List<Notch> notches,
    int joinNotches) {
  /** Two ends nearer to each other than this, in millimetres, are the same point. */
  private static final double SAME_POINT = 0.01;

  /** Copies the lists. */
  public SeamPart {
    allowances = List.copyOf(allowances);
    notches = List.copyOf(notches);
  }

  /**
   * A notch.
   *
   * @param at millimetres from the part's beginning as sewn
   * @param count 1 or 2
   */
  public record Notch(double at, int count) {}

  /**
   * A length that is no panel, such as the visible width of a zip.
   *
   * @param name as written
   * @param length millimetres
   * @param joinNotches how many notches a partner should have where it begins
   * @return the part
   */
  public static SeamPart ofLength(String name, double length, int joinNotches) {
    return new SeamPart(
        "", name, Optional.empty(), true, length, List.of(), List.of(), joinNotches);
  }

  /** Whether the stitching line simply goes on into another part: both are of one panel. */
  boolean continuesInto(SeamPart next) {
    return path.isPresent()
        && next.path.isPresent()
        && panel.equals(next.panel)
        && path.get().end().distance(next.path.get().start()) <= SAME_POINT;
  }

  /** The same part sewn from its other end. */
  SeamPart reversed() {
    List<Notch> backwards = new ArrayList<>();
    for (int i = notches.size() - 1; i >= 0; i--) {
      backwards.add(new Notch(length - notches.get(i).at(), notches.get(i).count()));
    }
    return new SeamPart(
        panel,
        name,
        path.map(Path::reversed),
        !clockwise,
        length,
        allowances,
        backwards,
        joinNotches);
  }

  /** The stretch between two places on it. */
  SeamPart stretch(double from, double to) {
    List<Notch> inside = new ArrayList<>();
    for (Notch notch : notches) {
      if (notch.at() >= from && (notch.at() < to || to >= length)) {
        inside.add(new Notch(notch.at() - from, notch.count()));
      }
    }
    return new SeamPart(
        panel,
        name,
        path.map(line -> line.part(from, to)),
        clockwise,
        to - from,
        allowances,
        inside,
        from > 0 ? 1 : joinNotches);
  }
}
