package org.lapmark.figure.article;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Canvas;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.offset.IntricateOutlineException;
import org.lapmark.geometry.offset.JointException;
import org.lapmark.geometry.offset.Offset;
import org.lapmark.geometry.offset.Part;

/**
 * A finished article, in millimetres of cloth: a stitching line drawn out along a third axis.
 *
 * @param rim the stitching line, from where places along it are counted
 * @param length how far it is drawn out
 * @param open whether the ends are still missing
 * @param outside how the material outside is shown
 * @param inside how the material inside is shown
 * @param piped whether the ends are piped
 * @param seams places of cross seams along the rim
 * @param zip the zip
 * @param straps the straps
 * @param baste a line this far inside the open sides
 * @param lengths its three lengths
 * @param labels labels
 */
record ArticleScene(
    Path rim,
    double length,
    boolean open,
    Texture outside,
    Texture inside,
    boolean piped,
    List<Double> seams,
    Optional<ArticleZip.Across> zip,
    Optional<ArticleStraps.Loops> straps,
    Optional<Double> baste,
    ArticleLengths lengths,
    List<Label> labels)
    implements Scene {
  private static final double PIPING = 1.1;

  /** A label of a point on the rim, so far from the left side. */
  record Label(String words, Point on, double across) {}

  @Override
  public void draw(Canvas canvas, double scale) {
    Projection view = new Projection(canvas, scale);
    straps.ifPresent(loops -> loops.draw(length, view));
    view.surface(rim, 0, length, outside, Side.RIGHT);
    for (double[] stretch : view.seen(rim)) {
      for (double at : seams) {
        if (inside(stretch, at)) {
          view.line(0, length, rim.atLength(at), "figure-seam");
        }
      }
      if (piped) {
        Path part = Projection.part(rim, stretch[0], stretch[1]);
        canvas.line(part.transformed(view.at(PIPING / scale)), "figure-seam");
      }
    }
    zip.ifPresent(across -> across.draw(rim, length, view));
    view.contours(rim, 0, length, true);
    end(view);
    baste.ifPresent(distance -> baste(distance, view));
    lengths.draw(rim, length, view);
    for (Label label : labels) {
      canvas.wish(label.words, List.of(view.project(label.across, label.on)), null);
    }
  }

  private boolean inside(double[] stretch, double at) {
    double whole = rim.length();
    return at > stretch[0] && at < stretch[1] || at + whole > stretch[0] && at + whole < stretch[1];
  }

  /** The end that faces the reader. */
  private void end(Projection view) {
    Canvas canvas = view.canvas();
    Path near = rim.transformed(view.at(length));
    canvas.cloth(near, open ? inside : outside, Side.RIGHT, 0);
    if (open) {
      canvas.within(near, List.of(rim.transformed(view.at(0))), "figure-opening");
    }
    canvas.line(near, "figure-outline");
    if (piped) {
      Path round = near.signedArea() < 0 ? near.reversed() : near;
      inner(round).ifPresent(line -> canvas.line(line, "figure-seam"));
    }
  }

  private static Optional<Path> inner(Path round) {
    try {
      return Offset.loops(List.of(new org.lapmark.geometry.offset.Side(round, -PIPING))).stream()
          .findFirst()
          .map(loop -> new Path(loop.stream().map(Part::curve).toList()));
    } catch (IntricateOutlineException | JointException e) {
      return Optional.empty();
    }
  }

  private void baste(double distance, Projection view) {
    for (double[] stretch : view.seen(rim)) {
      Path part = Projection.part(rim, stretch[0], stretch[1]);
      for (double across : new double[] {distance, length - distance}) {
        view.canvas().line(part.transformed(view.at(across)), "figure-baste-now");
      }
    }
  }

  @Override
  public List<String> inWords(Words words) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        words.word(
            open ? "alt.ring" : "alt.article",
            "width",
            lengths.length(),
            "height",
            lengths.height(),
            "depth",
            lengths.depth()));
    labels.forEach(label -> sentences.add(words.word("alt.named", "what", label.words)));
    return sentences;
  }
}
