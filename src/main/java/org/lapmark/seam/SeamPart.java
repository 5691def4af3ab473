package org.lapmark.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.NotchSet;

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
 * @param folds the darts and pleats that are closed on it; nothing where it has none
 * @param margins how narrow its allowances get, from its beginning on; empty where they don't
 *     change
 */
public record SeamPart(
    String panel,
    String name,
    Optional<Path> path,
    boolean clockwise,
    double length,
    List<Double> allowances,
    List<Notch> notches,
    int joinNotches,
    Optional<Folds> folds,
    List<Margin> margins) {
  /** Two ends nearer to each other than this, in millimetres, are the same point. */
  private static final double SAME_POINT = 0.01;

  /** Copies the lists. */
  public SeamPart {
    allowances = List.copyOf(allowances);
    notches = List.copyOf(notches);
    margins = List.copyOf(margins);
  }

  /**
   * A stretch with its least allowance: what is cut into the seam allowance there has to stay
   * within that.
   *
   * @param to where the stretch ends, in millimetres from the part's beginning as sewn
   * @param least millimetres; 0 where nothing is cut with an allowance
   */
  public record Margin(double to, double least) {}

  /**
   * A part without darts and pleats.
   *
   * @param panel the panel's name; empty for a length
   * @param name what is sewn, as written
   * @param path the stitching line in the direction of sewing; nothing for a length
   * @param clockwise whether that direction is clockwise around the panel as drawn
   * @param length millimetres along the stitching line
   * @param allowances the seam allowances in millimetres, ascending
   * @param notches its notches in the order of sewing
   * @param joinNotches how many notches a partner should have where this part begins
   */
  public SeamPart(
      String panel,
      String name,
      Optional<Path> path,
      boolean clockwise,
      double length,
      List<Double> allowances,
      List<Notch> notches,
      int joinNotches) {
    this(
        panel,
        name,
        path,
        clockwise,
        length,
        allowances,
        notches,
        joinNotches,
        Optional.empty(),
        List.of());
  }

  /**
   * A notch, or several beside each other.
   *
   * @param at millimetres from the part's beginning as sewn to the middle of the set
   * @param set how many, with which gaps in the order of sewing
   */
  public record Notch(double at, NotchSet set) {
    /**
     * Notches with equal gaps.
     *
     * @param at millimetres from the part's beginning as sewn
     * @param count how many
     */
    public Notch(double at, int count) {
      this(at, NotchSet.of(count));
    }
  }

  /**
   * Closed darts and pleats. The path bends or shifts at them, so that it ends elsewhere than the
   * panel's own line.
   *
   * @param at millimetres from the part's beginning as sewn to each of them, rising
   * @param start where the panel's line begins as sewn, when the part begins there
   * @param end where the panel's line ends as sewn, when the part ends there
   */
  public record Folds(List<Double> at, Optional<Point> start, Optional<Point> end) {
    /** Copies the list. */
    public Folds {
      at = List.copyOf(at);
    }

    private Folds reversed(double length) {
      List<Double> backwards = new ArrayList<>();
      for (int i = at.size() - 1; i >= 0; i--) {
        backwards.add(length - at.get(i));
      }
      return new Folds(backwards, end, start);
    }

    private Folds stretch(double from, double to, double length) {
      return new Folds(
          at.stream()
              .filter(one -> one >= from && (one < to || to >= length))
              .map(one -> one - from)
              .toList(),
          from > 0 ? Optional.empty() : start,
          to < length ? Optional.empty() : end);
    }
  }

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

  /** The least allowance at a place; 0 where nothing is cut with one. */
  double margin(double at) {
    for (Margin margin : margins) {
      if (at <= margin.to()) {
        return margin.least();
      }
    }
    return allowances.isEmpty() ? 0 : allowances.get(0);
  }

  /** Where its line turns sharply, in millimetres from its beginning, its ends not included. */
  List<SeamCorner> corners() {
    List<SeamCorner> corners = new ArrayList<>();
    if (path.isEmpty()) {
      return corners;
    }
    List<Curve> curves = path.get().curves();
    List<Double> closings = folds.map(Folds::at).orElse(List.of());
    double at = 0;
    for (int i = 0; i + 1 < curves.size(); i++) {
      at += curves.get(i).length();
      double place = at;
      Point in = curves.get(i).tangent(1);
      Point out = curves.get(i + 1).tangent(0);
      SeamCorner corner = new SeamCorner(place, SeamCorner.turn(in, out, clockwise), name);
      if (corner.isSharp()
          && closings.stream().noneMatch(one -> Math.abs(one - place) <= SAME_POINT)) {
        corners.add(corner);
      }
    }
    return corners;
  }

  /** How sharply the line turns where it goes on into another part. */
  double turnInto(SeamPart next) {
    List<Curve> before = path.orElseThrow().curves();
    Point in = before.get(before.size() - 1).tangent(1);
    Point out = next.path.orElseThrow().curves().get(0).tangent(0);
    return SeamCorner.turn(in, out, clockwise);
  }

  /**
   * Whether the stitching line simply goes on into another part: both are of one panel, and go
   * round it in one direction. Where the direction changes, another copy begins.
   */
  boolean continuesInto(SeamPart next) {
    return path.isPresent()
        && next.path.isPresent()
        && clockwise == next.clockwise
        && panel.equals(next.panel)
        && lineEnd().distance(next.lineStart()) <= SAME_POINT;
  }

  private Point lineStart() {
    return folds.flatMap(Folds::start).orElseGet(() -> path.orElseThrow().start());
  }

  private Point lineEnd() {
    return folds.flatMap(Folds::end).orElseGet(() -> path.orElseThrow().end());
  }

  /** The same part sewn from its other end. */
  SeamPart reversed() {
    List<Notch> backwards = new ArrayList<>();
    for (int i = notches.size() - 1; i >= 0; i--) {
      backwards.add(new Notch(length - notches.get(i).at(), notches.get(i).set().reversed()));
    }
    return new SeamPart(
        panel,
        name,
        path.map(Path::reversed),
        !clockwise,
        length,
        allowances,
        backwards,
        joinNotches,
        folds.map(one -> one.reversed(length)),
        reversedMargins());
  }

  /** The stretch between two places on it. */
  SeamPart stretch(double from, double to) {
    List<Notch> inside = new ArrayList<>();
    for (Notch notch : notches) {
      if (notch.at() >= from && (notch.at() < to || to >= length)) {
        inside.add(new Notch(notch.at() - from, notch.set()));
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
        from > 0 ? 1 : joinNotches,
        folds.map(one -> one.stretch(from, to, length)),
        margins.stream()
            .filter(margin -> margin.to() > from)
            .map(margin -> new Margin(Math.min(margin.to(), to) - from, margin.least()))
            .toList());
  }

  private List<Margin> reversedMargins() {
    List<Margin> backwards = new ArrayList<>();
    for (int i = margins.size() - 1; i >= 0; i--) {
      double begin = i > 0 ? margins.get(i - 1).to() : 0;
      backwards.add(new Margin(length - begin, margins.get(i).least()));
    }
    return backwards;
  }
}
