package org.lapmark.figure.corner;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.PrintedLength;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * A corner opened out, so that a seam lies in its middle on top of another: with notched-out
 * corners as a straight edge that is sewn level with it, else as a point across which is sewn.
 *
 * @param piece the number of the piece on one side of the seam
 * @param seam the edge that is sewn in that seam
 * @param base the edge that is sewn in the seam below
 * @param with the number of the piece on the other side, or null for a mirror image
 * @param withSeam its edge, or null for one of the same name
 * @param withBase the same
 * @param cloth the material of both, or null for the first
 * @param side the side that faces the reader
 * @param across how long the line is that is sewn across, or null for notched-out corners
 * @param trimmed what is left of the corner beyond that line, or null for all
 * @param shown how much is drawn from the corner on, or null for what shows enough
 * @param turn by how many degrees clockwise it is turned; the corner points up at 0
 * @param sewn whether it is sewn across by this step, before it, or not yet
 * @param named whether the pieces are named
 * @param text a label of the line, or null
 */
public record BoxedCorner(
    SourceText piece,
    SourceText seam,
    SourceText base,
    SourceText with,
    SourceText withSeam,
    SourceText withBase,
    SourceText cloth,
    Side side,
    Formula across,
    Formula trimmed,
    Formula shown,
    int turn,
    String sewn,
    boolean named,
    TemplateText text)
    implements Picture {
  private static final Key<SourceText> PIECE = Key.required("piece", FigureForms.NUMBER);
  private static final Key<SourceText> SEAM = Key.required("seam", FigureForms.EDGE);
  private static final Key<SourceText> BASE = Key.required("base", FigureForms.EDGE);
  private static final Key<SourceText> WITH = Key.of("with", FigureForms.NUMBER);
  private static final Key<SourceText> WITH_SEAM = Key.of("with_seam", FigureForms.EDGE);
  private static final Key<SourceText> WITH_BASE = Key.of("with_base", FigureForms.EDGE);
  private static final Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
  private static final Key<Side> SIDE =
      Key.of("side", FigureForms.constant(Side.class)).unless("wrong");
  private static final Key<Formula> ACROSS = Key.of("across", FigureForms.LENGTH);
  private static final Key<Formula> TRIMMED = Key.of("trimmed", FigureForms.LENGTH);
  private static final Key<Formula> SHOWN = Key.of("shown", FigureForms.LENGTH);
  private static final Key<Integer> TURN = Key.of("turn", FigureForms.TURN).unless("0");
  private static final Key<String> SEWN =
      Key.of("sewn", FigureForms.words("now", "before", "later")).unless("now");
  private static final Key<Boolean> NAMED = Key.of("named", FigureForms.YES).unless("yes");
  private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
  private static final Table TABLE =
      Table.of(
          "boxed_corner",
          PIECE,
          SEAM,
          BASE,
          WITH,
          WITH_SEAM,
          WITH_BASE,
          CLOTH,
          SIDE,
          ACROSS,
          TRIMMED,
          SHOWN,
          TURN,
          SEWN,
          NAMED,
          TEXT);

  /** Under the key {@code boxed_corner}. */
  public static final PictureKind KIND =
      PictureKind.of(Key.of("boxed_corner", FigureForms.map(TABLE, BoxedCorner::read)));

  /** How much is shown beyond the line that is sewn across. */
  private static final double BEYOND = 0.7;

  private static final double LEAST_BEYOND = 30;

  private static Picture read(Keys keys) {
    if (!keys.has(WITH)) {
      String known = "piece, seam and base, of which the other side is a mirror image";
      keys.idle(PIECE, WITH_SEAM, known);
      keys.idle(PIECE, WITH_BASE, known);
    }
    return keys.whole(
        new BoxedCorner(
            keys.get(PIECE),
            keys.get(SEAM),
            keys.get(BASE),
            keys.get(WITH),
            keys.get(WITH_SEAM),
            keys.get(WITH_BASE),
            keys.get(CLOTH),
            keys.or(SIDE, Side.WRONG),
            keys.get(ACROSS),
            keys.get(TRIMMED),
            keys.get(SHOWN),
            keys.or(TURN, 0),
            keys.or(SEWN, "now"),
            keys.or(NAMED, true),
            keys.get(TEXT)));
  }

  @Override
  public double largest() {
    return LARGEST;
  }

  @Override
  public Scene stage(Staging staging, double scale) {
    CornerHalf first = CornerHalf.of(staging, piece, seam, base, cloth, side);
    CornerHalf second =
        with == null
            ? first.mirrored()
            : CornerHalf.of(
                    staging,
                    with,
                    withSeam == null ? seam : withSeam,
                    withBase == null ? base : withBase,
                    cloth,
                    side)
                .across(first);
    List<Point> line = line(staging, first, second);
    double low = line.stream().mapToDouble(Point::y).max().orElse(0);
    double most = Math.max(first.deepest(), second.deepest());
    double deep =
        shown == null
            ? Math.min(most, low + Math.max(LEAST_BEYOND, BEYOND * width(line)))
            : staging.length(shown, Math.min(low + 1, most), Math.max(most, low + 1));
    Optional<Double> top =
        Optional.ofNullable(trimmed)
            .map(
                left -> {
                  double high = line.stream().mapToDouble(Point::y).min().orElse(0);
                  double there = high - Math.min(first.highest(), second.highest());
                  return high - staging.length(left, 1, Math.max(1, there));
                });
    List<CornerScene.Half> halves = new ArrayList<>();
    for (CornerHalf half : List.of(first, second)) {
      halves.add(half.drawn(staging, deep, top, named && (with != null || half == first)));
    }
    Optional<PrintedLength> length =
        sewn.equals("later")
            ? Optional.empty()
            : Optional.of(
                staging.dimension(
                    across == null ? seam.position() : across.text().position(), width(line)));
    return new CornerScene(
        halves,
        deep,
        deep < most - 1e-6,
        sewn.equals("later") ? Optional.empty() : Optional.of(Path.polyline(line)),
        sewn.equals("now"),
        length,
        turn,
        Optional.ofNullable(text).flatMap(one -> staging.attempt(() -> staging.text(one))),
        seam.text(),
        base.text(),
        first.isNotched(),
        trimmed != null);
  }

  private static double width(List<Point> line) {
    return line.get(0).distance(line.get(line.size() - 1));
  }

  /** What is sewn across: level with a notched-out edge, or as long as stated. */
  private List<Point> line(Staging staging, CornerHalf first, CornerHalf second) {
    if (first.isNotched()) {
      if (across != null) {
        staging.notice(
            across.text().position(), FigureCode.FIGURE_ACROSS_IDLE, "size", staging.size());
      }
      return List.of(first.inner(), new Point(0, 0), second.inner());
    }
    if (across == null) {
      throw Faults.of(seam.position(), FigureCode.FIGURE_KEY_MISSING, "name", ACROSS.name());
    }
    double slope = Math.abs(first.slope()) + Math.abs(second.slope());
    double most = slope * Math.min(first.deepest(), second.deepest());
    double low = staging.length(across, 1, Math.max(1, most)) / slope;
    return List.of(
        new Point(first.slope() * low, low),
        new Point(0, low),
        new Point(second.slope() * low, low));
  }

  @Override
  public List<Formula> clipDepths() {
    return List.of();
  }

  @Override
  public boolean isFinishedArticle() {
    return false;
  }

  @Override
  public Picture unlettered() {
    return this;
  }
}
