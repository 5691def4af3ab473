package org.lapmark.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;

/**
 * A stretch of a side whose seam allowance has to be clipped, so that the side can be sewn to a
 * partner that is bent otherwise.
 *
 * <p>Pieces lie right sides together, so both insides lie on the same side of the seam, and two
 * edges fit flat where their curvatures are the same, counted positive where the panel is convex.
 * Where the partner's curvature is greater by {@code k}, the side has to be bent: its stitching
 * line keeps its length, and a line in its allowance at the distance {@code w} from the stitching
 * line grows by {@code w k} of its length, which over a stretch is {@code w} times the angle by
 * which it is bent. Woven cloth gives {@value #GIVE} of its length without a fight. So
 *
 * <ul>
 *   <li>nothing is clipped where the whole allowance {@code a} grows less: {@code a k ≤ give};
 *   <li>clips end where the cloth can take the rest: at {@code give / k} from the stitching line,
 *       and no nearer than 2 mm, which keeps threads from fraying into the stitches;
 *   <li>between two clips the cloth stays straight, and the seam becomes a chain of chords: one
 *       over the length {@code s} lies {@code s² k / 8} off the curve. That is to be 0.25 mm, a
 *       line's width, so {@code s = √(2 mm / k)}, but no closer than 4 mm and no farther than 20
 *       mm.
 * </ul>
 *
 * Where the partner's curvature is less, the allowance has too much length rather than too little;
 * that is dealt with after the seam is sewn, and isn't listed.
 *
 * @param side the side's index, from 0
 * @param from where the stretch begins, in millimetres from the seam's start
 * @param to where it ends
 * @param parts the parts it lies on, as written
 * @param radius the radius to which the side is bent where it is bent most, in millimetres
 * @param allowance the allowance there, in millimetres
 * @param depth how deep to clip from the raw edge, in millimetres
 * @param spacing the distance from clip to clip where they are closest, in millimetres
 * @param count how many clips in all, spaced by the curvature of each place
 */
