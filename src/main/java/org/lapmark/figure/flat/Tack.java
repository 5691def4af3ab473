package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.stitching.BarTack;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * Stitching that holds a place under load: a box, with or without a cross, or a bar.
 *
 * @param box the width of a box, along the edge it is placed from, or null for a bar
 * @param bar the length of a bar, along that edge, or null for a box
 * @param height a box's height, from its place inwards; null for that of a square
 * @param cross whether a box has a cross
 * @param place where the middle of its side nearer to the edge lies
 * @param turn by how many degrees clockwise it is turned round its middle
 * @param now whether this step does it
 * @param text a label, or null
 */
record Tack(
    Formula box,
    Formula bar,
    Formula height,
    boolean cross,
    Place place,
    int turn,
    boolean now,
    TemplateText text) {
  private static final Key<Formula> BOX = Key.of("box", FigureForms.LENGTH);
  private static final Key<Formula> BAR = Key.of("bar", FigureForms.LENGTH);
  private static final Key<Formula> HEIGHT = Key.of("height", FigureForms.LENGTH);
  private static final Key<Boolean> CROSS = Key.of("cross", FigureForms.YES).unless("no");
  private static final Key<Integer> TURN = Key.of("turn", FigureForms.TURN).unless("0");
  private static final Key<Boolean> NOW = Key.of("now", FigureForms.YES).unless("yes");
  private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
  private static final Table TABLE =
      Table.of("tack", BOX, BAR, HEIGHT, CROSS)
          .with(Place.KEYS)
          .with(List.of(TURN, NOW, TEXT))
          .oneOf(Choice.among(List.of(BOX, BAR)));

  /** Stated in a list. */
  static final Form<Entries<Tack>> LIST = FigureForms.list(TABLE, Tack::read);

  private static final double LEAST = 2;
  private static final double MOST = 300;

  private static Tack read(Keys keys) {
    if (keys.one().equals(BAR.name())) {
      List<Key<?>> known = new ArrayList<>(Place.KEYS);
      known.addAll(List.of(TURN, NOW, TEXT));
      keys.idle(BAR, List.of(HEIGHT, CROSS), known);
    }
    return keys.whole(
        new Tack(
            keys.get(BOX),
            keys.get(BAR),
            keys.get(HEIGHT),
            keys.or(CROSS, false),
            Place.read(keys),
            keys.or(TURN, 0),
            keys.or(NOW, true),
            keys.get(TEXT)));
  }

  /** The same after the step that does it. */
  Tack done() {
    return new Tack(box, bar, height, cross, place, turn, false, null);
  }

  Detail stage(Staging staging, Subject on, PlacedBody laid) {
    Place.Spot spot = place.stage(staging, on);
    double wide = staging.length(box == null ? bar : box, LEAST, MOST);
    double high = box == null ? 0 : height == null ? wide : staging.length(height, LEAST, MOST);
    // Clockwise from the side nearer to the edge; the edge runs along with its panel on the right.
    Point down = spot.inward();
    Point across = down.quarterTurn().times(-1);
    Point middle = spot.point().plus(down.times(high / 2));
    double radians = Math.toRadians(turn);
    Point width = turned(across, down, radians).times(wide / 2);
    Point depth = turned(across, down, radians + Math.PI / 2).times(high / 2);
    List<Point> corners =
        List.of(
            middle.minus(width).minus(depth),
            middle.plus(width).minus(depth),
            middle.plus(width).plus(depth),
            middle.minus(width).plus(depth));
    on.checkSeen(laid, place.position(), corners.stream().map(laid.map()::apply).toList());
    Optional<String> words = Optional.ofNullable(text).map(staging::text);
    String size =
        box == null ? staging.printed(wide) : staging.printed(wide) + " × " + staging.printed(high);
    return new Sewn(
        box == null ? corners.subList(0, 2) : corners, cross, now, on.dark(), words, size);
  }

  private static Point turned(Point across, Point down, double radians) {
    return across.times(StrictMath.cos(radians)).plus(down.times(StrictMath.sin(radians)));
  }

  /**
   * As it is drawn.
   *
   * @param corners of a box; the two ends of a bar
   * @param dark where what lies on the piece is so dark that they are drawn white
   * @param size as printed
   */
  private record Sewn(
      List<Point> corners,
      boolean cross,
      boolean now,
      List<Path> dark,
      Optional<String> words,
      String size)
      implements Detail {
    private boolean isBar() {
      return corners.size() == 2;
    }

    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
      List<Point> on = corners.stream().map(laid.map()::apply).toList();
      List<Path> lines = new ArrayList<>();
      if (isBar()) {
        lines.addAll(BarTack.strokes(Path.polyline(on)));
      } else {
        List<Point> round = new ArrayList<>(on);
        round.add(on.get(0));
        lines.add(Path.polyline(round));
        if (cross) {
          lines.add(Path.polyline(List.of(on.get(0), on.get(2))));
          lines.add(Path.polyline(List.of(on.get(1), on.get(3))));
        }
      }
      String role = isBar() ? "figure-bar-tack" : "figure-sew";
      ink.within(laid.whole(), lines, now ? role + "-now" : role);
      ink.onDark(laid, dark, lines, role);
      words.ifPresent(text -> ink.canvas().wish(text, List.of(on.get(1), on.get(0)), null));
    }

    @Override
    public Optional<String> inWords(Words sentences) {
      String key = isBar() ? "alt.tack.bar" : cross ? "alt.tack.cross" : "alt.tack.box";
      return Optional.of(sentences.word(key, "size", size));
    }
  }
}
