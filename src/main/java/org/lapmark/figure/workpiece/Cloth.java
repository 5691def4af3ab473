package org.lapmark.figure.workpiece;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.geometry.Path;

/**
 * A piece of cloth, in its panel's coordinates.
 *
 * @param whole its outline, allowances that are turned in left out
 * @param outline what is seen of it
 * @param cut the line where the rest is left out
 * @param texture how its material is shown
 * @param side the side that faces the reader
 * @param grain how far the grain is turned on paper, in degrees clockwise
 * @param flaps allowances turned to the side that faces the reader
 */
public record Cloth(
    Path whole,
    Path outline,
    Optional<Cut> cut,
    Texture texture,
    Side side,
    double grain,
    List<Flap> flaps)
    implements Body {
  @Override
  public List<Cut> cuts() {
    return cut.stream().toList();
  }

  @Override
  public boolean liesUnder() {
    return false;
  }

  @Override
  public double covered() {
    return 0;
  }

  @Override
  public void draw(PlacedBody laid, FlatInk ink) {
    ink.canvas().cloth(laid.outline(), texture, side, grain + ink.turn());
    for (Flap flap : flaps) {
      Path shape = flap.shape().transformed(laid.map());
      ink.canvas().clothWithin(laid.outline(), shape, texture, Side.RIGHT, grain + ink.turn());
      ink.within(laid.whole(), List.of(flap.raw().transformed(laid.map())), "figure-outline");
    }
    ink.outline(laid.outline(), laid.cuts());
  }
}
