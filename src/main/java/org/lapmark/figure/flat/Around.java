package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Words;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * The other side of a seam, shown as bands round a piece.
 *
 * @param seam the seam's name
 * @param start the edge at whose beginning the other side begins, or null
 */
record Around(SourceText seam, SourceText start) {
  private static final Key<SourceText> SEAM = Key.required("seam", FigureForms.NAME);
  private static final Key<SourceText> START = Key.of("start", FigureForms.EDGE);
  private static final Table TABLE = Table.of("around", SEAM, START);

  /** Stated as a map. */
  static final Form<Around> FORM = FigureForms.map(TABLE, Around::read);

  private static Around read(Keys keys) {
    return keys.whole(new Around(keys.get(SEAM), keys.get(START)));
  }

  Detail stage(Staging staging, Subject on) {
    List<SeamRing.Band> bands = SeamRing.bands(staging, on.panel(), this);
    List<String> lengths = bands.stream().map(band -> staging.printed(band.length())).toList();
    return new Bands(
        on.deepest(),
        bands,
        lengths,
        SeamRing.start(staging, on.panel(), this),
        staging.words().word("around.start"));
  }

  /**
   * Bands outside the raw edge, one for each part of the seam's other sides. Without any texture:
   * they stand for lengths, not for a cloth and its sides.
   *
   * @param allowance how far the raw edge lies outside the stitching line
   * @param bands where they run
   * @param lengths how long each part is, as printed
   * @param start where the seam starts and where it goes from there; empty where that isn’t shown
   * @param startWords what stands there
   */
  private record Bands(
      double allowance,
      List<SeamRing.Band> bands,
      List<String> lengths,
      List<SeamRing.Foot> start,
      String startWords)
      implements Detail {
    /** How wide a band is, on paper. */
    private static final double WIDE = 3.2;

    private static final double GAP = 1.6;
    private static final double APART = 0.8;

    /** The length of an arrow’s head and of its shaft. */
    private static final double ARROW = 1.6;

    private static final double SHAFT = 6;

    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
      for (SeamRing.Band band : bands) {
        draw(laid, band, allowance + (GAP + band.level() * (WIDE + APART)) / ink.scale(), ink);
      }
      if (!start.isEmpty()) {
        start(laid, ink);
      }
    }

    /** An arrow outside the bands that begins where the seam does and points where it goes. */
    private void start(PlacedBody laid, FlatInk ink) {
      int levels = bands.stream().mapToInt(SeamRing.Band::level).max().orElse(0) + 1;
      double off = allowance + (GAP + levels * (WIDE + APART) + ARROW) / ink.scale();
      Point from = off(laid, start.get(0), off);
      Point way = off(laid, start.get(1), off).minus(from).unit();
      Point across = way.quarterTurn();
      Point base = from.plus(way.times(SHAFT));
      ink.canvas()
          .line(Path.polyline(List.of(from.minus(across), from.plus(across))), "figure-direction");
      ink.canvas().line(Path.polyline(List.of(from, base)), "figure-direction");
      ink.canvas()
          .line(
              Path.polyline(
                  List.of(
                      base.minus(way.times(ARROW)).plus(across),
                      base,
                      base.minus(way.times(ARROW)).minus(across))),
              "figure-direction");
      ink.canvas().wish(startWords, List.of(from), null);
    }

    private static Point off(PlacedBody laid, SeamRing.Foot foot, double by) {
      return laid.map().apply(foot.point().minus(foot.inwards().times(by)));
    }

    private static void draw(PlacedBody laid, SeamRing.Band band, double gap, FlatInk ink) {
      double far = gap + WIDE / ink.scale();
      List<Point> inner = new ArrayList<>();
      List<Point> outer = new ArrayList<>();
      for (SeamRing.Foot foot : band.feet()) {
        inner.add(laid.map().apply(foot.point().minus(foot.inwards().times(gap))));
        outer.add(laid.map().apply(foot.point().minus(foot.inwards().times(far))));
      }
      List<Point> ring = new ArrayList<>(inner);
      for (int i = outer.size() - 1; i >= 0; i--) {
        ring.add(outer.get(i));
      }
      ring.add(inner.get(0));
      ink.canvas().line(Path.polyline(ring), "figure-outline");
      if (band.isZip()) {
        List<Point> middle = new ArrayList<>();
        for (int i = 0; i < inner.size(); i++) {
          middle.add(inner.get(i).towards(outer.get(i), 0.5));
        }
        ink.canvas().line(Path.polyline(middle), "figure-coil");
      }
      if (band.name().isEmpty()) {
        return;
      }
      List<Point> anchors = new ArrayList<>();
      int steps = inner.size() - 1;
      for (int tenth : new int[] {5, 4, 6, 3, 7}) {
        int at = tenth * steps / 10;
        anchors.add(inner.get(at).towards(outer.get(at), band.isZip() ? 0.88 : 0.5));
      }
      ink.canvas().wish(band.name(), anchors, null);
    }

    @Override
    public Optional<String> inWords(Words words) {
      List<String> parts = new ArrayList<>();
      for (int i = 0; i < bands.size(); i++) {
        if (!bands.get(i).name().isEmpty()) {
          parts.add(
              words.word("alt.around.part", "name", bands.get(i).name(), "length", lengths.get(i)));
        }
      }
      return parts.isEmpty()
          ? Optional.empty()
          : Optional.of(words.word("alt.around", "parts", String.join("; ", parts)));
    }
  }
}