public record Clipping(
    int side,
    double from,
    double to,
    List<String> parts,
    double radius,
    double allowance,
    double depth,
    double spacing,
    int count) {
  /** The share of its length by which woven cloth can be stretched along a seam. */
  static final double GIVE = 0.04;

  private static final double LEAST_LEFT = 2;
  private static final double CHORD_ERROR = 0.25;
  private static final double CLOSEST = 4;
  private static final double FARTHEST = 20;

  /** How far apart places are looked at, in millimetres, unless the seam is very long. */
  private static final double STEP = 1;

  private static final int MOST_STEPS = 5000;

  /** A stretch shorter than this, in millimetres, is a corner and not a curve. */
  private static final double SHORTEST = 3;

  /** Two stretches with less than this between them, in millimetres, are one. */
  private static final double GAP = 5;

  /** No cloth is bent more tightly than to this curvature, one over a radius of 1 mm. */
  private static final double TIGHTEST = 1;

  /** Copies the list. */
  public Clipping {
    parts = List.copyOf(parts);
  }

  /**
   * All stretches of a seam. A side is held against the first one, the first against the second.
   */
  static List<Clipping> of(WalkedSeam seam) {
    List<Clipping> all = new ArrayList<>();
    for (int side = 0; side < seam.sides().size(); side++) {
      int partner = side == 0 ? 1 : 0;
      if (partner < seam.sides().size()) {
        all.addAll(new Search(seam, side, partner).run());
      }
    }
    return all;
  }

  /** The depth of clips for a bend. */
  static double depth(double allowance, double bend) {
    return Math.max(0, allowance - Math.max(LEAST_LEFT, GIVE / bend));
  }

  /** The distance of clips for a bend. */
  static double spacing(double bend) {
    return Math.max(CLOSEST, Math.min(FARTHEST, Math.sqrt(8 * CHORD_ERROR / bend)));
  }

  /** Goes along one side and its partner. */
  private static final class Search {
    private final int index;
    private final SeamSide side;
    private final SeamSide partner;
    private final double general;
    private final List<Clipping> found = new ArrayList<>();
    private double from;
    private double to = Double.NaN;
    private double tightest;
    private double allowance;
    private double clips;
    private final List<String> parts = new ArrayList<>();

    Search(WalkedSeam seam, int side, int partner) {
      this.index = side;
      this.side = seam.sides().get(side);
      this.partner = seam.sides().get(partner);
      List<Double> allowances = seam.allowances();
      this.general = allowances.isEmpty() ? 0 : allowances.get(allowances.size() - 1);
    }

    List<Clipping> run() {
      double own = side.length();
      double other = partner.length();
      if (!(own > 0 && other > 0) || general == 0) {
        return List.of();
      }
      int steps = (int) Math.max(1, Math.min(MOST_STEPS, Math.ceil(own / STEP)));
      Cursor here = new Cursor(side);
      Cursor there = new Cursor(partner);
      for (int i = 0; i < steps; i++) {
        double start = own * i / steps;
        double end = own * (i + 1) / steps;
        double middle = (start + end) / 2;
        Optional<Double> mine = here.curvature(middle);
        Optional<Double> theirs = there.curvature(middle * other / own);
        // A tape or a gap is no panel whose allowance could be clipped, but it can be the partner.
        if (mine.isPresent()) {
          look(start, end, theirs.orElse(0.0) - mine.get(), here.part());
        }
      }
      end();
      return found;
    }

    private void look(double start, double end, double bend, SeamPart part) {
      double width =
          part.allowances().isEmpty()
              ? general
              : part.allowances().get(part.allowances().size() - 1);
      if (width * bend <= GIVE || depth(width, bend) <= 0) {
        return;
      }
      if (Double.isNaN(to) || start - to > GAP) {
        end();
        from = start;
      }
      to = end;
      if (bend > tightest) {
        tightest = bend;
        allowance = width;
      }
      clips += (end - start) / spacing(bend);
      if (parts.isEmpty() || !parts.get(parts.size() - 1).equals(part.name())) {
        parts.add(part.name());
      }
    }

    private void end() {
      if (!Double.isNaN(to) && to - from >= SHORTEST) {
        found.add(
            new Clipping(
                index,
                from,
                to,
                parts,
                1 / tightest,
                allowance,
                depth(allowance, tightest),
                spacing(tightest),
                (int) Math.ceil(clips)));
      }
      parts.clear();
      to = Double.NaN;
      tightest = 0;
      clips = 0;
    }
  }

  /** A place that moves along a side, forwards only. */
  private static final class Cursor {
    private final List<SeamPart> parts;
    private int part;
    private double partStart;
    private int curve;
    private double curveStart;

    Cursor(SeamSide side) {
      this.parts = side.parts();
    }

    SeamPart part() {
      return parts.get(part);
    }

    /** One over the radius, above 0 where the panel is convex; nothing on a length. */
    Optional<Double> curvature(double at) {
      while (part < parts.size() - 1 && at > partStart + part().length()) {
        partStart += part().length();
        part++;
        curve = 0;
        curveStart = 0;
      }
      Optional<Path> path = part().path();
      if (path.isEmpty()) {
        return Optional.empty();
      }
      List<Curve> curves = path.get().curves();
      double left = at - partStart;
      while (curve < curves.size() - 1 && left > curveStart + curves.get(curve).length()) {
        curveStart += curves.get(curve).length();
        curve++;
      }
      Curve here = curves.get(curve);
      double bent = here.curvature(here.parameterAt(left - curveStart));
      if (Double.isNaN(bent)) {
        return Optional.of(0.0);
      }
      double bounded = Math.max(-TIGHTEST, Math.min(TIGHTEST, bent));
      return Optional.of(part().clockwise() ? bounded : -bounded);
    }
  }
}
