package org.lapmark.seam;

import java.util.ArrayList;
import java.util.List;

/**
 * A seam as walked in one variant.
 *
 * @param name the seam's name
 * @param closed whether it is a ring
 * @param sides the sides in the order stated, each in the order of sewing
 * @param tolerance the greatest deviation allowed, in millimetres
 * @param matchNotches whether every notch must have a partner
 * @param joints where parts of a side meet end to end and are sewn to each other
 */
public record WalkedSeam(
    String name,
    boolean closed,
    List<SeamSide> sides,
    double tolerance,
    boolean matchNotches,
    List<Joint> joints) {
  /** The tolerance where the author states none, in millimetres. */
  public static final double DEFAULT_TOLERANCE = 0.5;

  /** Allowances that differ by less than this, in millimetres, are the same. */
  private static final double SAME_ALLOWANCE = 0.05;

  /** Copies the lists. */
  public WalkedSeam {
    sides = List.copyOf(sides);
    joints = List.copyOf(joints);
  }

  /**
   * How long the seam is: its first side without that side's ease.
   *
   * @return millimetres
   */
  public double length() {
    return sides.get(0).length() - sides.get(0).ease();
  }

  /**
   * How far a side is from what it should be.
   *
   * @param side the index of the side, from 0
   * @return the seam's length less what this side's is without its ease, in millimetres
   */
  public double deviation(int side) {
    return length() - (sides.get(side).length() - sides.get(side).ease());
  }

  /**
   * How far a basted layer is from the side it lies on.
   *
   * @param side the index of the side, from 0
   * @param layer the index of the layer, from 0
   * @return the side's length less the layer's, in millimetres
   */
  public double layerDeviation(int side, int layer) {
    return sides.get(side).length() - sides.get(side).basted().get(layer).length();
  }

  /**
   * Whether all sides, and the layers basted to them, agree within the tolerance.
   *
   * @return true when they do
   */
  public boolean agrees() {
    for (int i = 0; i < sides.size(); i++) {
      if (!agrees(i)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether one side agrees with the seam, and its layers with it.
   *
   * @param side the index of the side, from 0
   * @return true when it does
   */
  public boolean agrees(int side) {
    if (Math.abs(deviation(side)) > tolerance) {
      return false;
    }
    for (int layer = 0; layer < sides.get(side).basted().size(); layer++) {
      if (Math.abs(layerDeviation(side, layer)) > tolerance) {
        return false;
      }
    }
    return true;
  }

  /**
   * How the marks of the first side and those of another lie as sewn.
   *
   * @param side the index of the other side, from 1
   * @return what coincides and what doesn't
   */
  public NotchMatching matching(int side) {
    return NotchMatching.of(sides.get(0), sides.get(side), closed);
  }

  /**
   * Every notch of the seam with its verdict, side by side.
   *
   * @return for each side from the second on the notches of it and of the first side, in the order
   *     of sewing
   */
  public List<NotchLine> notchLines() {
    List<NotchLine> lines = new ArrayList<>();
    for (int side = 1; side < sides.size(); side++) {
      lines.addAll(NotchLine.of(side, matching(side)));
    }
    return lines;
  }

  /**
   * The seam allowances of all sides. Layers are sewn with their raw edges level, so that there
   * should be one.
   *
   * @return each once, ascending; those within 0.05 mm count as the same
   */
  public List<Double> allowances() {
    List<Double> all = new ArrayList<>();
    sides.stream().flatMap(side -> side.allowances().stream()).sorted().forEach(all::add);
    List<Double> distinct = new ArrayList<>();
    for (double allowance : all) {
      if (distinct.isEmpty() || allowance - distinct.get(distinct.size() - 1) > SAME_ALLOWANCE) {
        distinct.add(allowance);
      }
    }
    return distinct;
  }

  /**
   * Whether the seam could as well be sewn turned end for end: every side's notches read the same
   * from both ends. That is harmless where the pieces look the same both ways, too.
   *
   * @return true when nothing keeps it from being turned; false for a ring, which has no ends
   */
  public boolean isTurnable() {
    if (closed) {
      return false;
    }
    for (SeamSide side : sides) {
      List<SeamMark> forwards = notches(side);
      List<SeamMark> backwards = notches(side.reversed());
      if (forwards.size() != backwards.size()) {
        return false;
      }
      for (int i = 0; i < forwards.size(); i++) {
        SeamMark one = forwards.get(i);
        SeamMark other = backwards.get(i);
        if (!one.set().agrees(other.set())
            || Math.abs(one.at() - other.at()) > NotchMatching.COINCIDE) {
          return false;
        }
      }
    }
    return true;
  }

  private List<SeamMark> notches(SeamSide side) {
    return side.marks(closed).stream().filter(mark -> mark.kind() == SeamMark.Kind.NOTCH).toList();
  }

  /** Whether two places of a side are the same; in a ring its end is its start. */
  boolean isSamePlace(double one, double other, double whole) {
    double apart = Math.abs(one - other);
    return apart <= NotchMatching.COINCIDE
        || closed && Math.abs(apart - whole) <= NotchMatching.COINCIDE;
  }

  /**
   * The corners that a side has to be clipped for and that nothing marks on it. Where notches
   * needn't match, a side without any is meant to be sewn by what its partner shows.
   *
   * @return their clips, by side and then in the order of sewing
   */
  public List<Clipping> unmarkedCorners() {
    return clippings().stream()
        .filter(
            clip ->
                clip.isCorner()
                    && (matchNotches || !notches(sides.get(clip.side())).isEmpty())
                    && !isMarked(clip))
        .toList();
  }

  private boolean isMarked(Clipping clip) {
    SeamSide side = sides.get(clip.side());
    return side.marks(closed).stream()
        .anyMatch(mark -> isSamePlace(mark.at(), clip.from(), side.length()));
  }

  /**
   * Where seam allowances have to be clipped before the seam is sewn.
   *
   * @return the stretches, by side and then in the order of sewing
   */
  public List<Clipping> clippings() {
    return Clipping.of(this);
  }
}
