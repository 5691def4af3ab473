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
    return new Bands(on.deepest(), SeamRing.bands(staging, on.panel(), this));
  }

  /**
   * Bands outside the raw edge, one for each part of the seam's other sides. Without any texture:
   * they stand for lengths, not for a cloth and its sides.
   *
   * @param allowance how far the raw edge lies outside the stitching line
   * @param bands where they run
   */
  private record Bands(double allowance, List<SeamRing.Band> bands) implements Detail {
    /** How wide a band is, on paper. */
    private static final double WIDE = 3.2;

    private static final double GAP = 1.6;
    private static final double APART = 0.8;

    @Override
    public void draw(PlacedBody laid, List<PlacedBody> above, FlatInk ink) {
      for (SeamRing.Band band : bands) {
        draw(laid, band, allowance + (GAP + band.level() * (WIDE + APART)) / ink.scale(), ink);
      }
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
      if (band.name().isEmpty()) {
        return;
      }
      List<Point> anchors = new ArrayList<>();
      int steps = inner.size() - 1;
      for (int tenth : new int[] {5, 4, 6, 3, 7}) {
        int at = tenth * steps / 10;
        anchors.add(inner.get(at).towards(outer.get(at), 0.5));
      }
      ink.canvas().wish(band.name(), anchors, null);
    }

    @Override
    public Optional<String> inWords(Words words) {
      return Optional.empty();
    }
  }
}
