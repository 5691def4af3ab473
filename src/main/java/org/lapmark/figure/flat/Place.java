package org.lapmark.figure.flat;

import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Key;

/**
 * A place on a piece.
 *
 * @param edge the edge
 * @param along a length from its start, or a plain number: a fraction of it; null for its middle
 * @param inside how far inside the raw edge; null for none
 */
record Place(SourceText edge, Formula along, Formula inside) {
  static final Key<SourceText> EDGE = Key.of("edge", FigureForms.EDGE);
  static final Key<Formula> ALONG = Key.of("along", FigureForms.PLACE).unless("1/2");
  static final Key<Formula> INSIDE = Key.of("inside", FigureForms.LENGTH).unless("0 mm");

  static Place read(Keys keys) {
    keys.need(EDGE);
    return new Place(keys.get(EDGE), keys.get(ALONG), keys.get(INSIDE));
  }

  /**
   * The place in the panel's coordinates.
   *
   * @param point the point
   * @param inward the direction into the panel, of length 1
   */
  record Spot(Point point, Point inward) {}

  Spot stage(Staging staging, Subject on) {
    Path line = on.line(edge);
    double at = staging.along(along, line.length(), line.length() / 2);
    double allowance = on.allowance(on.edgeAt(edge, at));
    Box box = on.body().outline().bounds();
    double reach = new Point(box.width(), box.height()).norm();
    double depth = inside == null ? 0 : staging.length(inside, -reach, reach);
    Point inward = line.tangentAtLength(at).quarterTurn();
    return new Spot(line.atLength(at).plus(inward.times(depth - allowance)), inward);
  }
}
