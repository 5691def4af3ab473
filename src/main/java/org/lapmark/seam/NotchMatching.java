package org.lapmark.seam;

import java.util.ArrayList;
import java.util.List;

/**
 * Which marks of two sides lie on each other when the sides are sewn.
 *
 * <p>Where neither side has ease, two marks lie on each other when they stand at the same length
 * from the seam's start. Where one side is longer by the ease e, how e is spread over the seam is
 * for the maker's fingers between two notches, and for the notches to say as a whole: a mark of the
 * longer side may stand farther from the start than its partner by anything from 0 to e. So two
 * marks coincide when their lengths from the start differ by a number from 0 to e, give or take 1
 * mm. Of all ways to pair them in order the one is taken that gives the most notches a partner, and
 * among those the one whose pairs come nearest to ease spread evenly. Only notches of the same set
 * lie on each other: a single one never pairs with a double one, nor a set with its mirror image. A
 * join, a tab, a closed dart or a corner takes any, but nothing else than a notch.
 *
 * @param pairs marks that coincide, in the order of sewing
 * @param apart marks without a partner that nearly meet a notch without one, or the other way
 *     round, each of the first side with the nearest of the other
 * @param first notches of the first side without a partner
 * @param second notches of the other side without a partner
 */
public record NotchMatching(
    List<Pair> pairs, List<Pair> apart, List<SeamMark> first, List<SeamMark> second) {
  /** How far from each other marks may lie and still coincide, in millimetres. */
  public static final double COINCIDE = 1;

  /** Notches that miss each other by no more than this, in millimetres, were meant to meet. */
  public static final double MEANT = 5;

  /** Marks of one side beyond these aren't matched. */
  private static final int MOST_MARKS = 500;

  /** Copies the lists. */
  public NotchMatching {
    pairs = List.copyOf(pairs);
    apart = List.copyOf(apart);
    first = List.copyOf(first);
    second = List.copyOf(second);
  }

  /**
   * A mark of the first side and its partner.
   *
   * @param first the mark of the first side
   * @param second the mark of the other side
   * @param difference how much farther from the start the first stands, beyond what ease explains;
   *     millimetres, signed
   */
  public record Pair(SeamMark first, SeamMark second, double difference) {}

  /**
   * Pairs the marks of two sides.
   *
   * @param one the first side
   * @param other the other side
   * @param closed whether the seam is a ring
   * @return what coincides and what doesn't
   */
  public static NotchMatching of(SeamSide one, SeamSide other, boolean closed) {
    List<SeamMark> first = bounded(one.marks(closed));
    List<SeamMark> second = bounded(other.marks(closed));
    double ease = one.ease() - other.ease();
    double stretch = one.length() > 0 ? other.length() / one.length() : 1;
    int n = first.size();
    int m = second.size();
    // best[i][j]: for marks from i and j on, the most notches paired and the least deviation.
    int[][] paired = new int[n + 1][m + 1];
    double[][] deviation = new double[n + 1][m + 1];
    for (int i = n - 1; i >= 0; i--) {
      for (int j = m - 1; j >= 0; j--) {
        boolean skipFirst =
            better(paired[i + 1][j], deviation[i + 1][j], paired[i][j + 1], deviation[i][j + 1]);
        paired[i][j] = skipFirst ? paired[i + 1][j] : paired[i][j + 1];
        deviation[i][j] = skipFirst ? deviation[i + 1][j] : deviation[i][j + 1];
        if (coincide(first.get(i), second.get(j), ease)) {
          int with = paired[i + 1][j + 1] + notches(first.get(i), second.get(j));
          double sum =
              deviation[i + 1][j + 1] + Math.abs(first.get(i).at() * stretch - second.get(j).at());
          if (better(with, sum, paired[i][j], deviation[i][j])) {
            paired[i][j] = with;
            deviation[i][j] = sum;
          }
        }
      }
    }
    List<Pair> pairs = new ArrayList<>();
    List<SeamMark> firstLeft = new ArrayList<>();
    List<SeamMark> secondLeft = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < n && j < m) {
      if (paired[i][j] == paired[i + 1][j] && deviation[i][j] == deviation[i + 1][j]) {
        firstLeft.add(first.get(i++));
      } else if (paired[i][j] == paired[i][j + 1] && deviation[i][j] == deviation[i][j + 1]) {
        secondLeft.add(second.get(j++));
      } else {
        pairs.add(pair(first.get(i++), second.get(j++), ease));
      }
    }
    firstLeft.addAll(first.subList(i, n));
    secondLeft.addAll(second.subList(j, m));
    return new NotchMatching(
        pairs, apart(firstLeft, secondLeft, ease), notchesOf(firstLeft), notchesOf(secondLeft));
  }

  /**
   * The same for an open seam: a notch where the seam begins or ends meets the seam's own end, and
   * is not without a partner.
   *
   * @param firstLength how long the first side is
   * @param secondLength how long the other side is
   * @return the matching without such notches among those that are left over
   */
  public NotchMatching ofOpenSeam(double firstLength, double secondLength) {
    return new NotchMatching(
        pairs, apart, within(first, firstLength), within(second, secondLength));
  }

  private static List<SeamMark> within(List<SeamMark> marks, double length) {
    return marks.stream()
        .filter(mark -> mark.at() > COINCIDE && mark.at() < length - COINCIDE)
        .toList();
  }

  private static List<SeamMark> notchesOf(List<SeamMark> marks) {
    return marks.stream().filter(mark -> mark.kind() == SeamMark.Kind.NOTCH).toList();
  }

  private static List<SeamMark> bounded(List<SeamMark> marks) {
    return marks.subList(0, Math.min(marks.size(), MOST_MARKS));
  }

  private static boolean better(int notches, double sum, int otherNotches, double otherSum) {
    return notches != otherNotches ? notches > otherNotches : sum < otherSum;
  }

  private static int notches(SeamMark one, SeamMark other) {
    return (one.kind() == SeamMark.Kind.NOTCH ? 1 : 0)
        + (other.kind() == SeamMark.Kind.NOTCH ? 1 : 0);
  }

  private static boolean coincide(SeamMark one, SeamMark other, double ease) {
    return fit(one, other) && Math.abs(beyond(one, other, ease)) <= COINCIDE;
  }

  private static boolean fit(SeamMark one, SeamMark other) {
    boolean notches = one.kind() == SeamMark.Kind.NOTCH && other.kind() == SeamMark.Kind.NOTCH;
    return notches ? one.set().agrees(other.set()) : notches(one, other) == 1;
  }

  /** How far the difference of two places lies outside what the ease explains. */
  private static double beyond(SeamMark one, SeamMark other, double ease) {
    double difference = one.at() - other.at();
    double least = Math.min(0, ease);
    double most = Math.max(0, ease);
    return difference < least ? difference - least : difference > most ? difference - most : 0;
  }

  private static Pair pair(SeamMark one, SeamMark other, double ease) {
    return new Pair(one, other, beyond(one, other, ease));
  }

  /** Of the marks that are left over, those that nearly meet; at least one is a notch. */
  private static List<Pair> apart(List<SeamMark> first, List<SeamMark> second, double ease) {
    List<Pair> apart = new ArrayList<>();
    for (SeamMark one : first) {
      SeamMark best = null;
      double least = MEANT;
      for (SeamMark other : second) {
        double off = Math.abs(beyond(one, other, ease));
        if (notches(one, other) > 0 && off <= least && (best == null || off < least)) {
          least = off;
          best = other;
        }
      }
      if (best != null) {
        apart.add(pair(one, best, ease));
      }
    }
    return apart;
  }
}
