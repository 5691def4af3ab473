package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * What holds layers along an edge until they are sewn, always of the same size on paper.
 *
 * @param kind what it is
 * @param spots where each is
 * @param edge the edge, in words
 * @param words a label
 */
public record Holders(Kind kind, List<Spot> spots, String edge, Optional<String> words)
    implements Detail {
  /** What holds. */
  public enum Kind {
    PINS,
    CLIPS
  }

  /**
   * Where one is.
   *
   * @param raw on the raw edge or the fold
   * @param inward the direction into the piece, of length 1
   */
  public record Spot(Point raw, Point inward) {}

  private static final double HEAD = 0.75;

  /** From the raw edge outwards to the middle of a pin's head. */
  private static final double OUT = 1.6;

  /** Where a pin goes under the cloth and where it comes up, and where its point is. */
  private static final double UNDER = 2;

  private static final double UP = 3.8;
  private static final double POINT = 6.4;

  private static final double CLIP_WIDE = 2.6;
  private static final double CLIP_LONG = 5.4;

  /** How far the middle of a clip lies inside the edge. */
  private static final double CLIP_IN = 0.7;

  /** Copies the list. */
  public Holders {
    spots = List.copyOf(spots);
  }

  /** Where they are on paper. */
  public List<Point> places(PlacedBody laid) {
    return spots.stream().map(spot -> laid.map().apply(spot.raw)).toList();
  }

  @Override
  public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
    List<Point> anchors = new ArrayList<>();
    for (Spot spot : spots) {
      Point raw = laid.map().apply(spot.raw);
      if (laid.hides(raw)) {
        continue;
      }
      Point in = laid.map().applyVector(spot.inward).unit();
      if (kind == Kind.CLIPS) {
        ClipSymbol.draw(
            raw.plus(in.times(CLIP_IN)),
            in.quarterTurn().times(-1),
            CLIP_WIDE,
            CLIP_LONG,
            ink.canvas());
        anchors.add(raw.minus(in.times(1)));
      } else {
        Point head = raw.minus(in.times(OUT));
        ink.canvas()
            .lines(
                List.of(
                    Path.polyline(List.of(head, raw.plus(in.times(UNDER)))),
                    Path.polyline(List.of(raw.plus(in.times(UP)), raw.plus(in.times(POINT))))),
                "figure-pin");
        ink.canvas().shape(Path.circle(head, HEAD), "figure-symbol-solid");
        ink.canvas().obstacle(Path.circle(head, HEAD));
        anchors.add(head);
      }
    }
    if (!anchors.isEmpty()) {
      // A label names the one in the middle first, which has the most room beside it.
      List<Point> best = new ArrayList<>();
      best.add(anchors.get(anchors.size() / 2));
      best.addAll(anchors);
      words.ifPresent(text -> ink.canvas().wish(text, best, null));
    }
  }

  @Override
  public Optional<String> inWords(Words sentences) {
    String key = "alt.held." + kind.name().toLowerCase(Locale.ROOT);
    return Optional.of(sentences.word(key, "edge", sentences.edge(edge), "count", spots.size()));
  }
}
