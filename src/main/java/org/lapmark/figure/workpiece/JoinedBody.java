package org.lapmark.figure.workpiece;

import java.util.List;
import org.lapmark.figure.ink.Side;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A piece with others that are joined to it and reach beyond it.
 *
 * @param base the piece, in whose coordinates all is
 * @param outline round all of it
 */
public record JoinedBody(Body base, Path outline) implements Body {
  /**
   * A piece and others.
   *
   * @param joined their outlines where they lie
   */
  public static JoinedBody of(Body base, List<Path> joined) {
    Path round = Lines.joined(base.outline(), joined);
    for (Cut cut : base.cuts()) {
      round = Lines.crop(round, cut.from(), cut.away()).path();
    }
    return new JoinedBody(base, round);
  }

  @Override
  public Path whole() {
    return outline;
  }

  @Override
  public List<Cut> cuts() {
    return base.cuts();
  }

  @Override
  public List<List<Point>> covers() {
    return base.covers();
  }

  @Override
  public List<Flap> flaps() {
    return base.flaps();
  }

  @Override
  public boolean liesUnder() {
    return base.liesUnder();
  }

  @Override
  public double covered() {
    return base.covered();
  }

  @Override
  public boolean isPeeled() {
    return base.isPeeled();
  }

  @Override
  public void draw(PlacedBody laid, FlatInk ink) {
    base.draw(laid.as(base), ink);
  }

  @Override
  public void drawFolded(PlacedBody laid, Marks marks, FlatInk ink) {
    base.drawFolded(laid.as(base), marks, ink);
  }

  @Override
  public Side seen(Side up) {
    return base.seen(up);
  }
}
