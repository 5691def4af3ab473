package org.lapmark.seam;

import java.util.ArrayList;
import java.util.Comparator;
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
 *       and no nearer than 2 mm, which keeps threads from fraying into the stitches; clips of less
 *       than 2 mm do nothing that the cloth doesn't do by itself, and aren't made;
 *   <li>between two clips the cloth stays straight, and the seam becomes a chain of chords: one
 *       over the length {@code s} lies {@code s² k / 8} off the curve. That is to be 0.25 mm, a
 *       line's width, so {@code s = √(2 mm / k)}, but no closer than 4 mm and no farther than 20
 *       mm.
 * </ul>
 *
 * Where an allowance changes, depths are those of its narrowest place, so that no clip leads into a
 * seam.
 *
 * <p>At a sharp corner all of the bend is at one place: there one clip goes up to 1 mm before the
 * stitching line, if no join of the side is there, whose allowances part by themselves.
 *
 * <p>Where the partner's curvature is less, the allowance has too much length rather than too
 * little; that is dealt with after the seam is sewn, and isn't listed.
 *
 * @param side the side's index, from 0
 * @param from where the stretch begins, in millimetres from the seam's start
 * @param to where it ends
 * @param parts the parts it lies on, as written
 * @param radius the radius to which the side is bent where it is bent most, in millimetres; 0 at a
 *     corner
 * @param turn by how many degrees the side has to turn at once; 0 on a curve
 * @param allowance the allowance there, in millimetres: the narrowest
 * @param depth how deep to clip from the raw edge, in millimetres
 * @param spacing the distance from clip to clip where they are closest, in millimetres; 0 at a
 *     corner
 * @param count how many clips in all, spaced by the curvature of each place
 */
public record Clipping(
    int side,
    double from,
    double to,
    List<String> parts,
    double radius,
    double turn,
    double allowance,
    double depth,
    double spacing,
    int count) {
  /** The share of its length by which woven cloth can be stretched along a seam. */
  static final double GIVE = 0.04;

  private static final double LEAST_LEFT = 2;

  /** What is left at a corner, in millimetres: any more would hold the turn back. */
  private static final double CORNER_LEFT = 1;

  /** A clip less deep than this, in millimetres, isn't worth making. */
  private static final double LEAST_DEPTH = 2;

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

  /** Allowances that differ by less than this, in millimetres, are the same. */
  private static final double SAME_WIDTH = 0.05;

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
        List<Clipping> found = new ArrayList<>(new Search(seam, side, partner).run());
        found.addAll(corners(seam, side, partner));
        found.sort(Comparator.comparingDouble(Clipping::from));
        all.addAll(found);
      }
    }
    return all;
  }

  /** Whether it is a single clip at a corner. */
  public boolean isCorner() {
    return turn > 0;
  }

  /** The corners that a side has to be clipped for. */
  private static List<Clipping> corners(WalkedSeam seam, int index, int partner) {
    SeamSide side = seam.sides().get(index);
    SeamSide other = seam.sides().get(partner);
    List<SeamCorner> own = side.corners(seam.closed());
    List<SeamCorner> theirs = other.corners(seam.closed());
    if (own.isEmpty() && theirs.isEmpty()) {
      return List.of();
    }
    NotchMatching matching = NotchMatching.of(other, side, seam.closed());
    EaseSpread spread = new EaseSpread(other.length(), side.length(), matching.pairs());
    List<SeamCorner> turns = new ArrayList<>();
    List<SeamCorner> met = new ArrayList<>();
    for (SeamCorner corner : theirs) {
      double at = spread.of(corner.at());
      double turn = corner.turn();
      for (SeamCorner mine : own) {
        if (!met.contains(mine) && seam.isSamePlace(mine.at(), at, side.length())) {
          met.add(mine);
          turn -= mine.turn();
          break;
        }
      }
      turns.add(new SeamCorner(at, turn, corner.name()));
    }
    for (SeamCorner mine : own) {
      if (!met.contains(mine)) {
        turns.add(new SeamCorner(mine.at(), -mine.turn(), mine.name()));
      }
    }
    List<SeamMark> joins =
        side.marks(seam.closed()).stream()
            .filter(mark -> mark.kind() == SeamMark.Kind.JOIN)
            .toList();
    List<Clipping> clips = new ArrayList<>();
    for (SeamCorner turn : turns) {
      if (turn.turn() > SeamCorner.SHARP
          && joins.stream()
              .noneMatch(join -> seam.isSamePlace(join.at(), turn.at(), side.length()))) {
        Cursor cursor = new Cursor(side);
        cursor.curvature(turn.at());
        corner(index, cursor, turn.at(), turn.turn(), general(seam)).ifPresent(clips::add);
      }
    }
    return clips;
  }

  private static Optional<Clipping> corner(
      int index, Cursor cursor, double at, double turn, double general) {
    SeamPart part = cursor.part();
    double width = width(part, cursor.within(), general);
    double depth = width - CORNER_LEFT;
    return part.path().isEmpty() || depth < LEAST_DEPTH
        ? Optional.empty()
        : Optional.of(
            new Clipping(index, at, at, List.of(part.name()), 0, turn, width, depth, 0, 1));
  }

  /** The narrowest allowance at a place of a part. */
  private static double width(SeamPart part, double within, double general) {
    return part.allowances().isEmpty() && part.margins().isEmpty() ? general : part.margin(within);
  }

  private static double general(WalkedSeam seam) {
    List<Double> allowances = seam.allowances();
    return allowances.isEmpty() ? 0 : allowances.get(0);
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
    private double angle;
    private Cursor first;
    private double allowance;
    private double clips;
    private final List<String> parts = new ArrayList<>();

    Search(WalkedSeam seam, int side, int partner) {
      this.index = side;
      this.side = seam.sides().get(side);
      this.partner = seam.sides().get(partner);
      this.general = general(seam);
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
          look(start, end, theirs.orElse(0.0) - mine.get(), here);
        }
      }
      end();
      return found;
    }

    private void look(double start, double end, double bend, Cursor here) {
      SeamPart part = here.part();
      double width = width(part, here.within(), general);
      if (width * bend <= GIVE || depth(width, bend) < LEAST_DEPTH) {
        return;
      }
      if (Double.isNaN(to) || start - to > GAP || Math.abs(width - allowance) > SAME_WIDTH) {
        end();
        from = start;
        first = here.copy();
        allowance = width;
      }
      to = end;
      tightest = Math.max(tightest, bend);
      angle += bend * (end - start);
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
                0,
                allowance,
                depth(allowance, tightest),
                spacing(tightest),
                (int) Math.ceil(clips)));
      } else if (!Double.isNaN(to) && StrictMath.toDegrees(angle) > SeamCorner.SHARP) {
        // So short a curve is sewn as a corner is.
        corner(index, first, (from + to) / 2, StrictMath.toDegrees(angle), general)
            .ifPresent(found::add);
      }
      parts.clear();
      to = Double.NaN;
      tightest = 0;
      angle = 0;
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
    private double within;

    Cursor(SeamSide side) {
      this(side.parts());
    }

    private Cursor(List<SeamPart> parts) {
      this.parts = parts;
    }

    Cursor copy() {
      Cursor copy = new Cursor(parts);
      copy.part = part;
      copy.within = within;
      return copy;
    }

    /** Millimetres from the part's beginning. */
    double within() {
      return within;
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
      within = at - partStart;
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
