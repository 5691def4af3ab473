package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * Cuts into the allowance.
 *
 * @param edge the edge
 * @param every the distance between them
 * @param depth how deep they go
 * @param from where they begin along the edge, or null
 * @param to where they end, or null
 * @param curves whether only curved stretches are clipped
 * @param now whether this step does it
 */
record Clips(
    SourceText edge,
    Formula every,
    Formula depth,
    Formula from,
    Formula to,
    boolean curves,
    boolean now) {
  private static final Key<SourceText> EDGE = Key.required("edge", FigureForms.EDGE);
  private static final Key<Formula> EVERY = Key.required("every", FigureForms.LENGTH);
  private static final Key<Formula> DEPTH = Key.required("depth", FigureForms.LENGTH);
  private static final Key<Formula> FROM = Key.of("from", FigureForms.PLACE);
  private static final Key<Formula> TO = Key.of("to", FigureForms.PLACE);
  private static final Key<Boolean> CURVES = Key.of("curves", FigureForms.YES).unless("no");
  private static final Table TABLE = Table.of("clips", EDGE, EVERY, DEPTH, FROM, TO, CURVES);

  /** Stated in a list. */
  static final Form<Entries<Clips>> LIST = FigureForms.list(TABLE, Clips::read);

  /** No clip comes nearer to the stitching line than this, in millimetres. */
  private static final double UNCLIPPED = 0.5;

  /** The least depth of a clip, in millimetres of cloth. */
  private static final double SHORTEST = 0.1;

  private static final int MOST = 500;

  private static Clips read(Keys keys) {
    return keys.whole(
        new Clips(
            keys.get(EDGE),
            keys.get(EVERY),
            keys.get(DEPTH),
            keys.get(FROM),
            keys.get(TO),
            keys.or(CURVES, false),
            true));
  }

  /** The same after the step that does it. */
  Clips done() {
    return new Clips(edge, every, depth, from, to, curves, false);
  }

  /** Nothing where no curve is clipped, which is told. */
  Optional<Detail> stage(Staging staging, Subject on, PlacedBody laid) {
    Path line = on.line(edge);
    double first = staging.along(from, line.length(), 0);
    double last = staging.along(to, line.length(), line.length());
    if (last < first - 1e-6) {
      throw Faults.of(
          (to == null ? from : to).text().position(),
          FigureCode.FIGURE_STRETCH_BACKWARDS,
          "name",
          "clips",
          "from",
          Staging.hundredth(first),
          "to",
          Staging.hundredth(last),
          "size",
          staging.size());
    }
    // One clip alone begins and ends at the same place.
    double most = last - first < 1e-6 ? 1_000 : Math.max(1, Math.min(1_000, last - first));
    double apart = staging.length(every, 1, most);
    double allowance = on.allowance(on.edges(edge).get(0));
    double deep = staging.length(depth, SHORTEST, Math.max(SHORTEST, allowance - UNCLIPPED));
    if ((last - first) / apart > MOST) {
      throw Faults.of(
          every.text().position(), FigureCode.FIGURE_TOO_MANY, "limit", MOST, "what", "clips");
    }
    List<Snip> snips = new ArrayList<>();
    for (double at = first; at <= last + 1e-6; at += apart) {
      Point inward = line.tangentAtLength(at).quarterTurn();
      Point raw = line.atLength(at).minus(inward.times(allowance));
      if (!curves || bends(line, at)) {
        snips.add(new Snip(raw, raw.plus(inward.times(deep))));
      }
    }
    if (snips.isEmpty()) {
      staging.notice(
          edge.position(),
          FigureCode.FIGURE_CLIPS_STRAIGHT,
          "edge",
          edge.text(),
          "size",
          staging.size());
      return Optional.empty();
    }
    List<Point> ends = snips.stream().map(snip -> laid.map().apply(snip.end)).toList();
    on.checkSeen(laid, edge.position(), ends);
    return Optional.of(new Snips(snips, on.dark(), now));
  }

  private static boolean bends(Path edge, double at) {
    double near = 1.5;
    Point before = edge.tangentAtLength(Math.max(0, at - near));
    Point after = edge.tangentAtLength(Math.min(edge.length(), at + near));
    return Math.abs(before.cross(after)) > 0.01;
  }

  /** One cut, from the raw edge inwards. */
  private record Snip(Point raw, Point end) {}

  /**
   * Cuts as they are drawn.
   *
   * @param dark where what lies on it is so dark that they are drawn white
   * @param now whether this step makes them
   */
  private record Snips(List<Snip> snips, List<Path> dark, boolean now) implements Detail {
    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
      List<Point> polygon = laid.polygon();
      List<Path> cuts = new ArrayList<>();
      for (Snip snip : snips) {
        Point end = laid.map().apply(snip.end);
        if (Polygons.inside(polygon, end)) {
          cuts.add(Path.polyline(List.of(laid.map().apply(snip.raw), end)));
        }
      }
      ink.canvas().lines(cuts, now ? "figure-edge-now" : "figure-edge");
      ink.onDark(laid, dark, cuts, "figure-edge");
    }

    @Override
    public Optional<String> inWords(Words words) {
      return Optional.empty();
    }
  }
}
