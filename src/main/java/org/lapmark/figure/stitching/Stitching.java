package org.lapmark.figure.stitching;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Polygons;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * Stitching as it is drawn.
 *
 * @param kind the stitch
 * @param runs where it runs, one row after another, in the piece's coordinates
 * @param ends what is done where it begins and ends
 * @param direction which way it is sewn
 * @param now whether this step does it
 * @param dark where what lies on the piece is so dark that it is drawn white
 * @param words its label
 * @param gaps labels of gaps, each at a place
 * @param said sentences about it
 */
public record Stitching(
    StitchKind kind,
    List<Path> runs,
    Ends ends,
    Direction direction,
    boolean now,
    List<Path> dark,
    Optional<String> words,
    List<Named> gaps,
    List<Said> said)
    implements Detail {
  private static final double HEAD = 1.3;
  private static final double KNOT = 0.55;

  /** Copies the lists. */
  public Stitching {
    runs = List.copyOf(runs);
    gaps = List.copyOf(gaps);
    said = List.copyOf(said);
  }

  /** Which way it is sewn, if that is shown. */
  public enum Direction {
    ONWARDS,
    BACKWARDS,
    ANY
  }

  /** A label of a place. */
  public record Named(String words, Point place) {}

  /** A sentence: its key and its arguments in turn. */
  public record Said(String key, List<Object> arguments) {
    /** Copies the list. */
    public Said {
      arguments = List.copyOf(arguments);
    }

    String in(Words words) {
      return words.word(key, arguments.toArray());
    }
  }

  private List<Path> on(PlacedBody laid) {
    return runs.stream().map(run -> run.transformed(laid.map())).toList();
  }

  /** Points on the rows, by which it is judged whether anything of them is seen. */
  public List<Point> points(PlacedBody laid) {
    List<Point> points = new ArrayList<>();
    on(laid).forEach(run -> points.addAll(run.flattened(FlatInk.FLATNESS)));
    return points;
  }

  /** Where a label may point at it; nothing where none of it is seen. */
  public List<Point> anchors(PlacedBody laid) {
    return places(on(laid)).stream().filter(Polygons.region(laid.polygon())).toList();
  }

  private static List<Point> places(List<Path> runs) {
    List<Point> places = new ArrayList<>();
    for (Path run : runs) {
      double length = run.length();
      for (int i = 1; i < 12; i++) {
        places.add(run.atLength(length * i / 12));
      }
    }
    return places;
  }

  @Override
  public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
    List<Path> drawn = on(laid);
    // A mirrored piece has its inside on the other hand.
    double hand = laid.map().determinant() < 0 ? -1 : 1;
    List<Path> strokes = new ArrayList<>();
    for (Path run : drawn) {
      strokes.addAll(kind.strokes(hand < 0 && kind.isHanded() ? run.reversed() : run));
    }
    if (kind.isAcross() && laid.cuts().isEmpty()) {
      ink.canvas().lines(strokes, kind.role(now));
    } else {
      ink.within(laid.whole(), strokes, kind.role(now));
    }
    ink.onDark(laid, dark, strokes, kind.role(false));
    List<Path> signs = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      Path run = drawn.get(i);
      if (!run.isClosed() && ends == Ends.BACKSTITCHED) {
        // Of close rows the first has its sign outside, where the next one isn't.
        double aside = hand * (isClose(drawn, i) ? -StitchKind.APART : StitchKind.APART);
        signs.add(Strokes.doubled(run, false, StitchKind.BACK, aside));
        signs.add(Strokes.doubled(run, true, StitchKind.BACK, aside));
      }
      if (!run.isClosed() && ends == Ends.KNOTTED) {
        signs.add(Path.circle(run.start(), KNOT));
        signs.add(Path.circle(run.end(), KNOT));
      }
    }
    ink.within(laid.whole(), signs, now ? "figure-stitch-end-now" : "figure-stitch-end");
    ink.onDark(laid, dark, signs, "figure-stitch-end");
    if (direction != Direction.ANY && !drawn.isEmpty()) {
      Path first = drawn.get(0);
      Path head = Strokes.head(first, first.length() * 0.4, direction == Direction.ONWARDS, HEAD);
      ink.within(laid.whole(), List.of(head), "figure-direction");
    }
    if (words.isPresent()) {
      List<Point> anchors = anchors(laid);
      // Without any allowance the line runs along the rim, inside of nothing.
      ink.canvas().wish(words.get(), anchors.isEmpty() ? rim(laid, drawn) : anchors, null);
    }
    for (Named gap : gaps) {
      ink.canvas().wish(gap.words, List.of(laid.map().apply(gap.place)), null);
    }
  }

  /** Whether another row runs so near that its sign would lie between the two. */
  private static boolean isClose(List<Path> rows, int index) {
    Point start = rows.get(index).start();
    return rows.subList(index + 1, rows.size()).stream()
        .anyMatch(row -> row.distance(start) < 3 * StitchKind.APART);
  }

  private static List<Point> rim(PlacedBody laid, List<Path> drawn) {
    return places(drawn).stream().filter(point -> !laid.hides(point)).toList();
  }

  @Override
  public Optional<String> inWords(Words sentences) {
    return Optional.of(String.join(" ", said.stream().map(one -> one.in(sentences)).toList()));
  }
}
