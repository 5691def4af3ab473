package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
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
  private static final int PASSES = 40;
  private static final double CONFLICT = 1000;

  /** Sums of costs may differ by less, depending on their order. */
  private static final double ROUNDING = 1e-6;

  private final Canvas canvas;
  private final Sites sites;

  /**
   * A placer for one canvas.
   *
   * @param canvas what is drawn, with its wishes for labels
   * @param frame where labels may stand
   */
  public LabelPlacer(Canvas canvas, Box frame) {
    this.canvas = canvas;
    this.sites = new Sites(canvas, frame);
  }

  /**
   * Places all labels.
   *
   * @param anchors the points that each label may name
   * @param most what labels may cost on average: nothing is asked of what is dearer
   * @param dearest with which labels to begin; is told what their places cost
   * @return the labels; nothing when they can't be kept apart, or when it is certain before they
   *     are placed that they cost more
   */
  public Optional<List<PlacedLabel>> place(
      List<List<Point>> anchors, double most, DearestFirst dearest) {
    Optional<List<List<PlacedLabel>>> found = candidates(anchors, most, dearest);
    if (found.isEmpty()) {
      return Optional.empty();
    }
    List<List<PlacedLabel>> candidates = found.get();
    int[] chosen = new int[candidates.size()];
    Arrays.fill(chosen, -1);
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

  /**
   * The cheapest places of each label; nothing where one has none or all cost too much. First that
   * is judged by how long leaders are, then by what they cross.
   */
  private Optional<List<List<PlacedLabel>>> candidates(
      List<List<Point>> anchors, double most, DearestFirst dearest) {
    List<Canvas.Wish> wishes = canvas.wishes();
    double limit = (most + ROUNDING) * wishes.size();
    List<Integer> order = dearest.order(wishes.size());
    List<Sites.Free> free = new ArrayList<>(Collections.nCopies(wishes.size(), null));
    double least = wishes.stream().mapToDouble(Sites::least).sum();
    for (int i : order) {
      free.set(i, sites.free(wishes.get(i), anchors.get(i)));
      double own = free.get(i).least();
      dearest.cost(i, own);
      least += own - Sites.least(wishes.get(i));
      if (own == Double.POSITIVE_INFINITY || least > limit) {
        return Optional.empty();
      }
    }
    List<List<PlacedLabel>> candidates = new ArrayList<>(Collections.nCopies(wishes.size(), null));
    for (int i : order) {
      candidates.set(i, sites.cheapest(free.get(i)));
      double own =
          candidates.get(i).isEmpty() ? Double.POSITIVE_INFINITY : candidates.get(i).get(0).cost();
      dearest.cost(i, own);
      least += own - free.get(i).least();
      if (own == Double.POSITIVE_INFINITY || least > limit) {
        return Optional.empty();
      }
    }
    return Optional.of(candidates);
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
}
