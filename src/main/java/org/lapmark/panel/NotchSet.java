package org.lapmark.panel;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The notches cut beside each other at one place: single, double, triple, or a set whose gaps are
 * stated, which reads differently from its two ends when they are unequal.
 *
 * @param count how many notches
 * @param gaps the distances from one to the next along the stitching line, in millimetres, one
 *     fewer than the notches; clockwise on paper for a panel, in the order of sewing for a seam
 * @param cut how they are cut
 */
public record NotchSet(int count, List<Double> gaps, Cut cut) {
  /** The gap in a double or triple notch, in millimetres. */
  public static final double GAP = 5;

  /** The most notches of a set. */
  public static final int MOST = 4;

  /** Notches nearer to each other than this, in millimetres, tear out when they are cut. */
  public static final double LEAST_GAP = 4;

  /** Gaps that differ by less than this, in millimetres, look the same. */
  public static final double SAME_GAP = 1;

  /** How a notch is cut. */
  public enum Cut {
    /** One cut from the raw edge. */
    SLIT,
    /** A small triangle cut out of the allowance. */
    WEDGE
  }

  /** Copies the list. */
  public NotchSet {
    gaps = List.copyOf(gaps);
  }

  /**
   * Slits with equal gaps.
   *
   * @param count 1 for a single notch, 2 for a double one, 3 for a triple one
   * @return the set
   */
  public static NotchSet of(int count) {
    return new NotchSet(count, Collections.nCopies(Math.max(0, count - 1), GAP), Cut.SLIT);
  }

  /**
   * The same notches cut in a way.
   *
   * @param way how
   * @return the set
   */
  public NotchSet cut(Cut way) {
    return new NotchSet(count, gaps, way);
  }

  /**
   * From the first notch to the last.
   *
   * @return millimetres
   */
  public double span() {
    return gaps.stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * Where the notches stand.
   *
   * @return millimetres from the middle of the set, rising
   */
  public List<Double> offsets() {
    List<Double> offsets = new ArrayList<>();
    double at = -span() / 2;
    for (int i = 0; i < count; i++) {
      offsets.add(at);
      at += i < gaps.size() ? gaps.get(i) : 0;
    }
    return Collections.unmodifiableList(offsets);
  }

  /**
   * The set seen from its other end, as in a mirror.
   *
   * @return the set
   */
  public NotchSet reversed() {
    List<Double> backwards = new ArrayList<>(gaps);
    Collections.reverse(backwards);
    return new NotchSet(count, backwards, cut);
  }

  /**
   * Whether two sets lie on each other. How they are cut doesn't matter.
   *
   * @param other the other set, in the same direction
   * @return true when there are as many, at gaps within 1 mm
   */
  public boolean agrees(NotchSet other) {
    if (count != other.count || gaps.size() != other.gaps.size()) {
      return false;
    }
    for (int i = 0; i < gaps.size(); i++) {
      if (Math.abs(gaps.get(i) - other.gaps.get(i)) > SAME_GAP) {
        return false;
      }
    }
    return true;
  }
}
