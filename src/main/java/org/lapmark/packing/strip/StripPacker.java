package org.lapmark.packing.strip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.lapmark.geometry.Affine;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Arranges shapes on a strip of fixed width so that they reach as little far along it as a bounded
 * search finds.
 *
 * <p>Shapes are placed one after the other at the first free place, in several orders and then in
 * variations of the best order from a stated seed. While searching, shapes are compared in columns,
 * which never lets them overlap but wastes up to a column's width; the best arrangement is then
 * pushed together exactly. The gap is kept within 0.1 per cent, which chords at corners may lose.
 */
public final class StripPacker {
  private StripPacker() {}

  private static final double MIN_COLUMN = 1;
  private static final double MAX_COLUMN = 5;
  private static final double FITS = 1e-6;

  /**
   * Whether a shape fits across a strip in one of its poses.
   *
   * @param shape the shape
   * @param width the strip's width in millimetres
   * @return false when it is too wide in all of them
   */
  public static boolean fits(StripShape shape, double width) {
    return shape.poses().stream().anyMatch(pose -> across(shape, pose) <= width + FITS);
  }

  private static double across(StripShape shape, Affine pose) {
    return Pose.mapped(shape.outline(), pose).getEnvelopeInternal().getHeight();
  }

  /**
   * Arranges shapes.
   *
   * @param shapes the shapes, each of which fits across
   * @param width the strip's width in millimetres
   * @param search how long to search, and the gap
   * @return a place for every shape; the same for the same arguments
   * @throws IllegalArgumentException when a shape doesn't fit across
   */
  public static StripArrangement pack(List<StripShape> shapes, double width, StripSearch search) {
    return pack(shapes, width, search, false);
  }

  /**
   * Arranges shapes.
   *
   * @param shapes the shapes, each of which fits across
   * @param width the strip's width in millimetres
   * @param search how long to search, and the gap
   * @param firstLeads whether the first shape lies at the strip's beginning
   * @return a place for every shape; the same for the same arguments
   * @throws IllegalArgumentException when a shape doesn't fit across
   */
  public static StripArrangement pack(
      List<StripShape> shapes, double width, StripSearch search, boolean firstLeads) {
    if (shapes.isEmpty()) {
      return new StripArrangement(0, List.of());
    }
    double area = shapes.stream().mapToDouble(shape -> shape.outline().getArea()).sum();
    double column = Math.max(MIN_COLUMN, Math.min(MAX_COLUMN, Math.sqrt(area) / 400));
    int[] kinds = kinds(shapes);
    List<List<Pose>> poses = new ArrayList<>();
    double longest = 0;
    for (int i = 0; i < shapes.size(); i++) {
      List<Pose> list =
          kinds[i] < i ? poses.get(kinds[i]) : poses(shapes.get(i), width, search, column);
      poses.add(list);
      longest = Math.max(longest, list.stream().mapToDouble(Pose::length).min().orElseThrow());
    }
    double least = Math.max(longest, area / width);
    StripFilling filling = new StripFilling(poses, kinds, width, column);
    StripFilling.Filled best = search(poses, filling, least, search, firstLeads);
    double[][] places = Settling.settle(best.puts(), search.gap());
    Affine[] maps = new Affine[shapes.size()];
    double length = 0;
    for (int i = 0; i < best.puts().size(); i++) {
      StripFilling.Put put = best.puts().get(i);
      maps[put.shape()] = Affine.translation(places[i][0], places[i][1]).after(put.pose().map());
      length = Math.max(length, places[i][0] + put.pose().length());
    }
    return new StripArrangement(length, Arrays.asList(maps));
  }

  /**
   * Lays shapes one behind the other, for whoever only wants to know that they fit.
   *
   * @param shapes the shapes, each of which fits across
   * @param width the strip's width in millimetres
   * @param gap how far they stay apart, in millimetres
   * @return a place for every shape
   * @throws IllegalArgumentException when a shape doesn't fit across
   */
  public static StripArrangement inARow(List<StripShape> shapes, double width, double gap) {
    List<Affine> maps = new ArrayList<>();
    double length = 0;
    for (StripShape shape : shapes) {
      Affine pose =
          shape.poses().stream()
              .filter(one -> across(shape, one) <= width + FITS)
              .findFirst()
              .orElseThrow(() -> new IllegalArgumentException("a shape is wider than the strip"));
      Envelope box = Pose.mapped(shape.outline(), pose).getEnvelopeInternal();
      double start = length == 0 ? 0 : length + gap;
      maps.add(Affine.translation(start - box.getMinX(), -box.getMinY()).after(pose));
      length = start + box.getWidth();
    }
    return new StripArrangement(length, maps);
  }

