package org.lapmark.figure.flat;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.SymbolOn;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A strip as it lies on a piece.
 *
 * @param corners its four corners, the first two where it begins
 * @param broken whether it goes on beyond what is drawn
 * @param texture how its material is shown; nothing for the other side of the main cloth
 * @param side the side that faces the reader
 * @param inward its direction
 * @param name its name; empty for none
 * @param symbols what it goes through
 * @param said what it is called where the picture is said in words
 */
record Strip(
    List<Point> corners,
    boolean broken,
    Optional<Texture> texture,
    Side side,
    Point inward,
    String name,
    List<SymbolOn> symbols,
    String said)
    implements Overlay {
  /**
   * A strip of which it isn't known yet how it is shown.
   *
   * @param at the middle of its beginning
   * @param inward its direction, of length 1
   * @param seen how much of its length is drawn
   * @param broken whether that isn't all
   */
  static Strip of(Point at, Point inward, double wide, double seen, boolean broken) {
    Point along = inward.quarterTurn().times(-wide / 2);
    Point in = inward.times(seen);
    List<Point> corners =
        List.of(at.minus(along), at.plus(along), at.plus(along).plus(in), at.minus(along).plus(in));
    return new Strip(corners, broken, Optional.empty(), Side.WRONG, inward, "", List.of(), "");
  }

  Strip shown(Optional<Texture> how, Side face, String words) {
    return new Strip(corners, broken, how, face, inward, words, List.of(), words);
  }

  /** The same, called otherwise where the picture is said in words. */
  Strip called(String words) {
    return new Strip(corners, broken, texture, side, inward, name, symbols, words);
  }

  /** Points of its outline where it is laid. */
  List<Point> places(PlacedBody laid) {
    return outline().transformed(laid.map()).flattened(FlatInk.FLATNESS);
  }

  /** The same, threaded through something. */
  Strip with(List<SymbolOn> through, List<String> how, Words words) {
    String all = said.isEmpty() && !how.isEmpty() ? words.word("symbol.strap") : said;
    for (String one : how) {
      all = words.word("symbol.threaded", "strap", all, "how", one);
    }
    return new Strip(corners, broken, texture, side, inward, name, List.copyOf(through), all);
  }

  /** The middle of its beginning. */
  Point begins() {
    return corners.get(0).towards(corners.get(1), 0.5);
  }

  double wide() {
    return corners.get(0).distance(corners.get(1));
  }

  /** How much of its length is drawn. */
  double seen() {
    return corners.get(1).distance(corners.get(2));
  }

  @Override
  public Optional<Path> cover() {
    return Optional.of(outline());
  }

  Path outline() {
    return Path.polyline(
        List.of(corners.get(0), corners.get(1), corners.get(2), corners.get(3), corners.get(0)));
  }

  @Override
  public Path draw(PlacedBody laid, FlatInk ink) {
    Path drawn = outline().transformed(laid.map());
    Point down = laid.map().applyVector(inward);
    double angle = StrictMath.toDegrees(StrictMath.atan2(down.y(), down.x())) - 90;
    if (texture.isPresent()) {
      ink.canvas().cloth(drawn, texture.get(), side, angle);
    } else {
      ink.canvas().cloth(drawn, Texture.MAIN, Side.WRONG, 0);
    }
    if (broken) {
      List<Point> at = corners.stream().map(laid.map()::apply).toList();
      Path sides = Path.polyline(List.of(at.get(3), at.get(0), at.get(1), at.get(2)));
      ink.canvas().line(sides, "figure-outline");
      ink.breakLine(at.get(2), at.get(3));
    } else {
      ink.canvas().line(drawn, "figure-outline");
    }
    symbols.forEach(symbol -> symbol.draw(laid, ink));
    return drawn;
  }
}
