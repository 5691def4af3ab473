package org.lapmark.figure.workpiece;

import java.util.List;
import java.util.function.UnaryOperator;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.symbol.Pen;
import org.lapmark.figure.symbol.Zip;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A zip: x runs along its tape from the middle, y across from one edge of the tape.
 *
 * @param length from stop to stop
 * @param tape the tape's width
 * @param visible how much of it stays visible
 * @param side the side that faces the reader
 */
public record Tape(double length, double tape, double visible, Side side) implements Body {
  @Override
  public Path outline() {
    double half = length / 2 + Zip.END;
    return Path.rectangle(new Box(-half, 0, half, tape));
  }

  @Override
  public Path whole() {
    return outline();
  }

  @Override
  public List<Cut> cuts() {
    return List.of();
  }

  @Override
  public List<Flap> flaps() {
    return List.of();
  }

  @Override
  public boolean liesUnder() {
    return true;
  }

  @Override
  public double covered() {
    return (tape - visible) / 2;
  }

  @Override
  public void draw(PlacedBody laid, FlatInk ink) {
    Zip zip = new Zip(length, tape, side == Side.RIGHT ? Zip.CLOSED : Zip.FACE_DOWN);
    Point start = new Point(length / 2 + Zip.END, tape / 2);
    UnaryOperator<Path> own = Laying.Rigid.at(start, new Point(-1, 0)).map();
    UnaryOperator<Path> map = path -> own.apply(path).transformed(laid.map());
    zip.draw(new Pen(ink.canvas(), map, ink.scale(), zip.size()));
    ink.canvas().line(laid.outline(), "figure-outline");
  }
}
