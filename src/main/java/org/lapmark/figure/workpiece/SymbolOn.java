package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.symbol.Pen;
import org.lapmark.figure.symbol.Symbol;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A symbol that lies on a piece.
 *
 * @param symbol what is drawn
 * @param laying how it lies
 * @param strap what goes through it
 * @param name what it is called in the picture; empty where it isn’t named
 * @param said what it is called where the picture is said in words
 */
public record SymbolOn(
    Symbol symbol, Laying laying, Optional<Strap> strap, String name, String said)
    implements Overlay {
  /**
   * A strap that comes up through a symbol, goes over a bar, and down again.
   *
   * @param width how wide it is
   * @param turned whether it is turned back round the bar, and not on through
   * @param back how far its end comes back, seen from above; 0 where it comes back beneath
   * @param texture how its material is shown; nothing for the other side of the main cloth
   * @param side the side that faces the reader
   */
  public record Strap(
      double width, boolean turned, double back, Optional<Texture> texture, Side side) {}

  @Override
  public String name() {
    // Its label is wished for where it is drawn: a ring is named at its wire, not in its middle.
    return "";
  }

  /** What it is called in the picture. */
  public String label() {
    return name;
  }

  private Path box() {
    return laying.map().apply(Path.rectangle(symbol.size()));
  }

  @Override
  public Optional<Path> cover() {
    return Optional.of(box());
  }

  /** Points of what it takes up where it is laid. */
  public List<Point> places(PlacedBody laid) {
    return box().transformed(laid.map()).flattened(FlatInk.FLATNESS);
  }

  @Override
  public Path draw(PlacedBody laid, FlatInk ink) {
    Affine toPaper = laid.map();
    UnaryOperator<Path> onPiece = laying.map();
    UnaryOperator<Path> map = path -> onPiece.apply(path).transformed(toPaper);
    symbol.draw(new Pen(ink.canvas(), map, ink.scale(), symbol.size()));
    strap.ifPresent(one -> symbol.gate().ifPresent(gate -> draw(one, gate, map, ink.canvas())));
    if (!name.isEmpty()) {
      ink.canvas().wish(name, anchors(map), null);
    }
    return map.apply(Path.rectangle(symbol.size()));
  }

  private List<Point> anchors(UnaryOperator<Path> map) {
    List<Point> anchors = new ArrayList<>();
    for (Point point : symbol.pointedAt()) {
      Path short1 = Path.polyline(List.of(point, point.plus(new Point(0, 1e-3))));
      anchors.add(map.apply(short1).start());
    }
    return anchors;
  }

  /** The part of the strap that lies over the bar. */
  private static void draw(Strap strap, Symbol.Gate gate, UnaryOperator<Path> map, Canvas canvas) {
    double half = strap.width() / 2;
    double end = strap.turned() ? 0 : gate.down();
    double angle = angle(map);
    fill(strap, strap.side(), half, gate.up(), end, angle, map, canvas);
    side(-half, gate.up(), end, map, canvas);
    side(half, gate.up(), end, map, canvas);
    if (!strap.turned()) {
      return;
    }
    if (strap.back() > 0) {
      Side other = strap.side() == Side.RIGHT ? Side.WRONG : Side.RIGHT;
      fill(strap, other, half, -strap.back(), 0, angle, map, canvas);
      side(-half, -strap.back(), 0, map, canvas);
      side(half, -strap.back(), 0, map, canvas);
      across(half, -strap.back(), map, canvas);
    }
    across(half, 0, map, canvas);
  }

  private static void fill(
      Strap strap,
      Side side,
      double half,
      double from,
      double to,
      double angle,
      UnaryOperator<Path> map,
      Canvas canvas) {
    Path shape =
        map.apply(
            Path.polyline(
                List.of(
                    new Point(-half, from),
                    new Point(half, from),
                    new Point(half, to),
                    new Point(-half, to),
                    new Point(-half, from))));
    if (strap.texture().isPresent()) {
      canvas.cloth(shape, strap.texture().get(), side, angle);
    } else {
      canvas.cloth(shape, Texture.MAIN, Side.WRONG, 0);
    }
  }

  private static void side(
      double x, double from, double to, UnaryOperator<Path> map, Canvas canvas) {
    line(new Point(x, from), new Point(x, to), map, canvas);
  }

  private static void across(double half, double y, UnaryOperator<Path> map, Canvas canvas) {
    line(new Point(-half, y), new Point(half, y), map, canvas);
  }

  private static void line(Point from, Point to, UnaryOperator<Path> map, Canvas canvas) {
    canvas.line(map.apply(Path.polyline(List.of(from, to))), "figure-outline");
  }

  private static double angle(UnaryOperator<Path> map) {
    Path way = map.apply(Path.polyline(List.of(new Point(0, 0), new Point(0, 1))));
    Point down = way.end().minus(way.start());
    return StrictMath.toDegrees(StrictMath.atan2(down.y(), down.x())) - 90;
  }
}
