package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Something lying at its place on paper.
 *
 * @param lying what it is and its pose
 * @param map from its own coordinates to paper
 * @param outline what is seen of it
 * @param cuts lines where the rest is left out
 * @param whole its outline with what is cut away to show what lies beneath
 */
public record PlacedBody(PosedBody lying, Affine map, Path outline, List<Cut> cuts, Path whole) {
  /** How much of the top layer is cut away. */
  private static final double CUT_AWAY = 0.4;

  static final String CUT_AWAY_KEY = "cut_away";

  /** All of it at a place. */
  public PlacedBody(PosedBody lying, Affine map) {
    this(
        lying,
        map,
        lying.body().outline().transformed(map),
        lying.body().cuts().stream().map(cut -> cut.transformed(map)).toList(),
        lying.body().outline().transformed(map));
  }

  /**
   * Something that lies on it, of which as much is drawn as of this.
   *
   * @param other what it is
   * @param on from its coordinates to these
   */
  PlacedBody carrying(PosedBody other, Affine on) {
    PlacedBody own = new PlacedBody(other, map.after(on));
    for (Cut cut : cuts) {
      own = own.without(cut);
    }
    return own;
  }

  /** A part of it that is a body of its own, in the same coordinates. */
  PlacedBody as(Body part) {
    return carrying(new PosedBody(part, lying.pose(), lying.cutAway()), Affine.IDENTITY);
  }

  private PlacedBody without(Cut cut) {
    Lines.Cropped rest = Lines.crop(outline, cut.from(), cut.away());
    if (rest.from() == null) {
      return this;
    }
    List<Cut> all = new ArrayList<>();
    cuts.forEach(one -> all.add(one.before(cut.from(), cut.away())));
    all.add(new Cut(cut.key(), rest.from(), rest.to(), cut.away()));
    Path kept =
        cut.key().equals(CUT_AWAY_KEY) ? whole : Lines.crop(whole, cut.from(), cut.away()).path();
    return new PlacedBody(lying, map, rest.path(), all, kept);
  }

  /** What of a shape on paper isn't left out; null where nothing is. */
  public Path seen(Path shape) {
    Path left = shape;
    for (Cut cut : cuts) {
      if (left.flattened(FlatInk.FLATNESS).stream().allMatch(cut::hides)) {
        return null;
      }
      left = Lines.crop(left, cut.from(), cut.away()).path();
    }
    return left;
  }

  /** Whether nothing of something on it is seen, as it lies on a part that is left out. */
  boolean leavesOut(Path shape) {
    List<Point> points = shape.transformed(map).flattened(FlatInk.FLATNESS);
    return cuts.stream().anyMatch(cut -> points.stream().allMatch(cut::hides));
  }

  /** Whether a place on paper isn't seen: left out, or under what is folded over. */
  public boolean hides(Point place) {
    return cuts.stream().anyMatch(cut -> cut.hides(place)) || isCovered(place);
  }

  /** Whether the piece itself, folded over, lies on a place of it. */
  private boolean isCovered(Point place) {
    return lying.body().covers().stream()
        .map(cover -> cover.stream().map(map::apply).toList())
        .anyMatch(cover -> Polygons.inside(cover, place));
  }

  /** All of it, also what is left out to show what lies beneath. */
  public PlacedBody uncut() {
    return new PlacedBody(lying, map);
  }

  public List<Point> polygon() {
    return outline.flattened(FlatInk.FLATNESS);
  }

  /**
   * Leaves out the part on one side of the picture, so that what lies under it is seen: of the top
   * layer the most.
   *
   * @param above how many layers lie on it
   */
  PlacedBody cutAway(int above) {
    Point side = lying.cutAway().outward();
    double start = Double.POSITIVE_INFINITY;
    double end = Double.NEGATIVE_INFINITY;
    for (Point point : polygon()) {
      start = Math.min(start, point.dot(side));
      end = Math.max(end, point.dot(side));
    }
    double cut = end - (end - start) * CUT_AWAY * StrictMath.pow(0.5, above);
    Lines.Cropped rest = Lines.crop(outline, side.times(cut), side);
    List<Cut> all = new ArrayList<>();
    cuts.forEach(one -> all.add(one.before(side.times(cut), side)));
    if (rest.from() != null) {
      all.add(new Cut(CUT_AWAY_KEY, rest.from(), rest.to(), side));
    }
    return new PlacedBody(lying, map, rest.path(), all, whole);
  }
}
