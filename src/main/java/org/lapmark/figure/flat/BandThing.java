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
import org.lapmark.figure.workpiece.Strips;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;

/**
 * A band along raw edges, all round or from end to end.
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
  public Optional<Thing> turnedOver() {
    return Optional.of(this);
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Strips strips = strips(staging, on);
    Texture texture = texture(staging);
    String words = name == null ? "" : staging.attempt(() -> staging.text(name)).orElse("");
    String said = words.isEmpty() ? said(staging) : words;
    Round round = new Round(strips, texture, side, on.turn(), words, said);
    List<Point> places = new ArrayList<>();
    strips
        .rims()
        .forEach(rim -> places.addAll(rim.transformed(laid.map()).flattened(FlatInk.FLATNESS)));
    on.checkSeen(laid, edges.position(), places);
    return round;
  }

  private String said(Staging staging) {
    String named = staging.cloths().nameAndSide(staging.names().material(cloth), side);
    return staging
        .words()
        .word("alt.band", "cloth", named, "edge", staging.words().edge(edges.text()));
  }

  private Texture texture(Staging staging) {
    return staging.cloths().texture(staging.names().material(cloth));
  }

  /** Where it lies. */
  private Strips strips(Staging staging, Subject on) {
    double wide = staging.length(width, 0.1, 500);
    return Lines.along(on.panel(), on.allowances(), on.edges(edges), wide)
        .filter(strips -> !strips.fills().isEmpty())
        .orElseThrow(
            () ->
                Faults.of(
                    edges.position(),
                    FigureCode.FIGURE_LINE_IMPOSSIBLE,
                    "value",
                    Staging.hundredth(wide),
                    "edge",
                    edges.text(),
                    "size",
                    staging.size()));
  }

  @Override
  public List<Path> dark(Staging staging, Subject on) {
    return texture(staging).isDark(side) ? strips(staging, on).fills() : List.of();
  }

  /**
   * A band along raw edges: what lies between them and lines inside.
   *
   * @param texture how its material is shown
   * @param side the side that faces the reader
   * @param grain how far the grain is turned on paper, in degrees clockwise
   */
  private record Round(
      Strips strips, Texture texture, Side side, double grain, String name, String said)
      implements Overlay {
    @Override
    public boolean isGround() {
      return true;
    }

    @Override
    public Optional<Path> cover() {
      return Optional.empty();
    }

    @Override
    public Path draw(PlacedBody laid, FlatInk ink) {
      Path first = null;
      for (Path fill : strips.fills()) {
        Path seen = laid.seen(fill.transformed(laid.map()));
        if (seen != null) {
          ink.canvas().cloth(seen, texture, side, grain + ink.turn());
          first = first == null ? seen : first;
        }
      }
      ink.within(
          laid.outline(),
          strips.rims().stream().map(rim -> rim.transformed(laid.map())).toList(),
          "figure-outline");
      ink.outline(laid.outline(), laid.cuts());
      return first == null ? laid.outline() : first;
    }
  }
}
