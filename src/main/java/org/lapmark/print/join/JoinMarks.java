package org.lapmark.print.join;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.sheet.CuttingRoles;
import org.lapmark.print.sheet.DraftSheet;

/**
 * Where the marks of all joins stand and how they look. Both follow from the lines that cross a
 * join: the marks stand in the widest stretches that no line crosses, off their middles, and their
 * outline is one of three by the number of cutting lines. Where the marks of two joins would meet
 * when a page is put to a wrong one, upright or turned end for end, those of the later join move
 * on.
 */
public final class JoinMarks {
  /** A join this long, in millimetres, has two marks instead of one. */
  private static final double LONG = 110;

  /** Where in a free stretch a mark stands best, as a share of it. */
  private static final double OFF_MIDDLE = 0.38;

  /** Marks nearer than this to each other's places, in millimetres, would seem to meet. */
  static final double APART = 3;

  /** From a mark's middle to an end of its join and to the next mark, in millimetres. */
  private static final double FROM_END = 15;

  private static final double FROM_NEXT = 32;

  /** How far two marks of a join stand apart where that is possible, as a share of it. */
  private static final double FAR = 0.4;

  private static final double STEP = 1;

  /** A limit on the pairs of places that are tried. */
  private static final int MOST = 4000;

  /** How near a line counts as crossing, in millimetres. */
  private static final double NEAR = 1e-3;

  private final DraftSheet sheet;
  private final List<List<JoinMark>> done = new ArrayList<>();
  private final TakenPlaces taken = new TakenPlaces();

  private JoinMarks(DraftSheet sheet) {
    this.sheet = sheet;
  }

  /** The marks, join by join. */
  static List<JoinMark> of(DraftSheet sheet) {
    JoinMarks marks = new JoinMarks(sheet);
    for (Join join : sheet.joins()) {
      List<JoinMark> found = marks.of(join);
      marks.done.add(found);
      marks.taken.add(TakenPlaces.Marks.of(found));
    }
    return marks.done.stream().flatMap(List::stream).toList();
  }

  /** How many cutting lines cross a join, of whatever size. */
  public static int cuttingLines(SheetLayout layout, Join join) {
    return crossings(layout, join, CuttingRoles::isCutting).size();
  }

  /**
   * Where lines of a role cross a join.
   *
   * @return millimetres from the join's left or upper end, ascending
   */
  public static List<Double> crossings(SheetLayout layout, Join join, String role) {
    return crossings(layout, join, role::equals);
  }

  private static List<Double> crossings(SheetLayout layout, Join join, Predicate<String> roles) {
    List<Double> crossings = new ArrayList<>();
    Box line =
        new Box(join.from().x(), join.from().y(), join.to().x(), join.to().y()).expanded(NEAR);
    for (PieceArt art : layout.art()) {
      if (!art.bounds().overlaps(line)) {
        continue;
      }
      for (PieceArt.Stroke stroke : art.strokes()) {
        if (roles.test(stroke.role())) {
          for (Path part : CurveClip.inside(stroke.path(), line)) {
            Point middle = part.atLength(part.length() / 2);
            double along =
                join.sideways() ? middle.y() - join.from().y() : middle.x() - join.from().x();
            crossings.add(along);
          }
        }
      }
    }
    crossings.sort(Comparator.naturalOrder());
    return crossings;
  }

  private List<JoinMark> of(Join join) {
    JoinMark.Form[] forms = JoinMark.Form.values();
    JoinMark.Form form = forms[cuttingLines(sheet.layout(), join) % forms.length];
    List<double[]> candidates = places(join);
    double[] found =
        candidates.stream()
            .filter(places -> !taken.meet(new TakenPlaces.Marks(form, join.length(), places)))
            .findFirst()
            .orElseGet(() -> candidates.get(0));
    return Arrays.stream(found).mapToObj(along -> new JoinMark(join, along, form)).toList();
  }

  /**
   * Places for a join's marks, the best first: clear of all ink where there are such places, else
   * with clear numbers, else as it comes.
   */
  private List<double[]> places(Join join) {
    List<double[]> ranks = singles(join);
    List<double[]> places = new ArrayList<>();
    if (join.length() < LONG) {
      for (double[] rank : ranks) {
        for (double at : rank) {
          places.add(new double[] {at});
        }
      }
      return places;
    }
    for (int worst = 0; worst < ranks.size(); worst++) {
      for (int other = 0; other <= worst; other++) {
        pairs(join, ranks.get(other), ranks.get(worst), places);
      }
    }
    if (places.isEmpty()) {
      ranks.stream()
          .filter(rank -> rank.length > 0)
          .findFirst()
          .ifPresent(rank -> places.add(new double[] {rank[0]}));
    }
    return places;
  }

  /**
   * Adds pairs of places. The farther apart, the truer the join; the first of a pair stays as long
   * as the second finds another place.
   */
  private static void pairs(Join join, double[] firsts, double[] seconds, List<double[]> places) {
    int most = places.size() + MOST;
    for (double apart : new double[] {FAR * join.length(), FROM_NEXT}) {
      for (double first : firsts) {
        for (double second : seconds) {
          if (Math.abs(first - second) >= apart) {
            places.add(new double[] {Math.min(first, second), Math.max(first, second)});
            if (places.size() > most) {
              return;
            }
          }
        }
      }
    }
  }

  /**
   * Places for one mark in three ranks: free of ink on both tiles, with free numbers, any. In each
   * rank those farthest from other lines come first.
   */
  private List<double[]> singles(Join join) {
    List<Double> crossings = new ArrayList<>();
    crossings.add(0.0);
    crossings.addAll(crossings(sheet.layout(), join, role -> true));
    crossings.add(join.length());
    List<double[]> stretches = new ArrayList<>();
    for (int i = 1; i < crossings.size(); i++) {
      double from = Math.max(FROM_END, crossings.get(i - 1));
      double to = Math.min(join.length() - FROM_END, crossings.get(i));
      if (to > from) {
        stretches.add(new double[] {from, to});
      }
    }
    stretches.sort(Comparator.comparingDouble(stretch -> stretch[0] - stretch[1]));
    FreeSpace.Finder first = finder(join, join.first());
    FreeSpace.Finder second = finder(join, join.second());
    List<DoubleStream.Builder> ranks =
        List.of(DoubleStream.builder(), DoubleStream.builder(), DoubleStream.builder());
    for (double[] stretch : stretches) {
      double best = stretch[0] + OFF_MIDDLE * (stretch[1] - stretch[0]);
      for (double shift = 0; shift < stretch[1] - stretch[0]; shift += STEP) {
        for (double along :
            shift == 0 ? new double[] {best} : new double[] {best - shift, best + shift}) {
          if (along >= stretch[0] && along <= stretch[1]) {
            JoinMark mark = new JoinMark(join, along, JoinMark.Form.DISC);
            boolean clear = first.isFree(mark.box()) && second.isFree(mark.box());
            boolean legible = first.isFree(mark.number(true)) && second.isFree(mark.number(false));
            ranks.get(clear ? 0 : legible ? 1 : 2).add(along);
          }
        }
      }
    }
    return ranks.stream().map(rank -> rank.build().toArray()).toList();
  }

  private FreeSpace.Finder finder(Join join, Cell cell) {
    Box strip =
        new Box(join.from().x(), join.from().y(), join.to().x(), join.to().y())
            .expanded(JoinMark.RADIUS + 1);
    return sheet.on(cell).space().part(strip).finder(null, true);
  }
}
