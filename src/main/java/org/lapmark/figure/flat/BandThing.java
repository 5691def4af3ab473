package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;

/**
 * A band along the raw edge, as a binding lies: all round, or along some edges.
 *
 * @param edges the edges along which it lies
 * @param width its width
 * @param cloth its material
 * @param side its side
 * @param name its name, or null
 */
record BandThing(SourceText edges, Formula width, SourceText cloth, Side side, TemplateText name)
    implements Thing {
  static BandThing read(Keys keys) {
    keys.need(WIDTH, CLOTH);
    keys.idle(BAND, List.of(TURN, CROPPED, PART, THROUGH), List.of(WIDTH, CLOTH, SIDE, NAME));
    keys.idle(BAND, List.of(WRAPPED), List.of(WIDTH, CLOTH, SIDE, NAME));
    keys.idle(BAND, OF_PIECES, List.of(WIDTH, CLOTH, SIDE, NAME));
    keys.idle(BAND, Place.KEYS, List.of(WIDTH, CLOTH, SIDE, NAME));
    return keys.whole(
        new BandThing(
            keys.get(BAND),
            keys.get(WIDTH),
            keys.get(CLOTH),
            keys.or(SIDE, Side.RIGHT),
            keys.get(NAME)));
  }

  @Override
  public boolean isBand() {
    return true;
  }

  @Override
  public Optional<Thing> turnedOver() {
    return Optional.of(this);
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    List<String> names = on.edges(edges);
    double wide = staging.length(width, 0.1, 500);
    double allowance = on.allowance(names.get(0));
    List<Path> inner = on.beside(names, allowance - wide);
    List<Path> outer = on.beside(names, allowance);
    if (inner.size() != 1 || outer.size() != 1) {
      throw Faults.of(
          edges.position(),
          FigureCode.FIGURE_LINE_IMPOSSIBLE,
          "value",
          Staging.hundredth(wide),
          "edge",
          edges.text(),
          "size",
          staging.size());
    }
    Texture texture = staging.cloths().texture(staging.names().material(cloth));
    String words = name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
    if (!inner.get(0).isClosed()) {
      String said =
          words.isEmpty()
              ? staging
                  .words()
                  .word(
                      "alt.band",
                      "cloth",
                      staging.cloths().nameAndSide(staging.names().material(cloth), side),
                      "edge",
                      staging.words().edge(edges.text()))
              : words;
      return Along.of(
          outer.get(0), inner.get(0), on.deepest(), texture, side, on.turn(), words, said);
    }
    return new Round(
        inner.get(0),
        texture,
        side,
        staging.cloths().texture(on.material()),
        on.side(),
        on.turn(),
        words);
  }

  /**
   * A band along some edges, which ends where the piece does.
   *
   * @param shape its outline, which may reach beyond the piece’s ends
   * @param inner its inner edge
   * @param texture how its material is shown
   * @param side the side that faces the reader
   * @param grain how far the grain is turned on paper, in degrees clockwise
   */
  private record Along(
      Path shape, Path inner, Texture texture, Side side, double grain, String name, String said)
      implements Overlay {
    static Along of(
        Path outer,
        Path inner,
        double beyond,
        Texture texture,
        Side side,
        double grain,
        String name,
        String said) {
      Path fold = Lines.extended(outer, beyond + 1);
      Path edge = Lines.extended(inner, beyond + 1);
      List<Point> points = new ArrayList<>(fold.flattened(FlatInk.FLATNESS));
      points.addAll(edge.reversed().flattened(FlatInk.FLATNESS));
      points.add(points.get(0));
      return new Along(Path.polyline(points), edge, texture, side, grain, name, said);
    }

    @Override
    public Optional<Path> cover() {
      return Optional.of(shape);
    }

    @Override
    public Path draw(PlacedBody laid, FlatInk ink) {
      Path band = shape.transformed(laid.map());
      ink.canvas().clothWithin(laid.outline(), band, texture, side, grain + ink.turn());
      ink.within(laid.outline(), List.of(inner.transformed(laid.map())), "figure-outline");
      return band;
    }
  }

  /**
   * A band round a piece: what lies between the outline and its parallel.
   *
   * @param inner its inner edge
   * @param texture how its material is shown
   * @param side the side that faces the reader
   * @param within how the piece's material is shown
   * @param face the side of the piece that faces the reader
   * @param grain how far the grain is turned on paper, in degrees clockwise
   */
  private record Round(
      Path inner, Texture texture, Side side, Texture within, Side face, double grain, String name)
      implements Overlay {
    @Override
    public boolean isGround() {
      return true;
    }

    @Override
    public String said() {
      return name;
    }

    @Override
    public Optional<Path> cover() {
      return Optional.empty();
    }

    @Override
    public Path draw(PlacedBody laid, FlatInk ink) {
      Path hole = inner.transformed(laid.map());
      Path outline = laid.outline();
      ink.canvas().cloth(outline, texture, side, grain + ink.turn());
      ink.canvas().cloth(hole, within, face, grain + ink.turn());
      ink.canvas().line(outline, "figure-outline");
      ink.canvas().line(hole, "figure-outline");
      Point start = outline.start();
      double at = hole.nearestLength(start);
      Path turned =
          at < 1e-6
              ? hole
              : hole.part(at, hole.length())
                  .then(at > hole.length() - 1e-6 ? hole : hole.part(0, at));
      return outline
          .then(Path.polyline(List.of(start, turned.start())))
          .then(turned.reversed())
          .then(Path.polyline(List.of(turned.start(), start)));
    }
  }
}