  private static int[] kinds(List<StripShape> shapes) {
    int[] kinds = new int[shapes.size()];
    for (int i = 0; i < kinds.length; i++) {
      kinds[i] = i;
      for (int k = 0; k < i; k++) {
        if (kinds[k] == k && same(shapes.get(i), shapes.get(k))) {
          kinds[i] = k;
          break;
        }
      }
    }
    return kinds;
  }

  private static boolean same(StripShape one, StripShape other) {
    Polygon outline = one.outline();
    return one.poses().equals(other.poses()) && outline.equalsExact(other.outline());
  }

  private static List<Pose> poses(
      StripShape shape, double width, StripSearch search, double column) {
    List<Pose> list = new ArrayList<>();
    for (Affine pose : shape.poses()) {
      if (across(shape, pose) <= width + FITS) {
        list.add(Pose.of(shape.outline(), pose, search.gap(), column));
      }
    }
    if (list.isEmpty()) {
      throw new IllegalArgumentException("a shape is wider than the strip");
    }
    return list;
  }

  private static StripFilling.Filled search(
      List<List<Pose>> poses,
      StripFilling filling,
      double least,
      StripSearch search,
      boolean firstLeads) {
    int count = poses.size();
    int[] free = new int[count];
    Arrays.fill(free, -1);
    List<int[]> orders = orders(poses);
    SplittableRandom random = new SplittableRandom(search.seed());
    StripFilling.Filled best = null;
    int[] bestOrder = null;
    int[] bestForced = free;
    for (int run = 0; run < search.runs(); run++) {
      if (best != null && (filling.work() > search.work() || best.length() <= least + FITS)) {
        break;
      }
      int[] order;
      int[] forced = free;
      if (run < orders.size()) {
        order = orders.get(run);
      } else {
        order = bestOrder.clone();
        forced = bestForced.clone();
        vary(order, forced, poses, random);
      }
      if (firstLeads) {
        lead(order);
      }
      double limit = best == null ? Double.MAX_VALUE : best.length();
      StripFilling.Filled filled = filling.fill(order, forced, limit);
      if (filled != null && (best == null || filled.betterThan(best))) {
        best = filled;
        bestOrder = order;
        bestForced = forced;
      }
    }
    return best;
  }

  /** Moves the first shape to the front. */
  private static void lead(int[] order) {
    int at = 0;
    while (order[at] != 0) {
      at++;
    }
    System.arraycopy(order, 0, order, 1, at);
    order[0] = 0;
  }

  private static List<int[]> orders(List<List<Pose>> poses) {
    Comparator<Integer> byArea = Comparator.comparingDouble(i -> -poses.get(i).get(0).area());
    Comparator<Integer> byLength = Comparator.comparingDouble(i -> -poses.get(i).get(0).length());
    Comparator<Integer> byHeight = Comparator.comparingDouble(i -> -poses.get(i).get(0).height());
    Comparator<Integer> bySize =
        Comparator.comparingDouble(
            i -> -(poses.get(i).get(0).length() + poses.get(i).get(0).height()));
    List<int[]> orders = new ArrayList<>();
    for (Comparator<Integer> order :
        List.of(
            byArea, byLength.thenComparing(byHeight), byHeight.thenComparing(byLength), bySize)) {
      orders.add(
          IntStream.range(0, poses.size())
              .boxed()
              .sorted(order.thenComparingInt(i -> i))
              .mapToInt(Integer::intValue)
              .toArray());
    }
    return orders;
  }

  private static void vary(
      int[] order, int[] forced, List<List<Pose>> poses, SplittableRandom random) {
    int changes = 1 + random.nextInt(3);
    for (int c = 0; c < changes; c++) {
      int kind = random.nextInt(4);
      int from = random.nextInt(order.length);
      int to = random.nextInt(order.length);
      if (kind == 0) {
        int shape = order[from];
        forced[shape] = random.nextInt(poses.get(shape).size() + 1) - 1;
      } else if (kind == 1) {
        int moved = order[from];
        if (from < to) {
          System.arraycopy(order, from + 1, order, from, to - from);
        } else {
          System.arraycopy(order, to, order, to + 1, from - to);
        }
        order[to] = moved;
      } else {
        int swapped = order[from];
        order[from] = order[to];
        order[to] = swapped;
      }
    }
  }
}
